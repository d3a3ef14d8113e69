import { describe, expect, it } from "vitest";
import { studentCopy } from "../../lib/notebook/student-copy.ts";
import { draftNotebook } from "./fixture.ts";

describe("the student's copy of a notebook", () => {
  const notebook = draftNotebook([
    "# T",
    "1",
    { source: "md:What?", tags: ["exercise"] },
    { source: "2", tags: ["solution"] },
    "3",
  ]);
  const run = {
    ...notebook,
    cells: notebook.cells.map((cell) =>
      cell.cell_type === "code" ? { ...cell, execution_count: 1 } : cell,
    ),
  };
  it("lacks the solutions and the outputs below the first of them", () => {
    const copy = studentCopy(run);
    expect(copy.cells.map(({ source }) => source)).toEqual(["# T", "1", "What?", "3"]);
    expect(copy.cells[1]?.execution_count).toBe(1);
    expect(copy.cells[3]?.execution_count).toBe(null);
  });
  it("is the notebook itself if there is nothing to leave out", () => {
    const plain = draftNotebook(["# T", "1"]);
    expect(studentCopy(plain)).toEqual(plain);
  });
});
