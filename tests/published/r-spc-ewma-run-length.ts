import { ewmaRunLength } from "wetside/control";
import type { Computed } from "./run.ts";

export const computed: Computed = {
  "asymptotic-0.05": (grid: Grid) => each(grid, "asymptotic"),
  "exact-0.05": (grid: Grid) => each(grid, "exact"),
  "asymptotic-0.1": (grid: Grid) => each(grid, "asymptotic"),
  "exact-0.1": (grid: Grid) => each(grid, "exact"),
  "asymptotic-0.2": (grid: Grid) => each(grid, "asymptotic"),
  "exact-0.2": (grid: Grid) => each(grid, "exact"),
  "asymptotic-0.25": (grid: Grid) => each(grid, "asymptotic"),
  "exact-0.25": (grid: Grid) => each(grid, "exact"),
  "asymptotic-0.3": (grid: Grid) => each(grid, "asymptotic"),
  "exact-0.3": (grid: Grid) => each(grid, "exact"),
};

interface Grid {
  readonly lambda: number;
  readonly limitWidth: readonly number[];
  readonly shift: readonly number[];
}

function each({ lambda, limitWidth, shift }: Grid, limits: "asymptotic" | "exact"): number[] {
  return limitWidth.map((width, i) => {
    return ewmaRunLength({ lambda, limitWidth: width }, { shift: shift[i] ?? 0, limits }).zeroState;
  });
}
