import { requireNumber, requireObject } from "../../input/index.ts";
import { molarMass } from "../../solutions/index.ts";

/** Faraday constant, C/mol: exact since 2019. */
const FARADAY = 96_485.332_123_310_01;

/**
 * Silver that a current plates out of fixer.
 *
 * m = η · I · t · M / F (one electron an ion): 4.0247 g for an ampere-hour at η = 1
 *
 * @param cell.currentA current, A, at least 0
 * @param cell.hours time, h, at least 0
 * @param cell.currentEfficiency share of the current that plates silver, 0 to 1; it falls with the
 *   silver left, so measure it on your own unit
 * @returns g of silver
 * @throws InputError for a number out of range
 *
 * @example
 * electrolyticSilver({ currentA: 10, hours: 8, currentEfficiency: 0.8 }) // => 257.58
 *
 * Source: Faraday's law; F from CODATA 2018 (exact), atomic weight of silver IUPAC 2021.
 */
export function electrolyticSilver(cell: {
  readonly currentA: number;
  readonly hours: number;
  readonly currentEfficiency: number;
}): number {
  const where = "electrolyticSilver";
  requireObject(where, "cell", cell, "an object with currentA, hours and currentEfficiency");
  const current = requireNumber(where, "currentA", cell.currentA, { min: 0, max: 1e5, unit: "A" });
  const hours = requireNumber(where, "hours", cell.hours, { min: 0, max: 1e6, unit: "h" });
  return current * hours * gramsPerAmpereHour(where, cell.currentEfficiency);
}

/**
 * Hours a current needs to plate out a mass of silver.
 *
 * t = m · F / (η · I · M)
 *
 * @param cell.silverG silver to plate, g, at least 0
 * @param cell.currentA current, A, above 0
 * @param cell.currentEfficiency above 0, at most 1
 * @returns hours
 * @throws InputError for a number out of range
 *
 * @example
 * hoursToPlate({ silverG: 257.58, currentA: 10, currentEfficiency: 0.8 }) // => 8.000
 *
 * Source: as `electrolyticSilver`.
 */
export function hoursToPlate(cell: {
  readonly silverG: number;
  readonly currentA: number;
  readonly currentEfficiency: number;
}): number {
  const where = "hoursToPlate";
  requireObject(where, "cell", cell, "an object with silverG, currentA and currentEfficiency");
  const grams = requireNumber(where, "silverG", cell.silverG, { min: 0, max: 1e9, unit: "g" });
  const current = requireNumber(where, "currentA", cell.currentA, {
    min: 1e-6,
    max: 1e5,
    unit: "A",
  });
  requireNumber(where, "currentEfficiency", cell.currentEfficiency, { min: 1e-6, max: 1 });
  return grams / (current * gramsPerAmpereHour(where, cell.currentEfficiency));
}

function gramsPerAmpereHour(where: string, currentEfficiency: number): number {
  const efficiency = requireNumber(where, "currentEfficiency", currentEfficiency, {
    min: 0,
    max: 1,
  });
  return (efficiency * 3600 * molarMass("Ag").molarMassGPerMol) / FARADAY;
}
