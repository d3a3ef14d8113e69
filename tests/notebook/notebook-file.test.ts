import { describe, expect, it } from "vitest";
import { notebookText, parseNotebook } from "../../lib/notebook/notebook-file.ts";
import { draftNotebook } from "./fixture.ts";

describe("a notebook file", () => {
  it("comes back byte for byte when it is read and written again", () => {
    const text = notebookText(draftNotebook(["# Title\n\ntext", "const a = 1;\na", ""]));
    expect(notebookText(parseNotebook("a.ipynb", text))).toBe(text);
    expect(text.endsWith("}\n")).toBe(true);
  });
  it("keeps source as lines with their ends, cut where Python cuts", () => {
    const notebook = draftNotebook(["a\vb\rc\r\nd\x85e\u2028f\n"]);
    const cell = JSON.parse(notebookText(notebook)).cells[0];
    // Python 3.11.2: "a\x0bb\rc\r\nd\x85e\u2028f\n".splitlines(True)
    expect(cell.source).toEqual(["a\v", "b\r", "c\r\n", "d\x85", "e\u2028", "f\n"]);
  });
  it("keeps an empty source as no lines", () => {
    expect(JSON.parse(notebookText(draftNotebook([""]))).cells[0].source).toEqual([]);
  });
  it("splits text outputs into lines and leaves JSON outputs whole", () => {
    const data = { "text/plain": "a\nb", "application/x+json": { text: "a\nb" } };
    const output = { output_type: "display_data" as const, data, metadata: {} };
    const [cell] = draftNotebook(["1"]).cells;
    if (cell === undefined) throw new Error("no cell");
    const notebook = { ...draftNotebook([]), cells: [{ ...cell, outputs: [output] }] };
    const written = JSON.parse(notebookText(notebook));
    expect(written.cells[0].outputs[0].data).toEqual({
      "text/plain": ["a\n", "b"],
      "application/x+json": { text: "a\nb" },
    });
    expect(parseNotebook("a", notebookText(notebook)).cells[0]?.outputs).toEqual([output]);
  });
  it("gets ids for its cells if it is of an older minor format", () => {
    const old = {
      cells: [{ cell_type: "raw", metadata: {}, source: "x" }],
      metadata: {},
      nbformat: 4,
      nbformat_minor: 4,
    };
    const read = parseNotebook("old.ipynb", JSON.stringify(old));
    expect(read.cells[0]?.id).toBe("cell-01");
    expect(read.nbformat_minor).toBe(5);
  });
  it("is refused with the file's name if it is no notebook", () => {
    expect(() => parseNotebook("x.ipynb", "PK\u0003")).toThrow(/"x.ipynb"; that is not a notebook/);
    expect(() => parseNotebook("x.ipynb", '{"nbformat": 3}')).toThrow(/not a notebook of format 4/);
    expect(() => parseNotebook("x.ipynb", "")).toThrow(/it is not JSON/);
  });
});
