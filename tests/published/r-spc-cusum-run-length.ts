import {
  type CusumRunLengthOptions,
  cusumDecisionIntervalFor,
  cusumRunLength,
} from "wetside/control";
import type { Computed } from "./run.ts";

export const computed: Computed = {
  "one-0.25": (grid: Grid) => each(grid, { sides: "upper" }),
  "two-0.25": (grid: Grid) => each(grid, {}),
  "one-fir-0.25": (grid: Grid) => each(grid, { sides: "upper", headStart: 0.5 }),
  "two-fir-0.25": (grid: Grid) => each(grid, { headStart: 0.5 }),
  "one-0.5": (grid: Grid) => each(grid, { sides: "upper" }),
  "two-0.5": (grid: Grid) => each(grid, {}),
  "one-fir-0.5": (grid: Grid) => each(grid, { sides: "upper", headStart: 0.5 }),
  "two-fir-0.5": (grid: Grid) => each(grid, { headStart: 0.5 }),
  "interval-0.25": intervals,
  "interval-0.5": intervals,
};

interface Grid {
  readonly referenceValue: number;
  readonly decisionInterval: readonly number[];
  readonly shift: readonly number[];
}

function each(grid: Grid, options: CusumRunLengthOptions): number[] {
  const { referenceValue, decisionInterval, shift } = grid;
  return decisionInterval.map((h, i) => {
    const design = { referenceValue, decisionInterval: h };
    return cusumRunLength(design, { ...options, shift: shift[i] ?? 0 }).zeroState;
  });
}

function intervals(inputs: { referenceValue: number; runLength: readonly number[] }): number[] {
  return inputs.runLength.map((target) => cusumDecisionIntervalFor(inputs.referenceValue, target));
}
