import { requireEntries, requireObject } from "../../input/index.ts";
import { type ContrastCurve, exponentialApproach, powerOfTime } from "./contrast-curve.ts";
import type { ContrastFit } from "./fit-contrast-time.ts";

/**
 * The contrast curve that a fit stands for, with the range of its readings.
 *
 * @param fit result of fitContrastTime
 * @param refuseBeyondFactor by what factor a time may lie outside the range, default 1.5
 * @returns the curve
 * @throws InputError if the fitted parameters make no curve that rises
 *
 * @example
 * const rows = [
 *   { timeMin: 4, contrastIndex: 0.4 },
 *   { timeMin: 9, contrastIndex: 0.6 },
 *   { timeMin: 16, contrastIndex: 0.8 },
 * ]
 * contrastCurveFromFit(fitContrastTime({ rows, law: "power" })).contrastAt(25) // => 1.00
 *
 * Source: as fitContrastTime.
 */
export function contrastCurveFromFit(fit: ContrastFit, refuseBeyondFactor = 1.5): ContrastCurve {
  requireObject(
    "contrastCurveFromFit",
    "fit",
    fit,
    "an object with law, parameters, confidence, …",
  );
  requireObject("contrastCurveFromFit", "range", fit.range, "an object with minMin and maxMin");
  requireEntries("contrastCurveFromFit", "parameters", fit.parameters);
  const [first = Number.NaN, second = Number.NaN, third] = fit.parameters.map((each) => each.value);
  const reach = { range: fit.range, refuseBeyondFactor };
  if (fit.law === "power") return powerOfTime({ atOneMinute: first, exponent: second, ...reach });
  return exponentialApproach({
    ceiling: first,
    ratePerMin: second,
    ...(third === undefined ? {} : { delayMin: third }),
    ...reach,
  });
}
