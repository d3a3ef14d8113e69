import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { shown } from "../rate/shown.ts";

/** Laws of contrast against developing time. */
export type ContrastLaw = "exponential-approach" | "delayed-approach" | "power";

/**
 * Contrast index (or gamma) against developing time at one temperature.
 *
 * A plain object; `contrastAt` is its only function. Within `range` it is supported by readings;
 * up to `refuseBeyondFactor` times beyond its ends it is stretched with a warning.
 */
export interface ContrastCurve {
  readonly law: ContrastLaw;
  /** Times in minutes that the readings cover. */
  readonly range: { readonly minMin: number; readonly maxMin: number };
  /** By what factor a time may lie outside the range. */
  readonly refuseBeyondFactor: number;
  /** The contrast that no time exceeds; a power law has none. */
  readonly highestContrast?: number;
  readonly description: string;
  readonly assumptions: readonly string[];
  /** Contrast index after a time in minutes, greater than 0. */
  contrastAt(timeMin: number): number;
}

/** What is common to the constructors. */
export interface ContrastReach {
  readonly range: { readonly minMin: number; readonly maxMin: number };
  /** Default 1.5: half as long again as the longest reading, or two thirds of the shortest. */
  readonly refuseBeyondFactor?: number;
}

/**
 * A contrast curve that rises towards a ceiling: the classical law of development.
 *
 * CI = CI∞ · (1 − exp(−k·(t − t0)))
 *
 * @param input.ceiling CI∞ (gamma infinity), greater than 0 and at most 10
 * @param input.ratePerMin k, per minute, greater than 0
 * @param input.delayMin t0, minutes before density begins to form, default 0
 * @param input.range times that readings cover, minutes
 * @param input.refuseBeyondFactor by what factor a time may lie outside the range, default 1.5
 * @returns the curve
 * @throws InputError for numbers outside their bounds
 *
 * @example
 * exponentialApproach({
 *   ceiling: 1.4,
 *   ratePerMin: 0.1732868,
 *   range: { minMin: 4, maxMin: 8 },
 * }).contrastAt(4) // => 0.7
 *
 * Source: F. Hurter and V. C. Driffield 1890; S. E. Sheppard and C. E. K. Mees, Investigations on the
 * Theory of the Photographic Process, 1907 (formula from memory).
 */
export function exponentialApproach(
  input: {
    readonly ceiling: number;
    readonly ratePerMin: number;
    readonly delayMin?: number;
  } & ContrastReach,
): ContrastCurve {
  const where = "exponentialApproach";
  requireObject(where, "input", input, "an object with ceiling, ratePerMin and range");
  requireObject(where, "range", input.range, "an object with minMin and maxMin");
  const ceiling = requireNumber(where, "ceiling", input.ceiling, { above: 0, max: 10 });
  const rate = requireNumber(where, "ratePerMin", input.ratePerMin, { above: 0, max: 20 });
  const delay = requireNumber(where, "delayMin", input.delayMin ?? 0, { min: -60, max: 60 });
  const reach = checkedContrastReach(where, input);
  if (delay >= reach.range.minMin) {
    const advice = `write a delay shorter than the shortest time of the range, ${shown(reach.range.minMin)} min`;
    throw new InputError(where, "delayMin", delay, advice);
  }
  return {
    law: delay === 0 ? "exponential-approach" : "delayed-approach",
    ...reach,
    highestContrast: ceiling,
    description: `rises towards ${shown(ceiling)} at ${shown(rate)} per minute${delay === 0 ? "" : ` after ${shown(delay)} min`}`,
    assumptions: [...common, "contrast approaches its ceiling by the same fraction every minute"],
    contrastAt: (timeMin) => Math.max(0, -ceiling * Math.expm1(-rate * (timeMin - delay))),
  };
}

/**
 * A contrast curve without a ceiling: a power of time. Good only within its range.
 *
 * CI = a · t^b
 *
 * @param input.atOneMinute a, the contrast after one minute, greater than 0
 * @param input.exponent b, greater than 0 and at most 3
 * @param input.range times that readings cover, minutes
 * @param input.refuseBeyondFactor by what factor a time may lie outside the range, default 1.5
 * @returns the curve
 * @throws InputError for numbers outside their bounds
 *
 * @example
 * powerOfTime({ atOneMinute: 0.2, exponent: 0.5, range: { minMin: 4, maxMin: 16 } }).contrastAt(9) // => 0.6
 *
 * Source: empirical; no physical basis.
 */
export function powerOfTime(
  input: { readonly atOneMinute: number; readonly exponent: number } & ContrastReach,
): ContrastCurve {
  const where = "powerOfTime";
  requireObject(where, "input", input, "an object with atOneMinute, exponent and range");
  requireObject(where, "range", input.range, "an object with minMin and maxMin");
  const scale = requireNumber(where, "atOneMinute", input.atOneMinute, { above: 0, max: 10 });
  const exponent = requireNumber(where, "exponent", input.exponent, { above: 0, max: 3 });
  return {
    law: "power",
    ...checkedContrastReach(where, input),
    description: `${shown(scale)} times the ${shown(exponent)} power of the minutes`,
    assumptions: [...common, "contrast grows as a power of time, without a ceiling"],
    contrastAt: (timeMin) => scale * timeMin ** exponent,
  };
}

const common = [
  "developer, dilution, temperature and agitation are those of the readings",
  "fog is not counted: contrast is measured above it",
];

function checkedContrastReach(where: string, given: ContrastReach) {
  const { minMin, maxMin } = given.range;
  requireNumber(where, "range.minMin", minMin, { above: 0, unit: "min" });
  requireNumber(where, "range.maxMin", maxMin, {
    above: minMin,
    unit: "min",
    hint: "the longest time is longer than the shortest",
  });
  const refuseBeyondFactor = requireNumber(
    where,
    "refuseBeyondFactor",
    given.refuseBeyondFactor ?? 1.5,
    { min: 1, max: 10 },
  );
  return { range: { minMin, maxMin }, refuseBeyondFactor };
}
