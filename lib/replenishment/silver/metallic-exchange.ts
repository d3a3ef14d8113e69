import { requireNumber, requireObject } from "../../input/index.ts";
import { molarMass } from "../../solutions/index.ts";
import { quotient } from "../quotient.ts";
import { requireVolume } from "../require-volume.ts";
import { silverCautions } from "./silver-data.ts";

/** What cartridges of iron do to a flow of used fixer. */
export interface MetallicExchange {
  /** g of silver a cartridge takes until its iron is used. */
  readonly capacityG: number;
  /** Litres of this fixer until then; null if no silver comes. */
  readonly litresToChange: number | null;
  /** Days until then; null without a flow or silver. */
  readonly daysToChange: number | null;
  /** mg/L after one and after two in series while they are fresh. */
  readonly afterOneMgPerL: number;
  readonly afterTwoMgPerL: number;
  /** Iron that goes into the solution for the silver taken, g/L. */
  readonly ironGPerL: number;
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
}

/**
 * Silver taken from fixer by metallic exchange with iron, in one cartridge or two in series.
 *
 * 2 Ag⁺ + Fe → 2 Ag + Fe²⁺: 0.2589 g of iron for a gram of silver; capacity = u · m_Fe · 2·M_Ag/M_Fe
 *
 * @param cartridge.ironG iron in a cartridge, g, above 0
 * @param cartridge.utilisation share of the iron that works before silver breaks through, above 0, at
 *   most 1; acid also eats iron, so measure it or take the maker's figure
 * @param cartridge.silverGPerL silver in the fixer, g/L, at least 0
 * @param cartridge.share share of the silver that a fresh cartridge takes, 0 to 1
 * @param cartridge.litresPerDay flow of used fixer, L/day, at least 0
 * @returns capacity, litres and days until it is changed, mg/L behind it
 * @throws InputError for a number out of range
 *
 * @example
 * metallicExchange({ ironG: 1000, utilisation: 0.5, silverGPerL: 4, share: 0.95, litresPerDay: 10 }).capacityG // => 1931.56
 *
 * Source: stoichiometry; two cartridges in series: City of Dallas best management practice.
 */
export function metallicExchange(cartridge: {
  readonly ironG: number;
  readonly utilisation: number;
  readonly silverGPerL: number;
  readonly share: number;
  readonly litresPerDay?: number;
}): MetallicExchange {
  const where = "metallicExchange";
  requireObject(where, "cartridge", cartridge, "an object with ironG, utilisation, silverGPerL, …");
  const iron = requireNumber(where, "ironG", cartridge.ironG, { min: 1e-3, max: 1e6, unit: "g" });
  const used = requireNumber(where, "utilisation", cartridge.utilisation, { min: 1e-3, max: 1 });
  const silver = requireNumber(where, "silverGPerL", cartridge.silverGPerL, {
    min: 0,
    max: 100,
    unit: "g/L",
  });
  const share = requireNumber(where, "share", cartridge.share, { min: 0, max: 1 });
  const flow = requireVolume(where, "litresPerDay", cartridge.litresPerDay ?? 0, {
    min: 0,
    max: 1e7,
    unit: "L/day",
  });
  const ironPerSilver = molarMass("Fe").molarMassGPerMol / (2 * molarMass("Ag").molarMassGPerMol);
  const capacityG = (used * iron) / ironPerSilver;
  const takenGPerL = silver * share;
  const litresToChange = quotient(capacityG, takenGPerL);
  return {
    capacityG,
    litresToChange,
    daysToChange: litresToChange === null ? null : quotient(litresToChange, flow),
    afterOneMgPerL: 1000 * silver * (1 - share),
    afterTwoMgPerL: 1000 * silver * (1 - share) ** 2,
    ironGPerL: takenGPerL * ironPerSilver,
    assumptions: [
      "each cartridge takes the same share of what reaches it until its iron is used, then nothing",
      "only silver uses iron, apart from what utilisation allows for",
    ],
    cautions: silverCautions,
  };
}
