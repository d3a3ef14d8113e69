import { InputError } from "../../input/index.ts";
import { formatAreaM2, photoFormat } from "../../units/index.ts";
import type { DevelopingTank, TankSpiral } from "./developing-tank.ts";

/** What one film asks of a tank and its baths. */
export interface FilmNeed {
  /** Area by dimensions, m². */
  readonly areaM2: number;
  /** Films of the trade's size (one 135-36, one 120, four 4x5 in = 80 in²) it counts for. */
  readonly equivalents: number;
  readonly spiral: TankSpiral;
}

const TRADE_FILM_IN2 = 80;

/** Area, trade count and spiral of a film; an unknown format or a spiral the tank lacks is refused. */
export function filmNeed(where: string, format: string, tank: DevelopingTank): FilmNeed {
  const found = photoFormat(format);
  if (found.kind !== "film" || found.form === "length") {
    const takes = tank.spirals.flatMap((spiral) => spiral.formats).join(", ");
    throw new InputError(where, "format", format, `write a roll or sheet of film: ${takes}`);
  }
  const spiral = tank.spirals.find((each) => each.formats.includes(format));
  if (spiral === undefined) {
    const takes = tank.spirals.flatMap((each) => each.formats).join(", ");
    const advice = `write a tank with a spiral for ${found.name}; "${tank.id}" takes ${takes}`;
    throw new InputError(where, "format", format, advice);
  }
  const areaM2 = formatAreaM2(format);
  const equivalents =
    found.tradeIn2 === null ? areaM2 / formatAreaM2("135-36") : found.tradeIn2 / TRADE_FILM_IN2;
  return { areaM2, equivalents, spiral };
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
