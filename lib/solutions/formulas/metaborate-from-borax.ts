import { requireNumber } from "../../input/index.ts";
import { cautionsFor } from "../cautions/cautions-for.ts";
import { chemicalInForm } from "../chemistry/find-chemical.ts";

/** Borax and hydroxide that make a metaborate. */
export interface MetaborateFromBorax {
  /** Borax decahydrate, g. */
  readonly boraxG: number;
  readonly sodiumHydroxideG: number;
  readonly cautions: readonly string[];
}

/**
 * Borax and sodium hydroxide that together do the work of sodium metaborate.
 *
 * Na2B4O7 + 2 NaOH → 4 NaBO2 + H2O
 *
 * @param massG of sodium metaborate, at least 0
 * @param form of the metaborate; the tetrahydrate (sold as "8 mol") if left out
 * @returns grams of borax decahydrate and of sodium hydroxide
 * @throws InputError for a negative mass or a form that the registry lacks
 *
 * @example
 * metaborateFromBorax(10).boraxG // => 6.916
 *
 * Source: stoichiometry; molar masses from IUPAC 2021 weights.
 */
export function metaborateFromBorax(massG: number, form = "tetrahydrate"): MetaborateFromBorax {
  const mass = requireNumber("metaborateFromBorax", "massG", massG, { min: 0, unit: "g" });
  const moles = mass / chemicalInForm("sodium metaborate", form).molarMassGPerMol;
  return {
    boraxG: (moles / 4) * chemicalInForm("borax", "decahydrate").molarMassGPerMol,
    sodiumHydroxideG: (moles / 2) * chemicalInForm("sodium hydroxide").molarMassGPerMol,
    cautions: cautionsFor(["borax", "sodium hydroxide"]),
  };
}
