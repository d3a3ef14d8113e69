import { requireNumber, requireObject } from "../../input/index.ts";
import { type Aims, type Colour, type Densities, type Patches, stripColours } from "../strip.ts";

/**
 * Rounds a density difference to 10⁻⁹, far finer than any densitometer, so that 0.33 − 0.30 is 0.03
 * and a reading exactly on a limit is on it.
 */
export function roundDensity(value: number): number {
  const rounded = Math.round(value * 1e9) / 1e9;
  return rounded === 0 ? 0 : rounded;
}

/** Lets a density in: a finite number from −0.1 (a zero that drifted) to 6. */
export function requireDensity(where: string, argument: string, value: unknown): number {
  return requireNumber(where, argument, value, { min: -0.1, max: 6, unit: "density" });
}

/** Densities made colour by colour. */
export function eachColour(make: (colour: Colour) => number): Densities {
  return { red: make("red"), green: make("green"), blue: make("blue") };
}

/** Lets all densities of some patches in. */
export function requirePatches(where: string, argument: string, patches: Patches): void {
  requireObject(where, argument, patches, "an object of patches, each with red, green and blue");
  for (const [patch, densities] of Object.entries(patches)) {
    for (const colour of stripColours) {
      requireDensity(where, `${argument}.${patch}.${colour}`, densities?.[colour]);
    }
  }
}

/** Lets the aims of a batch in; a correction may move an aim a little past what can be read. */
export function requireAims(where: string, argument: string, aims: Aims): void {
  requireObject(where, argument, aims, "aims as aimsOfBatch gives them");
  const patches = aims.patches;
  requireObject(where, `${argument}.patches`, patches, "the aim of each patch");
  for (const [patch, densities] of Object.entries(patches)) {
    for (const colour of stripColours) {
      const bounds = { min: -0.6, max: 6.5, unit: "density" };
      requireNumber(where, `${argument}.patches.${patch}.${colour}`, densities?.[colour], bounds);
    }
  }
}
