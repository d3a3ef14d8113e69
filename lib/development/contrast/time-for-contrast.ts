import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { findRoot } from "../../numerics/index.ts";
import { type EvenDevelopmentChoice, evenDevelopmentWarnings } from "../rate/even-development.ts";
import { requireMinutes } from "../rate/require-minutes.ts";
import { shown } from "../rate/shown.ts";
import type { ContrastCurve } from "./contrast-curve.ts";
import { requireContrastCurve } from "./require-contrast-curve.ts";

/** The time that gives a wanted contrast. */
export interface TimeForContrast {
  readonly timeMin: number;
  readonly contrastIndex: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * The developing time that gives a wanted contrast index.
 *
 * exponential approach: t = t0 − ln(1 − CI/CI∞)/k
 *
 * @param input.curve contrast curve
 * @param input.contrastIndex wanted contrast index, greater than 0
 * @param input.handling @param input.evenDevelopment how short the time may be
 * @returns minutes, at the temperature of the curve's readings
 * @throws InputError for a contrast that the material does not reach, a time far outside the
 * readings, or one too short for even development
 *
 * @example
 * const { curve } = contrastFromTwoTimes({
 *   first: { timeMin: 4, contrastIndex: 0.7 },
 *   second: { timeMin: 8, contrastIndex: 1.05 },
 * })
 * timeForContrast({ curve, contrastIndex: 0.65 }).timeMin // => 3.601857
 *
 * Source: inverse of the contrast curve.
 */
export function timeForContrast(
  input: {
    readonly curve: ContrastCurve;
    readonly contrastIndex: number;
  } & EvenDevelopmentChoice,
): TimeForContrast {
  const where = "timeForContrast";
  requireObject(where, "input", input, "an object with curve and contrastIndex");
  requireContrastCurve(where, input.curve);
  const { curve } = input;
  const wanted = requireNumber(where, "contrastIndex", input.contrastIndex, { above: 0 });
  const timeMin = timeOfContrast(where, curve, wanted);
  return {
    timeMin,
    contrastIndex: wanted,
    assumptions: curve.assumptions,
    warnings: [
      ...timeRangeWarnings(curve, timeMin),
      ...evenDevelopmentWarnings(where, "the time for this contrast", timeMin, input),
    ],
  };
}

/** The time that gives a contrast, within the reach of the curve. */
export function timeOfContrast(
  where: string,
  curve: ContrastCurve,
  wanted: number,
  /** What the caller gave, if the contrast only follows from it. */
  given?: { readonly argument: string; readonly value: number },
): number {
  const shortest = curve.range.minMin / curve.refuseBeyondFactor;
  const longest = curve.range.maxMin * curve.refuseBeyondFactor;
  const least = curve.contrastAt(shortest);
  const most = curve.contrastAt(longest);
  if (!(wanted >= least && wanted <= most)) {
    const { highestContrast: ceiling } = curve;
    const why =
      ceiling !== undefined && wanted >= ceiling
        ? `; no time at all gives more than ${shown(ceiling)}`
        : "; readings at other times would widen the range";
    if (given !== undefined) {
      const { argument, value } = given;
      const advice = `write a smaller step: it asks for a contrast of ${shown(wanted)}, and the curve gives ${shown(least)} to ${shown(most)} between ${shown(shortest)} and ${shown(longest)} min${why}`;
      throw new InputError(where, argument, value, advice);
    }
    const advice = `write a contrast from ${shown(least)} to ${shown(most)}, which the curve gives between ${shown(shortest)} and ${shown(longest)} min${why}`;
    throw new InputError(where, "contrastIndex", wanted, advice);
  }
  return findRoot((t) => curve.contrastAt(t) - wanted, { lower: shortest, upper: longest });
}

/** Warns of a time outside the readings of a curve. */
export function timeRangeWarnings(curve: ContrastCurve, timeMin: number): readonly string[] {
  const { minMin, maxMin } = curve.range;
  if (timeMin >= minMin && timeMin <= maxMin) return [];
  return [
    `${shown(timeMin)} min lies outside the readings of ${shown(minMin)} to ${shown(maxMin)} min: the answer is extrapolated`,
  ];
}

/** Lets a time in if it is within the reach of a curve. */
export function requireTimeInReach(
  where: string,
  argument: string,
  value: unknown,
  curve: ContrastCurve,
): number {
  const shortest = curve.range.minMin / curve.refuseBeyondFactor;
  const longest = curve.range.maxMin * curve.refuseBeyondFactor;
  const timeMin = requireMinutes(where, argument, value);
  if (timeMin >= shortest && timeMin <= longest) return timeMin;
  const advice = `write a time from ${shown(shortest)} to ${shown(longest)} min: that is as far as the contrast curve is stretched beyond its readings`;
  throw new InputError(where, argument, value, advice);
}
