import { atomicWeight } from "./atomic-weight.ts";
import { parseChemicalFormula } from "./chemical-formula.ts";

/** Molar mass of a formula. */
export interface MolarMass {
  readonly formula: string;
  readonly molarMassGPerMol: number;
  /** Sum of the bounds of the atomic weights: how far a normal material can lie. */
  readonly boundGPerMol: number;
}

/**
 * Molar mass of a compound from its formula.
 *
 * M = Σ n_i · A_i over the elements, with the IUPAC 2021 standard atomic weights.
 *
 * @param formula as for `parseChemicalFormula`
 * @returns g/mol, and the bound that natural variation of the elements sets to it
 * @throws InputError for a formula that does not parse
 *
 * @example
 * molarMass("Na2S2O3.5H2O").molarMassGPerMol // => 248.1715
 *
 * Source: standard atomic weights, Pure Appl. Chem. 94 (2022) 573–600.
 */
export function molarMass(formula: string): MolarMass {
  const parsed = parseChemicalFormula(formula);
  let mass = 0;
  let bound = 0;
  for (const [symbol, count] of Object.entries(parsed.atoms)) {
    const element = atomicWeight(symbol);
    mass += count * element.weight;
    bound += count * element.bound;
  }
  return { formula: parsed.formula, molarMassGPerMol: mass, boundGPerMol: bound };
}
