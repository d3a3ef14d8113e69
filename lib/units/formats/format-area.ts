import { InputError, requireNumber, requireObject, requireOneOf } from "../../input/index.ts";
import { convertArea } from "../area.ts";
import { photoFormatFor } from "./photo-format-by-id.ts";

/**
 * Which area is meant: `"dimensions"` from width and length, `"trade"` as the trade counts
 * (one 135-36 = one 120 = four 4x5 in = one 8x10 in = 80 in²).
 */
export type AreaReading = "dimensions" | "trade";

/**
 * Area of a rectangle of film or paper.
 *
 * A = width · length
 *
 * @param size.widthMm mm, above 0
 * @param size.lengthMm mm, above 0
 * @returns area in m²
 * @throws InputError for a side that is not a positive number
 *
 * @example
 * rectangleAreaM2({ widthMm: 101.6, lengthMm: 152.4 }) // => 0.01548384
 */
export function rectangleAreaM2(size: {
  readonly widthMm: number;
  readonly lengthMm: number;
}): number {
  requireObject("rectangleAreaM2", "size", size, "an object with widthMm and lengthMm");
  const width = requireNumber("rectangleAreaM2", "widthMm", size.widthMm, { above: 0, unit: "mm" });
  const length = requireNumber("rectangleAreaM2", "lengthMm", size.lengthMm, {
    above: 0,
    unit: "mm",
  });
  return (width * length) / 1e6;
}

/**
 * Area of one piece (or one metre) of a format.
 *
 * By dimensions: width · length. By the trade's count: 80 in² for a 135-36, which understates its
 * dimensions by about 9 %, so use the reading that your rate or capacity was printed for. Sheets and
 * lengths count by their nominal dimensions either way.
 *
 * @param format a name in `photoFormats`
 * @param options.reading `"dimensions"` (default) or `"trade"`
 * @returns area in m²
 * @throws InputError for an unknown format, or one for which the trade has no figure
 *
 * @example
 * formatAreaM2("135-36") // => 0.0567
 * formatAreaM2("135-36", { reading: "trade" }) // => 0.0516128
 *
 * Source: dimensions per format in data/formats.json; the trade's count is common practice.
 */
export function formatAreaM2(
  format: string,
  options: { readonly reading?: AreaReading } = {},
): number {
  requireObject("formatAreaM2", "options", options, "an object of options, or leave it out");
  const found = photoFormatFor("formatAreaM2", format);
  const readings = ["dimensions", "trade"] as const;
  const reading = requireOneOf(
    "formatAreaM2",
    "reading",
    options.reading ?? "dimensions",
    readings,
  );
  if (reading === "dimensions" || found.form !== "roll") return rectangleAreaM2(found);
  if (found.tradeIn2 === null) {
    const advice = 'write a format with a trade count (135-36, 120, 220 …) or "dimensions"';
    throw new InputError("formatAreaM2", "format", format, advice);
  }
  return convertArea(found.tradeIn2, "in2", "m2");
}
