import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { type EvenDevelopmentChoice, evenDevelopmentWarnings } from "../rate/even-development.ts";
import { shown } from "../rate/shown.ts";
import type { ContrastCurve } from "./contrast-curve.ts";
import { requireContrastCurve } from "./require-contrast-curve.ts";
import { requireTimeInReach, timeOfContrast, timeRangeWarnings } from "./time-for-contrast.ts";

/** One development of a set, N−2 … N+2. */
export interface ZoneDevelopment {
  /** Steps of expansion (+) or contraction (−). */
  readonly step: number;
  /** "N−2" … "N+2". */
  readonly name: string;
  /** Stops of subject range that this development prints like a normal one. */
  readonly subjectStops: number;
  readonly contrastIndex: number;
  /** Minutes; missing when it cannot be had, see `reason`. */
  readonly timeMin?: number;
  readonly reason?: string;
  readonly warnings: readonly string[];
}

/** Times for subjects of longer and shorter range. */
export interface ZoneDevelopments {
  readonly normalContrast: number;
  readonly normalStops: number;
  readonly developments: readonly ZoneDevelopment[];
  readonly assumptions: readonly string[];
}

/**
 * Developing times for subjects of longer and shorter range than normal (N−2 … N+2).
 *
 * The negative's density range is to stay the same, so CI_N±n = CI_N · S/(S − n), with S the stops
 * from the deepest to the brightest printed zone of a normal subject.
 *
 * @param input.curve contrast curve of film and developer
 * @param input.normalTimeMin normal time, minutes; or
 * @param input.normalContrast normal contrast index
 * @param input.normalStops S, stops, 3 to 15, default 7 (Zone I to Zone VIII)
 * @param input.steps default [−2, −1, 0, 1, 2]
 * @param input.handling @param input.evenDevelopment how short a time may be
 * @returns for each step contrast and time, or the reason why it cannot be had
 * @throws InputError if neither or both of normal time and contrast are given, or a step is not
 * shorter than the normal range
 *
 * @example
 * const curve = exponentialApproach({ ceiling: 0.9, ratePerMin: 0.14, range: { minMin: 4, maxMin: 14 } })
 * developmentForRange({ curve, normalTimeMin: 7 }).developments[3].timeMin // => 9.3208
 *
 * Source: definition of expansion and contraction by zones (A. Adams, The Negative; from memory).
 */
export function developmentForRange(
  input: {
    readonly curve: ContrastCurve;
    readonly normalTimeMin?: number;
    readonly normalContrast?: number;
    readonly normalStops?: number;
    readonly steps?: readonly number[];
  } & EvenDevelopmentChoice,
): ZoneDevelopments {
  const where = "developmentForRange";
  requireObject(where, "input", input, "an object with curve");
  requireContrastCurve(where, input.curve);
  const { curve } = input;
  const normalStops = requireNumber(where, "normalStops", input.normalStops ?? 7, {
    min: 3,
    max: 15,
    unit: "stops",
  });
  const normalContrast = normalContrastOf(where, input);
  const developments = (input.steps ?? [-2, -1, 0, 1, 2]).map((step, i): ZoneDevelopment => {
    requireNumber(where, `steps[${i}]`, step, { min: -10, below: normalStops, unit: "stops" });
    const subjectStops = normalStops - step;
    const contrastIndex = (normalContrast * normalStops) / subjectStops;
    const name = step === 0 ? "N" : `N${step < 0 ? "−" : "+"}${shown(Math.abs(step))}`;
    const head = { step, name, subjectStops, contrastIndex };
    try {
      const timeMin = timeOfContrast(where, curve, contrastIndex);
      const warnings = [
        ...timeRangeWarnings(curve, timeMin),
        ...evenDevelopmentWarnings(where, name, timeMin, input),
      ];
      return { ...head, timeMin, warnings };
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return { ...head, reason: error.message, warnings: [] };
    }
  });
  return {
    normalContrast,
    normalStops,
    developments,
    assumptions: [
      ...curve.assumptions,
      "every development is to give the same density range, for the same paper",
      "flare is not counted: it shortens the range that reaches the film",
    ],
  };
}

function normalContrastOf(
  where: string,
  input: {
    readonly curve: ContrastCurve;
    readonly normalTimeMin?: number;
    readonly normalContrast?: number;
  },
): number {
  const { curve, normalTimeMin, normalContrast } = input;
  if ((normalTimeMin === undefined) === (normalContrast === undefined)) {
    const advice = "write either normalTimeMin or normalContrast";
    throw new InputError(where, "normalTimeMin", normalTimeMin, advice);
  }
  if (normalTimeMin === undefined) {
    return requireNumber(where, "normalContrast", normalContrast, { above: 0, max: 10 });
  }
  return curve.contrastAt(requireTimeInReach(where, "normalTimeMin", normalTimeMin, curve));
}
