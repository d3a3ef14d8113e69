import { requireNumber, requireObject, requireOneOf } from "../../input/index.ts";
import { type EvenDevelopmentChoice, evenDevelopmentWarnings } from "../rate/even-development.ts";
import { shown } from "../rate/shown.ts";
import type { ContrastCurve } from "./contrast-curve.ts";
import { speedChangeStops } from "./development-change.ts";
import { requireContrastCurve } from "./require-contrast-curve.ts";
import { requireTimeInReach, timeOfContrast, timeRangeWarnings } from "./time-for-contrast.ts";

/** Which tone of the picture a push puts back to its density. */
export type PushedTone = "midtone" | "highlight";

/** A push (or pull) of a film, in time and in what it costs. */
export interface PushDevelopment {
  readonly stops: number;
  readonly timeMin: number;
  readonly timeFactor: number;
  readonly contrastIndex: number;
  readonly normalContrast: number;
  /** Stops by which shadows are still under-exposed after the speed gained by development. */
  readonly shadowLossStops: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** log10 exposure above the threshold of the tone that is put back: mid-grey, brightest printed. */
const ABOVE_THRESHOLD: Readonly<Record<PushedTone, number>> = { midtone: 1, highlight: 2.1 };

/**
 * The developing time that puts a tone of a film exposed at another index back to its density.
 *
 * CI' = CI · L/(L − 0.301·n), with n the stops of under-exposure and L the log exposure of the tone
 * above the threshold: 1.0 for mid-grey (ISO 6 puts its speed point a factor ten below), 2.1 for a
 * highlight seven stops above the shadows.
 *
 * @param input.curve contrast curve of film and developer
 * @param input.normalTimeMin normal time, minutes
 * @param input.stops n, stops of under-exposure (push, positive) or over-exposure (pull, negative),
 * −3 to 3; index 400 exposed at 800 is +1
 * @param input.keep "midtone" (default) or "highlight"
 * @param input.logExposureAboveThreshold L of one's own, 0.3 to 4
 * @param input.handling @param input.evenDevelopment how short the time may be
 * @returns the time in minutes, the contrast it gives, and the stops that shadows lose all the same
 * @throws InputError if the contrast cannot be had
 *
 * @example
 * const curve = exponentialApproach({ ceiling: 0.9, ratePerMin: 0.14, range: { minMin: 4, maxMin: 14 } })
 * pushDevelopment({ curve, normalTimeMin: 7, stops: 1, keep: "highlight" }).timeMin // => 9.3318
 *
 * Source: geometry of a straight characteristic curve; ISO 6:1993 for the speed point (from memory).
 */
export function pushDevelopment(
  input: {
    readonly curve: ContrastCurve;
    readonly normalTimeMin: number;
    readonly stops: number;
    readonly keep?: PushedTone;
    readonly logExposureAboveThreshold?: number;
  } & EvenDevelopmentChoice,
): PushDevelopment {
  const where = "pushDevelopment";
  requireObject(where, "input", input, "an object with curve, normalTimeMin and stops");
  requireContrastCurve(where, input.curve);
  const { curve } = input;
  const normal = requireTimeInReach(where, "normalTimeMin", input.normalTimeMin, curve);
  const stops = requireNumber(where, "stops", input.stops, { min: -3, max: 3, unit: "stops" });
  const keep = requireOneOf(where, "keep", input.keep ?? "midtone", ["midtone", "highlight"]);
  const above = requireNumber(
    where,
    "logExposureAboveThreshold",
    input.logExposureAboveThreshold ?? ABOVE_THRESHOLD[keep],
    { min: 0.3, max: 4 },
  );
  const shift = Math.log10(2) * stops;
  requireNumber(where, "logExposureAboveThreshold", above, {
    above: shift,
    hint: `${shown(stops)} stops take this tone below the threshold: there is nothing to develop`,
  });
  const normalContrast = curve.contrastAt(normal);
  const contrastIndex = (normalContrast * above) / (above - shift);
  const timeMin = timeOfContrast(where, curve, contrastIndex, {
    argument: "stops",
    value: stops,
  });
  const shadowLossStops = stops - speedChangeStops(normalContrast, contrastIndex);
  return {
    stops,
    timeMin,
    timeFactor: timeMin / normal,
    contrastIndex,
    normalContrast,
    shadowLossStops,
    assumptions: [
      ...curve.assumptions,
      `the tone that keeps its density lies ${shown(above)} in log exposure above the threshold`,
      "the straight part of the curve turns about its foot as development goes on (constant inertia)",
    ],
    warnings: [
      ...timeRangeWarnings(curve, timeMin),
      ...evenDevelopmentWarnings(where, "the pushed time", timeMin, input),
      ...(shadowLossStops > 0.5
        ? [
            `shadows stay ${shown(shadowLossStops)} stops under-exposed: development raises contrast, it does not bring back what was not exposed`,
          ]
        : []),
    ],
  };
}
