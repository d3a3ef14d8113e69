import { type StraightLine, straightLine } from "../../lib/development/fitting/straight-line.ts";
import type { Computed } from "./run.ts";

interface Points {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

// The straight line that every fit of a time–temperature table goes through.
const of = (part: (line: StraightLine) => number) => (points: Points) =>
  part(straightLine("Norris", points.x, points.y));

export const computed: Computed = {
  "norris-b0": of((line) => line.intercept),
  "norris-b1": of((line) => line.slope),
  "norris-sd-b0": of((line) => line.interceptError),
  "norris-sd-b1": of((line) => line.slopeError),
  "norris-residual-sd": of((line) => line.residualSd),
  "norris-r-squared": of((line) => line.rSquared),
};
