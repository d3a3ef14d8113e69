import { InputError } from "../input/index.ts";
import { convertWithin, type UnitTable } from "./exact-ratio.ts";

// In grams per litre: an avoirdupois mass over a US or imperial volume, as exact fractions.
const POUND = 45_359_237n;
const US_GALLON = 3_785_411_784n;
const IMPERIAL_GALLON = 454_609n;

const CONCENTRATIONS = {
  "g/L": [1n, 1n],
  "mg/L": [1n, 1000n],
  "g/mL": [1000n, 1n],
  "g/100mL": [10n, 1n],
  "lb/usGallon": [POUND * 10_000n, US_GALLON],
  "oz/usGallon": [POUND * 10_000n, US_GALLON * 16n],
  "oz/usQuart": [POUND * 40_000n, US_GALLON * 16n],
  "oz/usFluidOunce": [POUND * 1_280_000n, US_GALLON * 16n],
  "grain/usFluidOunce": [POUND * 1_280_000n, US_GALLON * 7000n],
  "lb/imperialGallon": [POUND, IMPERIAL_GALLON],
  "oz/imperialGallon": [POUND, IMPERIAL_GALLON * 16n],
  "oz/imperialPint": [POUND * 8n, IMPERIAL_GALLON * 16n],
  "grain/imperialFluidOunce": [POUND * 160n, IMPERIAL_GALLON * 7000n],
} as const satisfies UnitTable;

/** Units of mass per volume. */
export type MassConcentrationUnit = keyof typeof CONCENTRATIONS;

/**
 * A mass concentration in another unit: ounces per gallon, grains per ounce, grams per litre.
 *
 * value · size(from) / size(to), from the exact pound, US gallon and imperial gallon.
 *
 * @param value any finite number
 * @param from its unit; `oz/gal` is refused, for the gallon may be US or imperial
 * @param to the unit wanted
 * @returns the concentration in `to`
 * @throws InputError for a number that is not finite, an unknown unit, or an ambiguous one
 *
 * @example
 * convertMassConcentration(1, "oz/usGallon", "g/L") // => 7.489151707
 *
 * Source: NIST Special Publication 811 (2008), Appendix B.8.
 */
export function convertMassConcentration(
  value: number,
  from: MassConcentrationUnit,
  to: MassConcentrationUnit,
): number {
  refuseAmbiguous("from", from);
  refuseAmbiguous("to", to);
  return convertWithin("convertMassConcentration", CONCENTRATIONS, value, from, to);
}

function refuseAmbiguous(argument: string, name: string): void {
  if (!/\/\s*(gal|gallon|qt|quart|pt|pint|fl ?oz|fluid ?ounce|oz|ounce)s?$/i.test(name)) return;
  const mass = name.split("/")[0]?.trim() || "oz";
  const advice = `write "${mass}/usGallon" or "${mass}/imperialGallon" (or the US or imperial smaller unit)`;
  throw new InputError("convertMassConcentration", argument, name, advice);
}
