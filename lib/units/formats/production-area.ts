import { InputError, requireNumber } from "../../input/index.ts";
import { type AreaReading, formatAreaM2 } from "./format-area.ts";

/** So many pieces (or metres) of one format. */
export interface FormatCount {
  /** A name in `photoFormats`. */
  readonly format: string;
  /** Pieces, or metres for a format counted by length; at least 0. */
  readonly count: number;
}

/** Area of a mix of formats, in all and by format. */
export interface ProductionArea {
  readonly areaM2: number;
  readonly lines: readonly (FormatCount & { readonly areaM2: number })[];
}

/**
 * Area of a day's or a week's mix of formats.
 *
 * A = Σ count · area of the format
 *
 * @param counts each with a format and a count of at least 0
 * @param options.reading `"dimensions"` (default) or `"trade"`
 * @returns total and lines in m²
 * @throws InputError for an unknown format or a negative count
 *
 * @example
 * productionAreaM2([{ format: "135-36", count: 10 }, { format: "120", count: 4 }]).areaM2 // => 0.76995
 */
export function productionAreaM2(
  counts: readonly FormatCount[],
  options: { readonly reading?: AreaReading } = {},
): ProductionArea {
  if (!Array.isArray(counts)) {
    const advice = 'write a list like [{ format: "135-36", count: 10 }]';
    throw new InputError("productionAreaM2", "counts", counts, advice);
  }
  const lines = counts.map(({ format, count }) => {
    requireNumber("productionAreaM2", `count of ${format}`, count, { min: 0, max: 1e12 });
    return { format, count, areaM2: count * formatAreaM2(format, options) };
  });
  return { areaM2: lines.reduce((sum, line) => sum + line.areaM2, 0), lines };
}
