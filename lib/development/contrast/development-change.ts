import { requireNumber, requireObject } from "../../input/index.ts";
import { shown } from "../rate/shown.ts";
import type { ContrastCurve } from "./contrast-curve.ts";
import { requireContrastCurve } from "./require-contrast-curve.ts";
import { requireTimeInReach, timeRangeWarnings } from "./time-for-contrast.ts";

/** What a wrong developing time does. */
export interface DevelopmentChange {
  readonly timeMin: number;
  readonly timeErrorMin: number;
  readonly contrastBefore: number;
  readonly contrastAfter: number;
  readonly contrastChange: number;
  /** Change of speed at density 0.10 above fog, stops; positive is faster. */
  readonly speedChangeStops: number;
  /** Change of density at `logExposureAboveThreshold`. */
  readonly densityChange: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * What an error of developing time does to contrast, speed and density.
 *
 * ΔCI = CI(t + Δt) − CI(t); on a straight curve that turns about its foot (constant inertia)
 * ΔD = ΔCI · L at log exposure L above the foot, and the exposure for 0.10 above fog moves by
 * 0.10/CI, so Δspeed = 0.10·(1/CI − 1/CI')/log 2 stops
 *
 * @param input.curve contrast curve
 * @param input.timeMin right time, minutes
 * @param input.timeErrorMin error, minutes; positive is too long
 * @param input.logExposureAboveThreshold L of the patch that is read, default 2.1, 0 to 4
 * @returns contrast before and after, speed change in stops, density change
 * @throws InputError if a time is out of the curve's reach
 *
 * @example
 * const curve = exponentialApproach({ ceiling: 0.9, ratePerMin: 0.14, range: { minMin: 4, maxMin: 14 } })
 * developmentChange({ curve, timeMin: 7, timeErrorMin: 0.5 }).contrastChange // => 0.022836
 *
 * Source: F. Hurter and V. C. Driffield, constant inertia (from memory); it holds for a straight
 * curve and little bromide, real films gain somewhat more speed.
 */
export function developmentChange(input: {
  readonly curve: ContrastCurve;
  readonly timeMin: number;
  readonly timeErrorMin: number;
  readonly logExposureAboveThreshold?: number;
}): DevelopmentChange {
  const where = "developmentChange";
  requireObject(where, "input", input, "an object with curve, timeMin and timeErrorMin");
  requireContrastCurve(where, input.curve);
  const { curve } = input;
  const timeMin = requireTimeInReach(where, "timeMin", input.timeMin, curve);
  const error = requireNumber(where, "timeErrorMin", input.timeErrorMin, { unit: "min" });
  const wrong = requireTimeInReach(where, "timeMin + timeErrorMin", timeMin + error, curve);
  const above = requireNumber(
    where,
    "logExposureAboveThreshold",
    input.logExposureAboveThreshold ?? 2.1,
    { min: 0, max: 4 },
  );
  const contrastBefore = curve.contrastAt(timeMin);
  const contrastAfter = curve.contrastAt(wrong);
  const contrastChange = contrastAfter - contrastBefore;
  return {
    timeMin,
    timeErrorMin: error,
    contrastBefore,
    contrastAfter,
    contrastChange,
    speedChangeStops: speedChangeStops(contrastBefore, contrastAfter),
    densityChange: contrastChange * above,
    assumptions: [
      ...curve.assumptions,
      "the straight part of the curve turns about its foot as development goes on (constant inertia)",
      `the density is that of a patch ${shown(above)} in log exposure above the foot`,
    ],
    warnings: [...timeRangeWarnings(curve, timeMin), ...timeRangeWarnings(curve, wrong)],
  };
}

/** Speed gained at 0.10 above fog, stops, when contrast changes about a fixed foot of the curve. */
export function speedChangeStops(contrastBefore: number, contrastAfter: number): number {
  return (0.1 * (1 / contrastBefore - 1 / contrastAfter)) / Math.log10(2);
}
