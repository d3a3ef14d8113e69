import { describe, expect, it } from "vitest";
import { fileBeside } from "wetside/records";

describe("a file beside another", () => {
  it("is looked for in the other's folder if it is a plain name", () => {
    expect(fileBeside("../my-lab/strips.csv", "batches.csv")).toBe("../my-lab/batches.csv");
    expect(fileBeside("strips.csv", "batches.csv")).toBe("batches.csv");
    expect(fileBeside("C:\\lab\\strips.csv", "batches.csv")).toBe("C:\\lab\\batches.csv");
  });
  it("stays where it is if its name has a folder", () => {
    expect(fileBeside("../my-lab/strips.csv", "../batches.csv")).toBe("../batches.csv");
    expect(fileBeside("../my-lab/strips.csv", "/lab/batches.csv")).toBe("/lab/batches.csv");
  });
  it("is nothing without a name", () => {
    expect(fileBeside("../my-lab/strips.csv", "")).toBe("");
  });
});
