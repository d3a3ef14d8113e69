import { requireNumber, requireObject } from "../../input/index.ts";
import { parseRatio, type Ratio, type RatioReading } from "../../units/index.ts";
import { ADDITIVE_VOLUMES, readingOf } from "./dilute.ts";
import { ratioStrength } from "./ratio-strength.ts";
import { requireVolumeMl } from "./require-volume.ts";

/** Whether a tank holds enough concentrate for its films, and the ways out if not. */
export interface ConcentratePerFilm {
  readonly concentrateMl: number;
  readonly perFilmMl: number;
  readonly enough: boolean;
  /** Most films this volume serves at this ratio (whole films). */
  readonly mostFilms: number;
  /** Volume at this ratio that serves all films. */
  readonly totalNeededMl: number;
  /** Weakest ratio (to a tenth of a part) that serves all films here; null if even stock is too little. */
  readonly weakestRatio: string | null;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * Checks the smallest volume of concentrate per film against a dilution. A weak dilution in a small
 * tank may hold too little developer for the films, whatever the time.
 *
 * per film = V · f / N, with f the strength of the ratio
 *
 * @param given.ratio the dilution
 * @param given.totalMl volume in the tank, mL, above 0
 * @param given.films number of films, from 0.01 (halves for shorter ones)
 * @param given.smallestMlPerFilm the maker's or your own smallest volume of concentrate per film, mL
 * @returns volumes, whether it is enough, and how many films, what volume or ratio would do
 * @throws InputError for a number out of range or a ratio that cannot be read
 *
 * @example
 * checkConcentratePerFilm({ ratio: "1+31", totalMl: 480, films: 3, smallestMlPerFilm: 6 }).enough // => false
 * checkConcentratePerFilm({ ratio: "1+31", totalMl: 480, films: 3, smallestMlPerFilm: 6 }).mostFilms // => 2
 *
 * Source: definition; the smallest volume is an input because makers differ.
 */
export function checkConcentratePerFilm(
  given: {
    readonly ratio: string | Ratio;
    readonly totalMl: number;
    readonly films: number;
    readonly smallestMlPerFilm: number;
  } & RatioReading,
): ConcentratePerFilm {
  const where = "checkConcentratePerFilm";
  requireObject(where, "given", given, "an object with ratio, totalMl, films, …");
  const strength = ratioStrength(parseRatio(given.ratio, readingOf(given), where));
  const total = requireVolumeMl(where, "totalMl", given.totalMl);
  const films = requireNumber(where, "films", given.films, { min: 0.01, max: 1e9 });
  const smallest = requireVolumeMl(where, "smallestMlPerFilm", given.smallestMlPerFilm);
  const concentrateMl = total * strength;
  const neededMl = films * smallest;
  // A hair of slack, so that exactly enough is enough in binary arithmetic too.
  const slack = 1 + 1e-12;
  const enough = neededMl <= concentrateMl * slack;
  return {
    concentrateMl,
    perFilmMl: concentrateMl / films,
    enough,
    mostFilms: Math.floor((concentrateMl * slack) / smallest),
    totalNeededMl: neededMl / strength,
    weakestRatio: neededMl <= total * slack ? weakest(total / neededMl - 1) : null,
    assumptions: [ADDITIVE_VOLUMES],
    warnings: enough
      ? []
      : [`too little concentrate: ${round(concentrateMl)} mL for ${round(neededMl)} mL needed`],
  };
}

/** Rounded down to a tenth of a part, so that the answer never has too little. */
function weakest(waterParts: number): string {
  const water = Math.floor(waterParts * 10 * (1 + 1e-12)) / 10;
  return water < 0.1 ? "stock" : `1+${water}`;
}

function round(value: number): number {
  return Number(value.toPrecision(4));
}
