import { InputError, requireObject } from "../../input/index.ts";
import { parseRatio, type Ratio, type RatioReading } from "../../units/index.ts";
import { cautionsFor } from "../cautions/cautions-for.ts";
import { requireVolumeMl } from "./require-volume.ts";

/** One part of a dilution and how much of it to measure. */
export interface DilutionPart {
  /** Name of the concentrate (`"concentrate"`, `"part A"`, …) or `"water"`. */
  readonly what: string;
  readonly volumeMl: number;
}

/** A dilution worked out in volumes. */
export interface Dilution {
  readonly ratio: string;
  readonly totalMl: number;
  readonly concentrates: readonly DilutionPart[];
  readonly waterMl: number;
  readonly assumptions: readonly string[];
  /** By the names of the concentrates. */
  readonly cautions: readonly string[];
}

/** Said of every mix by volume; concentrated acids are blended by mass instead. */
export const ADDITIVE_VOLUMES =
  "volumes add; a strong salt concentrate diluted 1+4 falls about 1 % short, so make up to a mark where that matters, and blend concentrated acids by mass";

/**
 * Volumes of each part for a total wanted.
 *
 * V_i = V · p_i / Σ p
 *
 * @param wanted.ratio `"1+9"`, `"1+1+18"`, `"stock"`, or a parsed ratio; `a:b` only with `colon`
 * @param wanted.totalMl volume wanted, mL, above 0
 * @param wanted.names names of the concentrates, as many as the ratio has; cautions go by them
 * @returns volumes in mL that sum to the total
 * @throws InputError for an ambiguous or malformed ratio, a total that is not positive, or the wrong
 *   number of names
 *
 * @example
 * dilute({ ratio: "1+9", totalMl: 500 }).waterMl // => 450
 * dilute({ ratio: "1+1+18", totalMl: 1000 }).concentrates.map((part) => part.volumeMl) // => [50, 50]
 *
 * Source: arithmetic of the plus notation; common practice, no source.
 */
export function dilute(
  wanted: {
    readonly ratio: string | Ratio;
    readonly totalMl: number;
    readonly names?: readonly string[];
  } & RatioReading,
): Dilution {
  requireObject("dilute", "wanted", wanted, "an object with ratio and totalMl");
  const ratio = parseRatio(wanted.ratio, readingOf(wanted), "dilute");
  const total = requireVolumeMl("dilute", "totalMl", wanted.totalMl);
  const names = concentrateNames("dilute", ratio, wanted.names);
  const concentrates = ratio.concentrateParts.map((part, i) => ({
    what: names[i] ?? `part ${i + 1}`,
    volumeMl: total * (part / ratio.totalParts),
  }));
  const waterMl = total * (ratio.waterParts / ratio.totalParts);
  return {
    ratio: ratio.text,
    totalMl: total,
    concentrates,
    waterMl,
    assumptions: ratio.text === "stock" ? [] : [ADDITIVE_VOLUMES],
    cautions: cautionsFor(names),
  };
}

/** Names for the concentrates: those given, else `"concentrate"` or `"part A"`, `"part B"`. */
export function concentrateNames(
  where: string,
  ratio: Ratio,
  names: readonly string[] | undefined,
): readonly string[] {
  const count = ratio.concentrateParts.length;
  if (names !== undefined && names.length !== count) {
    throw new InputError(where, "names", names, `write ${count}, one for each concentrate`);
  }
  if (names !== undefined) return names;
  if (count === 1) return ["concentrate"];
  return ratio.concentrateParts.map((_, i) => `part ${String.fromCharCode(65 + i)}`);
}

/** The reading options of an argument, without keys that are not there. */
export function readingOf(given: RatioReading): RatioReading {
  return {
    ...(given.colon === undefined ? {} : { colon: given.colon }),
    ...(given.water === undefined ? {} : { water: given.water }),
  };
}
