import { describe, expect, it } from "vitest";
import { InputError } from "../../lib/input/index.ts";
import {
  coverageIntervals,
  typeAEvaluation,
  validatePropagation,
} from "../../lib/uncertainty/index.ts";

const budget = { interval: [1, 3], combinedStandardUncertainty: 0.5 } as const;
const drawn = { symmetricInterval: [1, 3] } as const;

describe("uncertainty at the door", () => {
  it("refuses drawn values that are no numbers or not sorted", () => {
    const sorted = Array.from({ length: 100 }, (_, i) => i);
    expect(coverageIntervals(sorted, 0.9).symmetric).toEqual([4, 94]);
    expect(() => coverageIntervals([Number.NaN, ...sorted], 0.9)).toThrow("sorted[0]");
    expect(() => coverageIntervals([5, ...sorted], 0.9)).toThrow("sort the values first");
  });
  it("refuses ends of intervals that are no numbers", () => {
    for (const interval of [[Number.NaN, 3], ["1", 3], undefined] as never[]) {
      expect(() => validatePropagation({ ...budget, interval }, drawn, 1)).toThrow(InputError);
    }
    const broken = { symmetricInterval: [1] } as never;
    expect(() => validatePropagation(budget, broken, 1)).toThrow("symmetricInterval[1]");
  });
  it("refuses readings whose squares no number can hold", () => {
    expect(() => typeAEvaluation([1e200, 1, 2])).toThrow("readings[0]");
  });
});
