import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { movedPaths } from "../../lib/notebook/moved-paths.ts";
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

describe("a copy for another folder", () => {
  const here = fileURLToPath(new URL(".", import.meta.url));
  const notebook = draftNotebook([
    "# Not ../notebook/fixture.ts",
    'const log = "../notebook/fixture.ts"; // "./fixture.ts"',
    'const none = "../no-such-folder/log.csv";',
  ]);
  const sources = movedPaths(notebook, here, join(here, "a", "b")).cells.map((cell) => cell.source);
  it("finds what it found before", () => {
    expect(sources[1]).toBe('const log = "../../fixture.ts"; // "../../fixture.ts"');
    const back = movedPaths(notebook, here, here).cells[1]?.source;
    expect(back).toBe('const log = "./fixture.ts"; // "./fixture.ts"');
  });
  it("leaves words, and paths that lead nowhere, as they are", () => {
    expect(sources[0]).toBe("# Not ../notebook/fixture.ts");
    expect(sources[2]).toBe('const none = "../no-such-folder/log.csv";');
  });
});
