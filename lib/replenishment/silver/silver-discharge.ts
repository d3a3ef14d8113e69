import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { requireVolume } from "../require-volume.ts";
import { silverCautions, silverToxicityThreshold } from "./silver-data.ts";

/** What goes down the drain. */
export interface SilverDischarge {
  /** Behind the recovery, g. */
  readonly toDrainG: number;
  readonly recoveredG: number;
  /** In the waste water, mg/L. */
  readonly mgPerL: number;
  /** Against a limit of the local code; null without one. */
  readonly withinLimit: boolean | null;
  readonly aboveToxicityThreshold: boolean;
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
}

/**
 * Silver in the waste water behind recovery steps in series.
 *
 * m_drain = Σ m_i · Π (1 − share), mg/L = 1000 · m_drain / V; what is not treated goes in whole
 *
 * @param waste.treatedG silver in what passes the recovery (overflow, changed baths), g, at least 0
 * @param waste.untreatedG silver that goes by it (carried into the wash), g, at least 0; default 0
 * @param waste.recoveryShares share of each step in series, 0 to 1 each; default none
 * @param waste.waterL waste water in which it leaves, L, above 0
 * @param waste.limitMgPerL limit of the local code, mg/L, above 0. Ask for it; none is built in
 * @returns g and mg/L, and how they stand to the limit
 * @throws InputError for a number out of range
 *
 * @example
 * silverDischarge({ treatedG: 100, recoveryShares: [0.95, 0.95], waterL: 1000 }).mgPerL // => 0.25
 *
 * Source: mass balance; threshold 40 CFR 261.24.
 */
export function silverDischarge(waste: {
  readonly treatedG: number;
  readonly untreatedG?: number;
  readonly recoveryShares?: readonly number[];
  readonly waterL: number;
  readonly limitMgPerL?: number;
}): SilverDischarge {
  const where = "silverDischarge";
  requireObject(where, "waste", waste, "an object with treatedG and waterL");
  const grams = { min: 0, max: 1e9, unit: "g" };
  const treated = requireNumber(where, "treatedG", waste.treatedG, grams);
  const untreated = requireNumber(where, "untreatedG", waste.untreatedG ?? 0, grams);
  const water = requireVolume(where, "waterL", waste.waterL, { min: 1e-3, max: 1e12, unit: "L" });
  const shares = waste.recoveryShares ?? [];
  if (!Array.isArray(shares)) {
    throw new InputError(where, "recoveryShares", shares, "write a list like [0.9, 0.95]");
  }
  const passes = shares.reduce(
    (left, share, i) =>
      left * (1 - requireNumber(where, `recoveryShares[${i}]`, share, { min: 0, max: 1 })),
    1,
  );
  const { limitMgPerL } = waste;
  if (limitMgPerL !== undefined) {
    requireNumber(where, "limitMgPerL", limitMgPerL, { above: 0, unit: "mg/L" });
  }
  const toDrainG = treated * passes + untreated;
  const mgPerL = (1000 * toDrainG) / water;
  return {
    toDrainG,
    recoveredG: treated * (1 - passes),
    mgPerL,
    withinLimit: limitMgPerL === undefined ? null : mgPerL <= limitMgPerL,
    aboveToxicityThreshold: mgPerL > silverToxicityThreshold.mgPerL,
    assumptions: [
      "The waste water is mixed before it is measured. Many codes forbid diluting to reach a limit: then count only the water that the process needs.",
    ],
    cautions: silverCautions,
  };
}
