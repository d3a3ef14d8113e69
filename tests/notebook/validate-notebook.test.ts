import { describe, expect, it } from "vitest";
import { notebookJson } from "../../lib/notebook/notebook-file.ts";
import { notebookFormatProblems } from "../../lib/notebook/validate-notebook.ts";
import { draftNotebook } from "./fixture.ts";

const good = () => JSON.parse(JSON.stringify(notebookJson(draftNotebook(["# T", "1", ""]))));

// The rules are the schema of nbformat 4.5, as distributed with nbformat 5.5.0.
describe("the format of a notebook", () => {
  it("has no fault when the runner's own writer made it", async () => {
    expect(await notebookFormatProblems(good())).toEqual([]);
  });
  it("names the cell and what is wrong with it", async () => {
    const bad = good();
    delete bad.cells[1].outputs;
    bad.cells[0].colour = 1;
    expect(await notebookFormatProblems(bad)).toEqual([
      'cell at place 1 must NOT have additional properties: "colour"',
      "cell at place 2 must have required property 'outputs'",
    ]);
  });
  it("knows the shapes of outputs and ids", async () => {
    const bad = good();
    bad.cells[1].outputs = [{ output_type: "stream", text: "a" }];
    bad.cells[2].id = "has a blank";
    const faults = await notebookFormatProblems(bad);
    expect(faults.join("\n")).toContain(
      "cell at place 2 at /outputs/0 must have required property 'name'",
    );
    expect(faults.join("\n")).toContain("cell at place 3 at /id must match pattern");
  });
  it("finds an id that stands twice, which the schema cannot", async () => {
    const bad = good();
    bad.cells[2].id = bad.cells[0].id;
    expect(await notebookFormatProblems(bad)).toEqual([
      'cell at place 3: its id "cell-1" stands twice in the notebook',
    ]);
  });
  it("refuses what is no notebook at all", async () => {
    expect(await notebookFormatProblems(null)).toEqual(["notebook must be object"]);
    expect((await notebookFormatProblems({ cells: [{ cell_type: "poem" }] }))[0]).toContain("poem");
    expect((await notebookFormatProblems({ ...good(), nbformat: 3 }))[0]).toContain("nbformat");
  });
});
