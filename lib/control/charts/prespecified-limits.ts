import { requireNumber, requireObject } from "../../input/index.ts";
import { limitsAround, type StatisticalLimits } from "./statistical-limits.ts";

/**
 * Statistical limits from a centre and a sigma that are already known (a long history, an earlier
 * base period), so that no base period is needed.
 *
 * Limits stand at `centre ± width · sigma`.
 *
 * @param known `centre` and `sigma` in the unit of the readings, sigma above 0; `widthSigma`,
 * default 3
 * @returns limits in the unit of the readings, with `baseReadings` 0
 * @throws InputError if a number is not finite or sigma is not above 0
 *
 * @example
 * prespecifiedLimits({ centre: 16, sigma: 4 }).upperLimit // => 28
 *
 * Source: ISO 7870-2:2013, "control limits with prespecified parameter values".
 */
export function prespecifiedLimits(known: {
  readonly centre: number;
  readonly sigma: number;
  readonly widthSigma?: number;
}): StatisticalLimits {
  const where = "prespecifiedLimits";
  requireObject(where, "known", known, "an object with centre and sigma");
  const centre = requireNumber(where, "centre", known.centre);
  const sigma = requireNumber(where, "sigma", known.sigma, { above: 0 });
  const width = requireNumber(where, "widthSigma", known.widthSigma ?? 3, { above: 0 });
  return {
    ...limitsAround(centre, sigma, width),
    baseFirst: 0,
    baseLast: 0,
    baseReadings: 0,
    sigmaFrom: "prespecified",
    assumptions: ["centre and sigma are taken as known, not computed from these readings"],
    warnings: [],
  };
}
