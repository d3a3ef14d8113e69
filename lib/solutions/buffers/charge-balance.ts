import { findRoot } from "../../numerics/index.ts";
import { DAVIES_LIMIT, daviesLog } from "./davies.ts";
import { ionCharge, type SolutionComposition } from "./solution-composition.ts";
import { debyeHuckelSlope, waterPkw } from "./water-constants.ts";
import { acidPk, weakAcid } from "./weak-acid.ts";

/** A composition made ready for solving: charges and constants looked up. */
export interface ChargeProblem {
  readonly ions: readonly { readonly charge: number; readonly molPerL: number }[];
  readonly acids: readonly {
    readonly id: string;
    readonly molPerL: number;
    readonly pK: readonly number[];
    readonly chargeOfAcid: number;
  }[];
  readonly pKw: number;
  readonly slope: number;
}

/** The state of a solution at a pH. */
export interface ChargeState {
  /** Sum of all charges, mol/L; 0 in a real solution. */
  readonly net: number;
  readonly ionicStrength: number;
  /** For each acid the fraction with 0, 1, 2 … protons lost. */
  readonly fractions: readonly (readonly number[])[];
}

const LOWEST_PH = -3;
const HIGHEST_PH = 17;
const STRENGTH_STEPS = 200;
const STRENGTH_TOLERANCE = 1e-13;

export function chargeProblem(
  where: string,
  composition: SolutionComposition,
  temperatureC: number,
): ChargeProblem {
  return {
    ions: Object.entries(composition.ions).map(([ion, molPerL]) => ({
      charge: ionCharge(where, ion),
      molPerL,
    })),
    acids: Object.entries(composition.acids).map(([id, molPerL]) => ({
      id,
      molPerL,
      pK: acidPk(weakAcid(where, id).id, temperatureC),
      chargeOfAcid: weakAcid(where, id).chargeOfAcid,
    })),
    pKw: waterPkw(temperatureC),
    slope: debyeHuckelSlope(temperatureC),
  };
}

/** Charges at a pH, with the activity coefficients that an ionic strength gives. */
export function chargeStateAt(problem: ChargeProblem, pH: number, strength: number): ChargeState {
  const held = Math.min(strength, DAVIES_LIMIT);
  const logGamma = (charge: number) => daviesLog(charge, held, problem.slope);
  const hydrogen = 10 ** (-pH - logGamma(1));
  const hydroxide = 10 ** (pH - problem.pKw - logGamma(1));
  let net = hydrogen - hydroxide;
  let squares = hydrogen + hydroxide;
  for (const { charge, molPerL } of problem.ions) {
    net += charge * molPerL;
    squares += charge ** 2 * molPerL;
  }
  const fractions = problem.acids.map(({ molPerL, pK, chargeOfAcid }) => {
    // log of each form's amount relative to the fully protonated one
    const logs = [0];
    for (const [j, value] of pK.entries()) {
      const z = chargeOfAcid - j;
      logs.push((logs[j] ?? 0) + pH - value + logGamma(z) - logGamma(z - 1));
    }
    const largest = Math.max(...logs);
    const weights = logs.map((log) => 10 ** (log - largest));
    const sum = weights.reduce((total, weight) => total + weight, 0);
    return weights.map((weight, j) => {
      const z = chargeOfAcid - j;
      net += (z * molPerL * weight) / sum;
      squares += (z ** 2 * molPerL * weight) / sum;
      return weight / sum;
    });
  });
  return { net, ionicStrength: squares / 2, fractions };
}

/**
 * pH at which the charges balance. At a fixed ionic strength the net charge falls steadily with pH,
 * so there is exactly one root; the strength is then worked out anew until it stands still.
 */
export function balanceCharges(problem: ChargeProblem): ChargeState & { readonly pH: number } {
  let strength = problem.ions.reduce((sum, ion) => sum + (ion.charge ** 2 * ion.molPerL) / 2, 0);
  let pH = 7;
  for (let i = 0; i < STRENGTH_STEPS; i++) {
    const net = (trial: number) => chargeStateAt(problem, trial, strength).net;
    pH = findRoot(net, { lower: LOWEST_PH, upper: HIGHEST_PH });
    const next = chargeStateAt(problem, pH, strength).ionicStrength;
    const change = Math.abs(next - strength);
    // Plain iteration converges in a few steps; half steps are a guard against swinging.
    strength = i < STRENGTH_STEPS / 4 ? next : (strength + next) / 2;
    if (change <= STRENGTH_TOLERANCE * (1 + next)) break;
  }
  return { pH, ...chargeStateAt(problem, pH, strength) };
}
