import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { type Aims, type Densities, type StripBatch, stripColours } from "../strip.ts";
import { eachColour, requirePatches, roundDensity } from "./density.ts";

/**
 * Aims of a batch of control strips: what each patch should read on the lab's own densitometer.
 *
 * `aim(patch, colour) = reference(patch, colour) + correction(patch, colour)`
 *
 * @param batch the batch: reference strip as read (density), correction printed for its code number
 * (density; a patch that is left out has none)
 * @returns the aims, density by patch and colour
 * @throws InputError if a density is not finite or out of range, or if a correction names a patch
 * that the reference does not have
 *
 * @example
 * const batch = {
 *   id: "4117", process: "colour-negative",
 *   reference: { ld: { red: 0.44, green: 0.76, blue: 0.98 } },
 *   correction: { ld: { red: 0.01, green: -0.02, blue: 0 } },
 * };
 * aimsOfBatch(batch).patches.ld // => { red: 0.45, green: 0.74, blue: 0.98 }
 *
 * Source: Kodak publication, minilab manual section 3; US Navy NAVEDTRA 14208.
 */
export function aimsOfBatch(batch: StripBatch): Aims {
  const where = "aimsOfBatch";
  requireObject(where, "batch", batch, "an object with id, process, reference, …");
  const at = `batch ${batch.id}`;
  requirePatches(where, `${at}.reference`, batch.reference);
  requireObject(where, `${at}.correction`, batch.correction, "an object, {} for none");
  for (const [patch, correction] of Object.entries(batch.correction)) {
    if (batch.reference[patch] === undefined) {
      const advice = `write the reference reading of patch ${JSON.stringify(patch)} too, or drop its correction`;
      throw new InputError(where, `${at}.reference.${patch}`, undefined, advice);
    }
    for (const colour of stripColours) {
      const hint = "a correction is a small difference, not a density";
      const bounds = { min: -0.5, max: 0.5, unit: "density", hint };
      requireNumber(where, `${at}.correction.${patch}.${colour}`, correction?.[colour], bounds);
    }
  }
  const patches: Record<string, Densities> = {};
  for (const [patch, reference] of Object.entries(batch.reference)) {
    const correction = batch.correction[patch];
    patches[patch] = eachColour((colour) =>
      roundDensity(reference[colour] + (correction?.[colour] ?? 0)),
    );
  }
  return {
    process: batch.process,
    stripBatch: batch.id,
    patches,
    basis: "reference and correction",
  };
}
