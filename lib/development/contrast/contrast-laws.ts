import type { FittableCurve } from "../fitting/nonlinear-fit.ts";
import { straightLine } from "../fitting/straight-line.ts";
import { shown } from "../rate/shown.ts";
import type { ContrastLaw } from "./contrast-curve.ts";
import type { ContrastReading } from "./contrast-from-two-times.ts";

/** A contrast law as the fit needs it. */
export interface FittableContrastLaw extends FittableCurve {
  readonly names: readonly string[];
  /** Starting values from the readings alone. */
  readonly start: (rows: readonly ContrastReading[]) => readonly number[];
  readonly warnings: (parameters: readonly number[], longestMin: number) => readonly string[];
}

/** Rates tried as starting values: multiples of 1/(longest time). */
const TRIED = [0.05, 0.1, 0.2, 0.4, 0.8, 1.5, 3, 6, 12];

/** The best ceiling for each tried rate (linear), and the rate that leaves the least. */
function startOfApproach(rows: readonly ContrastReading[]): readonly number[] {
  const longest = Math.max(...rows.map((each) => each.timeMin));
  const tried = TRIED.map((each) => {
    const rate = each / longest;
    const shape = rows.map((row) => -Math.expm1(-rate * row.timeMin));
    const dot = rows.reduce((sum, row, i) => sum + row.contrastIndex * (shape[i] ?? 0), 0);
    const ceiling = dot / shape.reduce((sum, s) => sum + s * s, 0);
    const left = rows.reduce(
      (sum, row, i) => sum + (row.contrastIndex - ceiling * (shape[i] ?? 0)) ** 2,
      0,
    );
    return { ceiling, rate, left };
  });
  const best = tried.reduce((a, b) => (b.left < a.left ? b : a));
  return [best.ceiling, best.rate];
}

function farCeiling(parameters: readonly number[], longestMin: number): readonly string[] {
  const [ceiling = 0, rate = 0, delay = 0] = parameters;
  const reached = -Math.expm1(-rate * (longestMin - delay));
  if (reached >= 0.5) return [];
  return [
    `the readings reach only ${shown(100 * reached)} % of the fitted ceiling ${shown(ceiling)}: take longer times before trusting it`,
  ];
}

/** The laws that can be fitted. */
export const contrastLaws: Readonly<Record<ContrastLaw, FittableContrastLaw>> = {
  "exponential-approach": {
    names: ["ceiling", "rate per minute"],
    value: ([ceiling = 0, rate = 0], t) => -ceiling * Math.expm1(-rate * t),
    gradient: ([ceiling = 0, rate = 0], t) => [
      -Math.expm1(-rate * t),
      ceiling * t * Math.exp(-rate * t),
    ],
    start: startOfApproach,
    warnings: farCeiling,
  },
  "delayed-approach": {
    names: ["ceiling", "rate per minute", "delay in minutes"],
    value: ([ceiling = 0, rate = 0, delay = 0], t) => -ceiling * Math.expm1(-rate * (t - delay)),
    gradient: ([ceiling = 0, rate = 0, delay = 0], t) => {
      const left = Math.exp(-rate * (t - delay));
      return [1 - left, ceiling * (t - delay) * left, -ceiling * rate * left];
    },
    start: (rows) => [...startOfApproach(rows), 0],
    warnings: farCeiling,
  },
  power: {
    names: ["contrast at one minute", "exponent"],
    value: ([scale = 0, exponent = 0], t) => scale * t ** exponent,
    gradient: ([scale = 0, exponent = 0], t) => [
      t ** exponent,
      scale * t ** exponent * Math.log(t),
    ],
    start: (rows) => {
      const line = straightLine(
        "fitContrastTime",
        rows.map((each) => Math.log(each.timeMin)),
        rows.map((each) => Math.log(each.contrastIndex)),
      );
      return [Math.exp(line.intercept), line.slope];
    },
    warnings: () => ["a power law has no ceiling: do not stretch it beyond its readings"],
  },
};
