import { requireNumber, requireObject } from "../../input/index.ts";
import { type SolutionPh, solutionPh } from "./solution-ph.ts";
import { weakAcid } from "./weak-acid.ts";

/** A weak acid and its salt. */
export interface BufferMixture {
  /** Id of `weakAcids`: `"acetic"`, `"phosphoric"`. */
  readonly acid: string;
  /** mol/L of the form that gives the proton. */
  readonly acidMolPerL: number;
  /** mol/L of the form that has lost it, as its sodium salt. */
  readonly saltMolPerL: number;
  /** Which proton, from 1; 1 if left out. */
  readonly step?: number;
  /** From 0 to 75 °C; 25 if left out. */
  readonly temperatureC?: number;
}

/**
 * pH of a weak acid and its salt, with activities.
 *
 * pH ≈ pK + log(salt/acid) + corrections, solved exactly by charge balance.
 *
 * @param mixture acid, mol/L of acid and salt (not both 0), which proton, temperature
 * @returns as `solutionPh`
 * @throws InputError for an unknown acid or step, or concentrations that are negative or both 0
 *
 * @example
 * bufferPh({ acid: "acetic", acidMolPerL: 0.1, saltMolPerL: 0.1 }).pH // => 4.65
 *
 * Source: charge balance with Davies activities; constants as in `weakAcids`.
 */
export function bufferPh(mixture: BufferMixture): SolutionPh {
  const where = "bufferPh";
  requireObject(where, "mixture", mixture, "an object with acid, acidMolPerL and saltMolPerL");
  const { steps, chargeOfAcid } = weakAcid(where, mixture.acid);
  const bounds = { min: 1, max: steps.length, whole: true };
  const step = requireNumber(where, "step", mixture.step ?? 1, bounds);
  const range = { min: 0, max: 30, unit: "mol/L" };
  const acid = requireNumber(where, "acidMolPerL", mixture.acidMolPerL, range);
  const salt = requireNumber(where, "saltMolPerL", mixture.saltMolPerL, range);
  requireNumber(where, "acidMolPerL + saltMolPerL", acid + salt, { above: 0 });
  // Charge of the two forms; strong ions of the other sign balance them.
  const zAcid = chargeOfAcid - step + 1;
  const charge = acid * zAcid + salt * (zAcid - 1);
  const counterIons = charge <= 0 ? { "Na+": -charge } : { "Cl-": charge };
  const composition = { ions: counterIons, acids: { [mixture.acid]: acid + salt }, notCounted: [] };
  return solutionPh(composition, { temperatureC: mixture.temperatureC ?? 25 });
}
