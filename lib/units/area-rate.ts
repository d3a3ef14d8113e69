import { requireNumber, requireObject } from "../input/index.ts";
import { convertWithin, type UnitTable } from "./exact-ratio.ts";

// In millilitres per square metre.
const FT2_IN_M2: readonly [bigint, bigint] = [9_290_304n, 100_000_000n];

const AREA_RATES = {
  "mL/m2": [1n, 1n],
  "L/m2": [1000n, 1n],
  "mL/ft2": [FT2_IN_M2[1], FT2_IN_M2[0]],
  "mL/in2": [FT2_IN_M2[1] * 144n, FT2_IN_M2[0]],
  "usFluidOunce/ft2": [3_785_411_784n * FT2_IN_M2[1], 128_000_000n * FT2_IN_M2[0]],
} as const satisfies UnitTable;

/** Units of volume per area, as replenishment rates are printed. */
export type AreaRateUnit = keyof typeof AREA_RATES;

/**
 * A volume per area in another unit: mL per square foot to mL per square metre and back.
 *
 * value · size(from) / size(to), with 1 ft² = 0.09290304 m² exactly.
 *
 * @param value any finite number
 * @param from its unit: `mL/m2`, `L/m2`, `mL/ft2`, `mL/in2`, `usFluidOunce/ft2`
 * @param to the unit wanted
 * @returns the rate in `to`
 * @throws InputError for a number that is not finite or an unknown unit
 *
 * @example
 * convertAreaRate(200, "mL/ft2", "mL/m2") // => 2152.78
 *
 * Source: NIST Special Publication 811 (2008), Appendix B.8.
 */
export function convertAreaRate(value: number, from: AreaRateUnit, to: AreaRateUnit): number {
  return convertWithin("convertAreaRate", AREA_RATES, value, from, to);
}

/**
 * A rate given per length of film as a rate per area.
 *
 * rate = volume / (length · width)
 *
 * @param given.volumeMl volume for that length, mL, at least 0
 * @param given.lengthM length of film, m, above 0
 * @param given.widthMm width of film, mm, above 0
 * @returns the rate in mL/m²
 * @throws InputError for a number out of range
 *
 * @example
 * areaRateFromFilmLength({ volumeMl: 690, lengthM: 30.48, widthMm: 35 }) // => 646.79
 *
 * Source: definition; the example's 690 mL per 100 ft of 35 mm print film is a published rate.
 */
export function areaRateFromFilmLength(given: {
  readonly volumeMl: number;
  readonly lengthM: number;
  readonly widthMm: number;
}): number {
  const where = "areaRateFromFilmLength";
  requireObject(where, "given", given, "an object with volumeMl, lengthM and widthMm");
  const volume = requireNumber(where, "volumeMl", given.volumeMl, { min: 0, unit: "mL" });
  const length = requireNumber(where, "lengthM", given.lengthM, { above: 0, unit: "m" });
  const width = requireNumber(where, "widthMm", given.widthMm, { above: 0, unit: "mm" });
  return volume / ((length * width) / 1000);
}
