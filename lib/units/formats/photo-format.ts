import formatData from "../../../data/formats.json" with { type: "json" };

/** A size of film or paper. */
export interface PhotoFormat {
  /** Short name used in logs: `"135-36"`, `"4x6in"`, `"35mm-metre"`. */
  readonly id: string;
  readonly name: string;
  readonly kind: "film" | "paper";
  /** A roll or sheet is counted in pieces; a length in metres. */
  readonly form: "roll" | "sheet" | "length";
  readonly widthMm: number;
  readonly lengthMm: number;
  /** Square inches the trade counts for a roll; null for sheets and lengths, counted as they are. */
  readonly tradeIn2: number | null;
  /** Number of the standard that gives the dimensions; empty if none is known. */
  readonly standard: string;
  readonly source: string;
  readonly howObtained: string;
  readonly note: string;
}

/** Film and paper formats with their dimensions, each with its source. */
export const photoFormats: readonly PhotoFormat[] = formatData.formats as readonly PhotoFormat[];
