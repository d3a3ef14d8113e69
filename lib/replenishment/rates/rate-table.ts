import { requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { type AreaReading, convertAreaRate, formatAreaM2, photoFormat } from "../../units/index.ts";

/** What one format takes. */
export interface FormatRate {
  readonly format: string;
  /** m² of one roll, sheet or metre. */
  readonly areaM2: number;
  /** mL of replenisher for one. */
  readonly mlEach: number;
  /** Pump strokes for one; null without a pump setting. */
  readonly strokesEach: number | null;
}

/** One replenishment rate in every way it is written down. */
export interface RateTable {
  readonly mlPerM2: number;
  readonly mlPerFt2: number;
  /** At the line's area per hour; null without one. */
  readonly mlPerHour: number | null;
  readonly mlPerMin: number | null;
  readonly strokesPerM2: number | null;
  /** Area after which the pump fires once. */
  readonly m2PerStroke: number | null;
  readonly formats: readonly FormatRate[];
  readonly assumptions: readonly string[];
}

/**
 * A replenishment rate per area, per roll of each format, per hour and per pump stroke.
 *
 * mL each = r · area of the format; mL/h = r · a; strokes/m² = r / v
 *
 * @param rate.mlPerM2 replenishment rate, mL/m², at least 0
 * @param rate.formats names in `photoFormats`; default none
 * @param rate.areaM2PerHour what the line takes in an hour, m²/h, at least 0
 * @param rate.mlPerStroke what the pump gives with a stroke, mL, above 0
 * @param rate.reading which area a roll counts: `"dimensions"` (default) or `"trade"`. Use the one that
 *   the rate was printed for: the trade's 80 in² understates a 135-36 by 9 %
 * @returns see {@link RateTable}
 * @throws InputError for an unknown format or a number out of range
 *
 * @example
 * rateTable({ mlPerM2: 600, formats: ["135-36", "120"] }).formats.map((each) => each.mlEach) // => [34.02, 30.4425]
 *
 * Source: definition.
 */
export function rateTable(rate: {
  readonly mlPerM2: number;
  readonly formats?: readonly string[];
  readonly areaM2PerHour?: number;
  readonly mlPerStroke?: number;
  readonly reading?: AreaReading;
}): RateTable {
  const where = "rateTable";
  requireObject(where, "rate", rate, "an object with mlPerM2");
  if (rate.formats !== undefined) requireEntries(where, "formats", rate.formats, "a list of texts");
  const mlPerM2 = requireNumber(where, "mlPerM2", rate.mlPerM2, {
    min: 0,
    max: 1e7,
    unit: "mL/m²",
  });
  const perHour = rate.areaM2PerHour;
  const stroke = rate.mlPerStroke;
  if (perHour !== undefined) {
    requireNumber(where, "areaM2PerHour", perHour, { min: 0, max: 1e6, unit: "m²/h" });
  }
  if (stroke !== undefined) {
    requireNumber(where, "mlPerStroke", stroke, { above: 0, min: 1e-9, max: 1e6, unit: "mL" });
  }
  const reading = rate.reading ?? "dimensions";
  const strokesPerM2 = stroke === undefined ? null : mlPerM2 / stroke;
  return {
    mlPerM2,
    mlPerFt2: convertAreaRate(mlPerM2, "mL/m2", "mL/ft2"),
    mlPerHour: perHour === undefined ? null : mlPerM2 * perHour,
    mlPerMin: perHour === undefined ? null : (mlPerM2 * perHour) / 60,
    strokesPerM2,
    m2PerStroke: stroke === undefined || mlPerM2 === 0 ? null : stroke / mlPerM2,
    formats: (rate.formats ?? []).map((id) => {
      const areaM2 = formatAreaM2(photoFormat(id).id, { reading });
      const strokesEach = strokesPerM2 === null ? null : strokesPerM2 * areaM2;
      return { format: id, areaM2, mlEach: mlPerM2 * areaM2, strokesEach };
    }),
    assumptions: [
      reading === "trade" ? "a 135-36 or a 120 counts 80 in²" : "areas from width and length",
    ],
  };
}

/**
 * The rate per area behind a rate per roll.
 *
 * r = mL each / area of the format
 *
 * @param mlEach mL for one roll, sheet or metre, at least 0
 * @param format a name in `photoFormats`
 * @param options.reading `"dimensions"` (default) or `"trade"`: as the rate was printed
 * @returns mL/m²
 * @throws InputError for an unknown format or a negative number
 *
 * @example
 * ratePerAreaFromFormat(34.02, "135-36") // => 600
 *
 * Source: definition.
 */
export function ratePerAreaFromFormat(
  mlEach: number,
  format: string,
  options: { readonly reading?: AreaReading } = {},
): number {
  const volume = requireNumber("ratePerAreaFromFormat", "mlEach", mlEach, {
    min: 0,
    max: 1e7,
    unit: "mL",
  });
  return volume / formatAreaM2(format, options);
}
