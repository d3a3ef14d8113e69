import type { Densities, Patches } from "../control/index.ts";
import type { RandomStream } from "../numerics/index.ts";
import {
  type DensityAnswer,
  type DensityCause,
  densityCauses,
  type StripCauses,
  type ThreeDensities,
} from "./density-response.ts";
import { densities, inARow } from "./three-densities.ts";

/** Standard deviations of what makes two strips through one bath differ, density. */
export interface StripNoise {
  /** Of a strip as a whole: it moves all colours together. */
  readonly stripSd: number;
  /** Of a layer: it moves all patches of one colour. */
  readonly layerSd: number;
  /** Of one reading of the densitometer. */
  readonly readingSd: number;
  /** Of what each day adds to the bath's wander, of which half is kept overnight. */
  readonly wanderSd: number;
}

/** A strip alone: 0.0094 at LD, correlated 0.4; with heater and wander 0.0115 and 0.6. Illustrative. */
export const usualStripNoise: StripNoise = {
  stripSd: 0.006,
  layerSd: 0.004,
  readingSd: 0.006,
  wanderSd: 0.0025,
};

/** Where a densitometer's scale ends. */
export const HIGHEST_READING = 4.5;

/** How much of the strip's noise a patch shows: little where there is little dye. */
const PATCH_SHARE: Readonly<Record<string, number>> = { dMin: 0.4, ld: 1, hd: 1.3 };

/** What the causes do to each patch, without noise: Σ cause × answer. */
export function effectOnPatches(
  patches: readonly string[],
  answers: Readonly<Record<DensityCause, DensityAnswer>>,
  causes: StripCauses,
): Readonly<Record<string, ThreeDensities>> {
  const effects = patches.map((patch) => {
    const sum: [number, number, number] = [0, 0, 0];
    for (const cause of densityCauses) {
      const size = causes[cause] ?? 0;
      const answer = answers[cause].densities[patch];
      if (size === 0 || answer === undefined) continue;
      for (const at of [0, 1, 2] as const) sum[at] += size * answer[at];
    }
    return [patch, sum] as const;
  });
  return Object.fromEntries(effects);
}

/** Reads a strip: true densities plus what differs from strip to strip, to thousandths, 0 to 4.5. */
export function readPatches(
  trueDensities: Patches,
  noise: StripNoise,
  wander: number,
  { normal }: RandomStream,
): Patches {
  const whole = noise.stripSd * normal() + wander;
  const layers = [0, 1, 2].map(() => noise.layerSd * normal());
  const read = Object.entries(trueDensities).map(([patch, densitiesOfPatch]) => {
    const share = PATCH_SHARE[patch] ?? 1.2;
    const readingSd = patch === "dMin" ? noise.readingSd / 2 : noise.readingSd;
    const three = inARow(densitiesOfPatch).map((density, at) => {
      const value = density + share * (whole + (layers[at] ?? 0)) + readingSd * normal();
      return Math.min(HIGHEST_READING, Math.max(0, Math.round(value * 1000) / 1000));
    });
    return [patch, densities([three[0] ?? 0, three[1] ?? 0, three[2] ?? 0])] as const;
  });
  return Object.fromEntries<Densities>(read);
}
