import { describe, expect, it } from "vitest";
import { colourNegativeProcess, colourPaperProcess, processSpecifications } from "wetside/control";

describe("the processes a lab may name", () => {
  it("are the library's without one of the lab's own", () => {
    expect(processSpecifications()).toEqual([colourNegativeProcess, colourPaperProcess]);
  });
  it("have the lab's own in the place of the library's of that id, or beside them", () => {
    const ids = (id: string) =>
      processSpecifications(JSON.stringify({ ...colourPaperProcess, id, name: "own" })).map(
        (one) => `${one.id}: ${one.name === "own"}`,
      );
    expect(ids("colour-paper")).toEqual(["colour-paper: true", "colour-negative: false"]);
    expect(ids("line-2")).toEqual([
      "line-2: true",
      "colour-negative: false",
      "colour-paper: false",
    ]);
  });
  it("are refused with everything that is wrong in the lab's own", () => {
    expect(() => processSpecifications("{")).toThrow(/not JSON/);
    expect(() => processSpecifications({ id: "x" })).toThrow(/mend this/);
  });
});
