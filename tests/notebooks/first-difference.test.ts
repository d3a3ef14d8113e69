import { describe, expect, it } from "vitest";
import { notebookText } from "../../lib/notebook/notebook-file.ts";
import { draftNotebook } from "../notebook/fixture.ts";
import { firstDifference } from "./first-difference.ts";

const text = (...cells: readonly string[]) => notebookText(draftNotebook(cells));

describe("the first difference of two notebooks", () => {
  it("is none if they are equal", () => {
    expect(firstDifference(text("1", "2"), text("1", "2"))).toBeUndefined();
  });
  it("names the cell and shows both lines around the place", () => {
    const far = "x".repeat(500);
    const found = firstDifference(text("1", `${far}1`), text("1", `${far}2`)) ?? "";
    expect(found).toMatch(/^cell – \(place 2, “x+1?/);
    expect(found).toMatch(/committed: ….*x1",\n {2}now: {7}….*x2",/);
  });
  it("names a cell that is missing, and a file that only looks different", () => {
    expect(firstDifference(text("1", "2"), text("1"))).toContain("place 2");
    expect(firstDifference(text("1").replace("{\n", "{ \n"), text("1"))).toContain(
      "the file's form",
    );
  });
});
