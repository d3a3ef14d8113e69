import { InputError, requireObject } from "../../input/index.ts";
import { parseRatio, type Ratio, type RatioReading } from "../../units/index.ts";
import { concentrateNames, type Dilution, type DilutionPart, dilute, readingOf } from "./dilute.ts";
import { requireVolumeOrNoneMl } from "./require-volume.ts";

/** The most that bottles allow, and what they leave. */
export interface MostFromStock extends Dilution {
  /** The concentrate that runs out first. */
  readonly limitedBy: string;
  /** What stays in each bottle. */
  readonly left: readonly DilutionPart[];
}

/**
 * The most working solution that can be made from what is left in the bottles.
 *
 * V = min over concentrates of (available_i / p_i) · Σ p
 *
 * @param have.ratio the dilution to be made
 * @param have.availableMl what is left of each concentrate, mL, at least 0, as many as the ratio has
 * @param have.names names of the concentrates
 * @returns volumes of the largest mix, the bottle that limits it, and what stays in each
 * @throws InputError if a bottle is missing or negative, or if the limiting bottle is empty
 *
 * @example
 * mostFromStock({ ratio: "1+1+18", availableMl: [120, 80] }).totalMl // => 1600
 * mostFromStock({ ratio: "1+1+18", availableMl: [120, 80] }).limitedBy // => "part B"
 *
 * Source: arithmetic of the plus notation.
 */
export function mostFromStock(
  have: {
    readonly ratio: string | Ratio;
    readonly availableMl: readonly number[];
    readonly names?: readonly string[];
  } & RatioReading,
): MostFromStock {
  const where = "mostFromStock";
  requireObject(where, "have", have, "an object with ratio and availableMl");
  const ratio = parseRatio(have.ratio, readingOf(have), where);
  const names = concentrateNames(where, ratio, have.names);
  const count = ratio.concentrateParts.length;
  if (!Array.isArray(have.availableMl) || have.availableMl.length !== count) {
    const advice = `write a list of ${count} volume${count === 1 ? "" : "s"}, one for each concentrate`;
    throw new InputError(where, "availableMl", have.availableMl, advice);
  }
  const perPart = ratio.concentrateParts.map((part, i) => {
    const available = requireVolumeOrNoneMl(where, `availableMl[${i}]`, have.availableMl[i]);
    return available / part;
  });
  const smallest = Math.min(...perPart);
  const limiting = perPart.indexOf(smallest);
  const limitedBy = names[limiting] ?? "concentrate";
  if (smallest === 0) {
    const advice = `write what is left of ${limitedBy}; nothing can be made without it`;
    throw new InputError(where, `availableMl[${limiting}]`, 0, advice);
  }
  const mix = dilute({ ratio, totalMl: smallest * ratio.totalParts, names });
  const left = mix.concentrates.map((part, i) => ({
    what: part.what,
    volumeMl: i === limiting ? 0 : Math.max(0, (have.availableMl[i] ?? 0) - part.volumeMl),
  }));
  return { ...mix, limitedBy, left };
}
