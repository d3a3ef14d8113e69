import { InputError, requireOneOf } from "../../input/index.ts";
import { convertArea, formatAreaM2, photoFormat, photoFormats } from "../../units/index.ts";
import type { DevelopingTank, TankSpiral } from "./developing-tank.ts";

/** What one film asks of a tank and its baths. */
export interface FilmNeed {
  /** Area by dimensions, m². */
  readonly areaM2: number;
  /** Films of the trade's size (one 135-36, one 120, four 4x5 in = 80 in²) it counts for. */
  readonly equivalents: number;
  /** A sheet, not a roll. */
  readonly sheet: boolean;
  readonly spiral: TankSpiral;
}

const TRADE_FILM_IN2 = 80;

/** What people call a format, and what it is called here. */
const ALSO_CALLED: Readonly<Record<string, string>> = {
  "135": "135-36",
  "35mm": "135-36",
  "120/220": "120",
  "4x5": "4x5in-sheet",
  "5x7": "5x7in-sheet",
  "8x10": "8x10in-sheet",
  "9x12": "9x12cm-sheet",
  "13x18": "13x18cm-sheet",
};

/** Area, trade count and spiral of a film; an unknown format or a spiral the tank lacks is refused. */
export function filmNeed(
  where: string,
  argument: string,
  format: string,
  tank: DevelopingTank,
): FilmNeed {
  const found = photoFormat(filmFormat(where, argument, format));
  const spiral = tank.spirals.find((each) => each.formats.includes(found.id));
  if (spiral === undefined) {
    const takes = tank.spirals.flatMap((each) => each.formats).join(", ");
    const advice = `write a tank with a spiral for ${found.name}; "${tank.id}" takes ${takes}`;
    throw new InputError(where, argument, format, advice);
  }
  const areaM2 = formatAreaM2(found.id);
  const equivalents = (found.tradeIn2 ?? convertArea(areaM2, "m2", "in2")) / TRADE_FILM_IN2;
  return { areaM2, equivalents, sheet: found.form === "sheet", spiral };
}

function filmFormat(where: string, argument: string, format: string): string {
  const films = photoFormats.filter((each) => each.kind === "film" && each.form !== "length");
  const ids = films.map((each) => each.id);
  const meant = ALSO_CALLED[String(format).toLowerCase().replaceAll(" ", "").replace("×", "x")];
  if (meant === undefined) return requireOneOf(where, argument, format, ids);
  if (meant === format) return format;
  const advice = `write "${meant}" if that is it, or one of ${ids.join(", ")}`;
  throw new InputError(where, argument, format, advice);
}

/** Height on the column and liquid to cover for spirals that hold these counts of films. */
export function loadOf(load: readonly { readonly spiral: TankSpiral; readonly films: number }[]): {
  readonly heightMm: number;
  readonly coverMl: number;
  readonly spirals: number;
} {
  let heightMm = 0;
  let coverMl = 0;
  let spirals = 0;
  for (const { spiral, films } of load) {
    const used = Math.ceil(films / spiral.filmsPerSpiral);
    heightMm += used * spiral.heightMm;
    coverMl += used * spiral.coverMl;
    spirals += used;
  }
  return { heightMm, coverMl, spirals };
}
