import { InputError, requireNumber } from "../../input/index.ts";
import {
  type AreaReading,
  type FormatCount,
  photoFormat,
  photoFormats,
  productionAreaM2,
  rectangleAreaM2,
} from "../../units/index.ts";

/** A size of film or paper that a lab adds to the list. */
export interface OwnFormat {
  /** The name it has in the log. */
  readonly id: string;
  readonly widthMm: number;
  readonly lengthMm: number;
  /** A roll is spliced and gets leaders; default `"sheet"`. */
  readonly form?: "roll" | "sheet" | "length";
}

/** Areas of a day's work and of its leaders, with the lab's own sizes beside the listed ones. */
export function ownFormatAreas(
  where: string,
  options: {
    readonly reading?: AreaReading;
    readonly splice?: { readonly filmsPerLength: number; readonly leaderMm: number };
    readonly ownFormats?: readonly OwnFormat[];
  },
): {
  readonly areaM2: (rows: readonly FormatCount[]) => number;
  readonly leaderM2: (rows: readonly FormatCount[]) => number;
} {
  const { splice, ownFormats = [] } = options;
  const own = new Map<string, OwnFormat>();
  for (const [i, format] of ownFormats.entries()) {
    const at = `ownFormats[${i}]`;
    for (const side of ["widthMm", "lengthMm"] as const) {
      requireNumber(where, `${at}.${side}`, format[side], { above: 0, max: 1e6, unit: "mm" });
    }
    if (own.has(format.id) || photoFormats.some(({ id }) => id === format.id)) {
      const advice = "this name is taken; write another, in the log too";
      throw new InputError(where, `${at}.id`, format.id, advice);
    }
    own.set(format.id, format);
  }
  const reading = options.reading === undefined ? {} : { reading: options.reading };
  return {
    areaM2: (rows) => {
      const listed = productionAreaM2(
        rows.filter(({ format }) => !own.has(format)),
        reading,
      ).areaM2;
      return rows.reduce((sum, { format, count }) => {
        const size = own.get(format);
        if (size === undefined) return sum;
        requireNumber(where, `count of ${format}`, count, { min: 0, max: 1e12 });
        return sum + count * rectangleAreaM2(size);
      }, listed);
    },
    leaderM2: (rows) => {
      if (splice === undefined) return 0;
      const bounds = { min: 1, whole: true };
      const each = requireNumber(where, "splice.filmsPerLength", splice.filmsPerLength, bounds);
      const length = { min: 0, max: 1e7, unit: "mm" };
      const leaderMm = requireNumber(where, "splice.leaderMm", splice.leaderMm, length);
      const byWidth = new Map<number, number>();
      for (const { format, count } of rows) {
        const { widthMm, form = "sheet" } = own.get(format) ?? photoFormat(format);
        if (form === "roll") byWidth.set(widthMm, (byWidth.get(widthMm) ?? 0) + count);
      }
      // Whole lengths of each width.
      return [...byWidth].reduce(
        (sum, [widthMm, films]) => sum + (Math.ceil(films / each) * leaderMm * widthMm) / 1e6,
        0,
      );
    },
  };
}
