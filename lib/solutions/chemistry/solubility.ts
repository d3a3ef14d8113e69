import { InputError, requireNumber } from "../../input/index.ts";
import { chemicalInForm } from "./find-chemical.ts";

/** How much of a chemical water takes at a temperature. */
export interface Solubility {
  readonly name: string;
  readonly temperatureC: number;
  /** Grams of the substance without its water, per 100 g of water. */
  readonly gPer100gWater: number;
  readonly source: string;
  readonly howObtained: string;
}

/**
 * Solubility of a chemical in water, where the registry has it.
 *
 * s = 100 w/(100 − w), with w the mass per cent interpolated between the tabulated temperatures.
 *
 * @param name as for `chemicalInForm`
 * @param temperatureC within the table, as a rule 0 to 100 °C; a table of one value holds ± 10 °C
 * @returns grams of anhydrous substance per 100 g of water; null if the registry has no value or
 *   the form is a liquid
 * @throws InputError for an unknown chemical, or a temperature outside the table
 *
 * @example
 * solubility("sodium sulfite", 20).gPer100gWater // => 26.42
 *
 * Source: CRC Handbook of Chemistry and Physics, 98th ed. (2017), unless the result says otherwise.
 */
export function solubility(name: string, temperatureC: number): Solubility | null {
  const where = "solubility";
  const { chemical, form } = chemicalInForm(name);
  const t = requireNumber(where, "temperatureC", temperatureC, { unit: "°C" });
  const table = chemical.solubility;
  if (!table || form.massFraction !== undefined) return null;
  const massPercent = percentAt(table.values, t);
  if (massPercent === undefined) {
    const first = table.values[0]?.temperatureC ?? 0;
    const last = table.values.at(-1)?.temperatureC ?? 0;
    const range = first === last ? `within 10 °C of ${first}` : `from ${first} to ${last}`;
    throw new InputError(where, "temperatureC", t, `write a temperature ${range} °C`);
  }
  return {
    name: chemical.name,
    temperatureC: t,
    gPer100gWater: (100 * massPercent) / (100 - massPercent),
    source: table.source,
    howObtained: table.howObtained,
  };
}

/** Mass per cent at a temperature, or undefined outside the table. */
export function percentAt(
  values: readonly { readonly temperatureC: number; readonly massPercent: number }[],
  t: number,
): number | undefined {
  const [first] = values;
  const last = values.at(-1);
  if (!first || !last) return undefined;
  if (values.length === 1) {
    return Math.abs(t - first.temperatureC) <= 10 ? first.massPercent : undefined;
  }
  const upper = values.findIndex(({ temperatureC }) => temperatureC >= t);
  if (t < first.temperatureC || upper < 0) return undefined;
  const b = values[upper] ?? last;
  const a = values[Math.max(0, upper - 1)] ?? first;
  const part = a === b ? 0 : (t - a.temperatureC) / (b.temperatureC - a.temperatureC);
  return a.massPercent + part * (b.massPercent - a.massPercent);
}
