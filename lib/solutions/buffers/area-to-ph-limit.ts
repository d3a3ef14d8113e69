import { requireNumber, requireObject } from "../../input/index.ts";
import { findRoot } from "../../numerics/index.ts";
import { type BathPhOptions, pointAt } from "./bath-ph-against-area.ts";

/** Film area that a bath takes until its pH reaches a limit. */
export interface AreaToPhLimit {
  /** null if the limit is never reached, however much film passes. */
  readonly areaM2: number | null;
  readonly areaM2PerL: number | null;
  readonly freshPh: number;
  readonly pHLimit: number;
  readonly carriedInShare: number | null;
  readonly warnings: readonly string[];
}

const LARGEST_SHARE = 0.999_999;

/**
 * Film area after which a bath's pH, moved by carry-in, reaches a limit.
 *
 * The root A of pH(A) = limit, between 0 and the area at which the bath is all carried-in solution.
 *
 * @param options bath, what is carried in, volume in mL, carry-over in mL/m² (above 0), temperature
 * @param pHLimit from 0 to 14, above or below the fresh bath's pH
 * @returns the area in m² and per litre of bath; 0 if the fresh bath is at or beyond the limit in the
 *   direction in which carry-in moves it, null if carry-in never takes it there
 * @throws InputError for a limit outside 0 to 14, or a carry-over of 0
 *
 * @example
 * areaToPhLimit({ bath: bathFormula("acetic-stop-bath"), bathVolumeMl: 1000, carriedIn: bathFormula("print-developer"), carryInMlPerM2: 70 }, 5.5).areaM2 // => 1.7994
 *
 * Source: mass balance of a stirred tank, then charge balance with Davies activities.
 */
export function areaToPhLimit(options: BathPhOptions, pHLimit: number): AreaToPhLimit {
  const where = "areaToPhLimit";
  requireObject(where, "options", options, "an object with bath, bathVolumeMl, carriedIn, …");
  const limit = requireNumber(where, "pHLimit", pHLimit, { min: 0, max: 14 });
  const inward = requireNumber(where, "carryInMlPerM2", options.carryInMlPerM2, {
    above: 0,
    unit: "mL/m²",
  });
  const fresh = pointAt(options, 0).pH;
  const last = lastArea(options, inward);
  const rising = pointAt(options, last).pH >= fresh;
  const short = (area: number) => (pointAt(options, area).pH - limit) * (rising ? 1 : -1);
  const result = (areaM2: number | null, warnings: readonly string[] = []): AreaToPhLimit => ({
    areaM2,
    areaM2PerL: areaM2 === null ? null : (1000 * areaM2) / options.bathVolumeMl,
    freshPh: fresh,
    pHLimit: limit,
    carriedInShare: areaM2 === null ? null : pointAt(options, areaM2).carriedInShare,
    warnings,
  });
  if (short(0) >= 0) return result(0, ["the fresh bath is already at or beyond the limit"]);
  if (short(last) < 0) return result(null, ["carry-in alone never takes the bath to the limit"]);
  return result(findRoot(short, { lower: 0, upper: last, tolerance: last * 1e-13 }));
}

/** An area at which the bath is, for all that matters, the carried-in solution. */
function lastArea({ bathVolumeMl, carryOutMlPerM2 }: BathPhOptions, inward: number): number {
  const outward = carryOutMlPerM2 ?? inward;
  const loss = outward - inward;
  const replaced = (-Math.log(1 - LARGEST_SHARE) * bathVolumeMl) / inward;
  if (loss > 0) return Math.min(replaced, (bathVolumeMl / loss) * (1 - 1e-9));
  return loss < 0 ? replaced * 1e3 : replaced;
}
