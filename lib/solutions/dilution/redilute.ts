import { InputError, requireObject } from "../../input/index.ts";
import type { Ratio } from "../../units/index.ts";
import { ADDITIVE_VOLUMES } from "./dilute.ts";
import { ratioStrength, requireSingle } from "./ratio-strength.ts";
import { requireVolumeMl } from "./require-volume.ts";

/** How to bring a solution from one dilution to another. */
export interface Redilution {
  /** Volume of the solution at hand that goes in. */
  readonly fromMl: number;
  /** Water to add; 0 when the wanted solution is stronger. */
  readonly waterMl: number;
  /** Undiluted concentrate to add; 0 when the wanted solution is weaker. */
  readonly concentrateMl: number;
  readonly totalMl: number;
  readonly assumptions: readonly string[];
}

/**
 * Brings a solution that is already diluted to another dilution: with water if the wanted one is
 * weaker, with undiluted concentrate if it is stronger.
 *
 * Weaker: V_from = V · f_to / f_from. Stronger: V_concentrate = V · (f_to − f_from) / (1 − f_from).
 *
 * @param given.from ratio of the solution at hand, one concentrate, `"1+4"`
 * @param given.to ratio wanted, `"1+9"`
 * @param given.totalMl volume wanted, mL, above 0; or instead:
 * @param given.fromMl all of a volume at hand, mL, above 0
 * @returns volumes in mL
 * @throws InputError unless exactly one of the volumes is given, or for a ratio with more concentrates
 *
 * @example
 * redilute({ from: "1+4", to: "1+9", totalMl: 1000 }).fromMl // => 500
 * redilute({ from: "1+9", to: "1+4", fromMl: 800 }).concentrateMl // => 100
 *
 * Source: mass balance with additive volumes.
 */
export function redilute(given: {
  readonly from: string | Ratio;
  readonly to: string | Ratio;
  readonly totalMl?: number;
  readonly fromMl?: number;
}): Redilution {
  requireObject("redilute", "given", given, "an object with from and to");
  const fFrom = ratioStrength(requireSingle("redilute", "from", given.from));
  const fTo = ratioStrength(requireSingle("redilute", "to", given.to));
  const share = fTo <= fFrom ? fTo / fFrom : (1 - fTo) / (1 - fFrom);
  const totalMl = totalOf(given, share);
  const fromMl = given.fromMl ?? totalMl * share;
  const added = Math.max(0, totalMl - fromMl);
  return {
    fromMl,
    waterMl: fTo <= fFrom ? added : 0,
    concentrateMl: fTo <= fFrom ? 0 : added,
    totalMl,
    assumptions: [ADDITIVE_VOLUMES],
  };
}

function totalOf(
  given: { readonly totalMl?: number; readonly fromMl?: number },
  share: number,
): number {
  if ((given.totalMl === undefined) === (given.fromMl === undefined)) {
    const advice =
      "write either totalMl, the volume wanted, or fromMl, the volume at hand to use up";
    throw new InputError("redilute", "totalMl", given.totalMl, advice);
  }
  if (given.totalMl !== undefined) {
    return requireVolumeMl("redilute", "totalMl", given.totalMl);
  }
  const fromMl = requireVolumeMl("redilute", "fromMl", given.fromMl);
  if (share === 0) {
    throw new InputError("redilute", "to", "stock", "pour undiluted concentrate instead");
  }
  return fromMl / share;
}
