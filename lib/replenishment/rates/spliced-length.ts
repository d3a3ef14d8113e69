import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { type FormatCount, photoFormat } from "../../units/index.ts";

/** Films spliced end to end into one long length. */
export interface SplicedLength {
  readonly widthMm: number;
  readonly films: number;
  /** Leader, films less what the splices overlap, trailer. */
  readonly lengthM: number;
  /** Film only: what uses developer and gives off silver. */
  readonly filmAreaM2: number;
  /** Leader and trailer: they carry liquid over like film, but use nothing up. */
  readonly leaderAreaM2: number;
  /** What a sensor at the entry would count. */
  readonly passedAreaM2: number;
  /** How much too much a pump gives that counts leaders as film; 0 for none. */
  readonly leaderFraction: number;
}

/**
 * Length and areas of single films spliced end to end, with leader and trailer.
 *
 * L = leader + Σ count·length − (films − 1)·overlap + trailer; A = L · width
 *
 * @param splice.films formats and whole counts, all of one width
 * @param splice.leaderMm leader before the first film, mm, at least 0; default 0
 * @param splice.trailerMm trailer after the last, mm, at least 0; default 0
 * @param splice.overlapMm film hidden under each splice, mm, at least 0; default 0
 * @returns length in m, areas in m², and how much of the passed area is leader
 * @throws InputError for no film, films of different widths, or a number out of range
 *
 * @example
 * splicedLength({ films: [{ format: "135-36", count: 40 }], leaderMm: 3000, trailerMm: 1500 }).lengthM // => 69.3
 *
 * Source: arithmetic; splicing films end to end is common practice.
 */
export function splicedLength(splice: {
  readonly films: readonly FormatCount[];
  readonly leaderMm?: number;
  readonly trailerMm?: number;
  readonly overlapMm?: number;
}): SplicedLength {
  const where = "splicedLength";
  requireObject(where, "splice", splice, "an object with films");
  requireEntries(where, "films", splice.films);
  const rows = splice.films.map(({ format, count }) => {
    requireNumber(where, `count of ${format}`, count, { min: 0, max: 1e6, whole: true });
    return { ...photoFormat(format), count };
  });
  const films = rows.reduce((sum, { count }) => sum + count, 0);
  requireNumber(where, "number of films", films, { min: 1 });
  const widths = [...new Set(rows.filter(({ count }) => count > 0).map((row) => row.widthMm))];
  const [widthMm = 0] = widths;
  if (widths.length > 1) {
    const advice = "splice films of one width; write one call for each width";
    throw new InputError(where, "films", widths.map((w) => `${w} mm`).join(" and "), advice);
  }
  const mm = (argument: "leaderMm" | "trailerMm" | "overlapMm") =>
    requireNumber(where, argument, splice[argument] ?? 0, { min: 0, max: 1e7, unit: "mm" });
  const filmMm = rows.reduce((sum, { count, lengthMm }) => sum + count * lengthMm, 0);
  const hiddenMm = (films - 1) * mm("overlapMm");
  const leaderMm = mm("leaderMm") + mm("trailerMm");
  const shortest = Math.min(...rows.filter(({ count }) => count > 0).map((row) => row.lengthMm));
  requireNumber(where, "overlapMm", mm("overlapMm"), { below: shortest / 2, unit: "mm" });
  const leaderAreaM2 = (leaderMm * widthMm) / 1e6;
  const passedAreaM2 = ((leaderMm + filmMm - hiddenMm) * widthMm) / 1e6;
  return {
    widthMm,
    films,
    lengthM: (leaderMm + filmMm - hiddenMm) / 1000,
    filmAreaM2: passedAreaM2 - leaderAreaM2,
    leaderAreaM2,
    passedAreaM2,
    leaderFraction: leaderAreaM2 / (passedAreaM2 - leaderAreaM2),
  };
}
