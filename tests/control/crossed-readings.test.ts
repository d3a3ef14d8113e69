import { describe, expect, it } from "vitest";
import { crossedReadings } from "wetside/control";

const row = (operator: string, patch: string, density: number) => ({ operator, patch, density });
const complete = [
  row("B", "x", 0.2),
  row("A", "x", 0.1),
  row("B", "y", 1.2),
  row("A", "y", 1.1),
  row("A", "x", 0.11),
  row("B", "x", 0.21),
  row("A", "y", 1.11),
  row("B", "y", 1.21),
] as const;

describe("the rows of a gauge study", () => {
  it("are put in order by operator, patch and time, whatever order they come in", () => {
    expect(crossedReadings(Object.freeze([...complete]))).toEqual({
      operators: ["B", "A"],
      patches: ["x", "y"],
      readings: [
        [
          [0.2, 0.21],
          [1.2, 1.21],
        ],
        [
          [0.1, 0.11],
          [1.1, 1.11],
        ],
      ],
    });
  });

  it("name the operator and the patch that was not read as often as the others", () => {
    expect(() => crossedReadings(complete.slice(0, -1))).toThrow("readings of y by B");
    expect(() => crossedReadings([...complete, row("A", "z", 2)])).toThrow("readings of z by B");
  });

  it("need two operators, patches and repeats", () => {
    expect(() => crossedReadings([])).toThrow("operators");
    expect(() => crossedReadings([row("A", "x", 1), row("A", "x", 1.1)])).toThrow("operators");
    expect(() => crossedReadings(complete.slice(0, 4))).toThrow("repeats");
  });
});
