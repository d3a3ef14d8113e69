import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { type Aims, type Densities, stripColours } from "../strip.ts";
import { difference, requirePairs } from "./crossover-pairs.ts";
import type {
  Crossover,
  CrossoverDifference,
  CrossoverOptions,
  StripPair,
} from "./crossover-result.ts";
import { eachColour, requireAims } from "./density.ts";

/**
 * Crosses over to a new batch of control strips: strips of both batches are run side by side, and
 * the aims are moved by their mean difference, so that the history stays continuous.
 *
 * `aim_new = aim_old + mean(reading_new − reading_old)`, per patch and colour
 *
 * @param oldAims aims of the batch that is running out
 * @param pairs strips that went through side by side, at least one pair; three or more at separate
 * times are wanted. A patch that one of the two lacks is left out of that pair.
 * @param options how many pairs and how much scatter to warn of; the new batch's own aims
 * @returns the new aims with the differences they rest on, and warnings: too few pairs, wide
 * scatter, disagreement with the batch's own aims
 * @throws InputError if there is no pair, the strips are not of one old and one new batch of the
 * process, or a density is out of range
 *
 * @example
 * const strip = (stripBatch: string, red: number) => ({
 *   takenAt: "2026-05-30T07:10", process: "colour-negative", stripBatch, operator: "A",
 *   patches: { ld: { red, green: 0.76, blue: 0.98 } },
 * });
 * const oldAims = aimsOfBatch({
 *   id: "4117", process: "colour-negative",
 *   reference: { ld: { red: 0.44, green: 0.76, blue: 0.98 } }, correction: {},
 * });
 * const pairs = [0.46, 0.47, 0.48].map((red) => ({ old: strip("4117", red), new: strip("4203", red + 0.02) }));
 * crossover(oldAims, pairs).aims.patches.ld?.red // => 0.46
 *
 * Source: Kodak publication, minilab manual section 3 (at least three separate pairs, while a week of
 * old strips is left; do not force a match).
 */
export function crossover(
  oldAims: Aims,
  pairs: readonly StripPair[],
  options: CrossoverOptions = {},
): Crossover {
  const where = "crossover";
  requireObject(where, "oldAims", oldAims, "an object with process, stripBatch, patches, …");
  requireEntries(where, "pairs", pairs);
  requireAims(where, "oldAims", oldAims);
  const to = requirePairs(where, oldAims, pairs);
  const least = requireNumber(where, "minimumPairs", options.minimumPairs ?? 3, {
    min: 1,
    whole: true,
  });
  const widest = requireNumber(where, "widestScatter", options.widestScatter ?? 0.02, { above: 0 });
  const farthest = requireNumber(where, "widestDisagreement", options.widestDisagreement ?? 0.04, {
    above: 0,
  });
  const patches: Record<string, Densities> = {};
  const differences: CrossoverDifference[] = [];
  const missing: string[] = [];
  for (const [patch, aim] of Object.entries(oldAims.patches)) {
    const both = pairs.filter(
      (pair) => pair.old.patches[patch] !== undefined && pair.new.patches[patch] !== undefined,
    );
    if (both.length === 0) {
      missing.push(patch);
      continue;
    }
    const own = options.ownAims?.patches[patch];
    for (const colour of stripColours) {
      differences.push(difference(patch, colour, both, aim[colour], own?.[colour]));
    }
    const moved = differences.slice(-3);
    patches[patch] = eachColour((colour) => moved.find((d) => d.colour === colour)?.aim ?? 0);
  }
  if (differences.length === 0) {
    const advice = `write strips that share a patch with the aims (${Object.keys(oldAims.patches).join(", ")})`;
    throw new InputError(where, "pairs", `${pairs.length} without a common patch`, advice);
  }
  const warnings = [
    ...missing.map(
      (patch) => `no pair has patch ${patch} on both strips; it has no aim on the new batch`,
    ),
    ...tooFewPairs(pairs.length, least),
    ...differences.flatMap((each) => doubts(each, widest, farthest)),
  ];
  return {
    from: oldAims.stripBatch,
    to,
    pairs: pairs.length,
    aims: { process: oldAims.process, stripBatch: to, patches, basis: "crossover" },
    differences,
    assumptions: ["both strips of a pair saw the same process at the same time"],
    warnings,
  };
}

function tooFewPairs(pairs: number, least: number): readonly string[] {
  if (pairs >= least) return [];
  const some = pairs === 1 ? "1 pair" : `${pairs} pairs`;
  return [`${some} only; run at least ${least}, at separate times, while old strips are left`];
}

function doubts(d: CrossoverDifference, widest: number, farthest: number): readonly string[] {
  const name = `${d.patch} ${d.colour}`;
  const found: string[] = [];
  if (d.standardDeviation !== null && d.standardDeviation > widest) {
    found.push(
      `${name}: the differences scatter by ${d.standardDeviation.toFixed(3)} (more than ${widest}); run more pairs and look for a mishandled strip`,
    );
  }
  if (d.againstOwnAim !== null && Math.abs(d.againstOwnAim) > farthest) {
    const signed = `${d.againstOwnAim > 0 ? "+" : "−"}${Math.abs(d.againstOwnAim).toFixed(3)}`;
    found.push(
      `${name}: the moved aim stands ${signed} from the new batch's own aim; do not force a match: check the reference reading, the code number's correction and the densitometer`,
    );
  }
  return found;
}
