import { InputError, requireObject } from "../../input/index.ts";
import type { Ratio, RatioReading } from "../../units/index.ts";
import { ADDITIVE_VOLUMES, dilute } from "./dilute.ts";
import { type Graduate, graduateFor } from "./graduate.ts";
import { type MeasuredVolume, measureWith } from "./measure-with.ts";

/** One part of a dilution as measured, with what that does to its strength. */
export interface MeasuredPart extends MeasuredVolume {
  readonly what: string;
  /** Relative error of this concentrate's strength from rounding; 0 for water. */
  readonly strengthError: number;
  /** Largest relative error of its strength from the vessels' tolerances, ±; 0 for water. */
  readonly strengthTolerance: number;
}

/** A dilution measured with the vessels at hand. */
export interface MeasuredDilution {
  readonly ratio: string;
  readonly wantedMl: number;
  readonly totalMl: number;
  readonly parts: readonly MeasuredPart[];
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
  readonly cautions: readonly string[];
}

/**
 * A dilution with each part rounded to the smallest vessel at hand that holds it in one filling, and
 * the error that makes in the strength.
 *
 * f = c / Σ; error = f_measured / f_wanted − 1; tolerance = (1 − f)·t_c / c + f·Σ t_other / c
 *
 * @param wanted.ratio the dilution
 * @param wanted.totalMl volume wanted, mL, above 0
 * @param wanted.vessels names in `graduates` or objects, at least one
 * @param wanted.names names of the concentrates
 * @returns parts as measured, total, and the error and largest error of each strength
 * @throws InputError as `dilute` and `measureWith`
 *
 * @example
 * const mix = diluteWithGraduates({ ratio: "1+31", totalMl: 500, vessels: ["cylinder-25-b", "cylinder-500-b"] })
 * mix.parts.map((part) => part.measuredMl) // => [15.6, 485]
 *
 * Source: rounding and the linear law of errors (worst case).
 */
export function diluteWithGraduates(
  wanted: {
    readonly ratio: string | Ratio;
    readonly totalMl: number;
    readonly vessels: readonly (string | Graduate)[];
    readonly names?: readonly string[];
  } & RatioReading,
): MeasuredDilution {
  requireObject(
    "diluteWithGraduates",
    "wanted",
    wanted,
    "an object with ratio, totalMl and vessels",
  );
  const vessels = vesselsBySize(wanted.vessels);
  const plan = dilute(wanted);
  const water = plan.waterMl > 0 ? [{ what: "water", volumeMl: plan.waterMl }] : [];
  const measured = [...plan.concentrates, ...water].map((part) => ({
    what: part.what,
    ...measureWith(part.volumeMl, vesselFor(part.volumeMl, vessels)),
  }));
  const totalMl = measured.reduce((sum, part) => sum + part.measuredMl, 0);
  const allTolerances = measured.reduce((sum, part) => sum + part.toleranceMl, 0);
  const concentrateCount = plan.concentrates.length;
  const parts = measured.map((part, i) => {
    if (i >= concentrateCount) return { ...part, strengthError: 0, strengthTolerance: 0 };
    const f = part.measuredMl / totalMl;
    const others = allTolerances - part.toleranceMl;
    return {
      ...part,
      strengthError: f / (part.wantedMl / plan.totalMl) - 1,
      strengthTolerance: ((1 - f) * part.toleranceMl + f * others) / part.measuredMl,
    };
  });
  return {
    ratio: plan.ratio,
    wantedMl: plan.totalMl,
    totalMl,
    parts,
    assumptions: [
      ADDITIVE_VOLUMES,
      "each part is measured; topping up to a mark errs as the mark does",
    ],
    warnings: parts.flatMap((part) => part.warnings),
    cautions: plan.cautions,
  };
}

function vesselsBySize(given: readonly (string | Graduate)[]): readonly Graduate[] {
  if (!Array.isArray(given) || given.length === 0) {
    const advice = 'write at least one vessel, like ["cylinder-25-b", "cylinder-500-b"]';
    throw new InputError("diluteWithGraduates", "vessels", given, advice);
  }
  return given
    .map((vessel) => graduateFor("diluteWithGraduates", vessel))
    .sort((a, b) => a.capacityMl - b.capacityMl);
}

function vesselFor(volumeMl: number, vessels: readonly Graduate[]): Graduate {
  const holds = vessels.find((vessel) => volumeMl <= vessel.capacityMl);
  const largest = vessels.at(-1);
  if (holds) return holds;
  if (largest) return largest;
  throw new InputError("diluteWithGraduates", "vessels", vessels, "write at least one vessel");
}
