import { InputError, requireObject } from "../../input/index.ts";
import type { ProcessSpecification } from "../process/process-specification.ts";
import type { Aims, Colour, Strip } from "../strip.ts";
import { requireAims, requirePatches } from "./density.ts";
import { requireSpecification } from "./require-specification.ts";
import { deviationRow, seriesKeys } from "./series-keys.ts";

/** The deviation of one parameter in one colour on one strip. */
export interface ParameterDeviation {
  readonly parameter: string;
  readonly name: string;
  /** The filter, or `null` for a parameter with one value a strip (colour spread). */
  readonly colour: Colour | null;
  /** Deviation from aim in density, or `null` if a patch it needs was not read. */
  readonly deviation: number | null;
  /** Patches it needs that were not read. */
  readonly missingPatches: readonly string[];
}

/** A strip's deviations from its aims. */
export interface Deviations {
  readonly takenAt: string;
  readonly process: string;
  readonly stripBatch: string;
  readonly parameters: readonly ParameterDeviation[];
}

/**
 * Deviations of one control strip from its aims, for every parameter of its process and every colour.
 *
 * Patch: `reading − aim`. Difference (HD − LD, D-max(B) − Y(B)):
 * `(reading₁ − reading₂) − (aim₁ − aim₂)`. Colour spread: the largest minus the smallest of a
 * parameter's colour deviations. (Another published definition takes red minus blue.) Results are
 * rounded to 10⁻⁹ so that a reading exactly on a limit is on it.
 *
 * @param strip the strip as read
 * @param aims aims of the strip's batch: `aimsOfBatch` or the aims of a crossover
 * @param specification patches and parameters of the process
 * @returns one entry for each parameter and colour, in the specification's order
 * @throws InputError if the aims are of another batch or process, lack a patch the parameters need,
 * or a density is out of range
 *
 * @example
 * const grey = (d: number) => ({ red: d, green: d, blue: d });
 * const reference = { dMin: grey(0.1), ld: grey(0.8), hd: grey(1.6), dMax: grey(2.4) };
 * const aims = aimsOfBatch({ id: "77", process: "colour-paper", reference, correction: {} });
 * const patches = { ...reference, ld: { red: 0.85, green: 0.81, blue: 0.79 } };
 * const strip = { takenAt: "2026-08-14T07:10", process: "colour-paper", stripBatch: "77", operator: "A", patches };
 * const { parameters } = deviationsFromAim(strip, aims, colourPaperProcess);
 * parameters.filter((p) => p.parameter === "ld").map((p) => p.deviation) // => [0.05, 0.01, -0.01]
 *
 * Source: US Navy NAVEDTRA 14208 (deviation = reading − aim); common practice (parameters).
 */
export function deviationsFromAim(
  strip: Strip,
  aims: Aims,
  specification: ProcessSpecification,
): Deviations {
  const where = "deviationsFromAim";
  requireObject(where, "strip", strip, "an object with takenAt, process, stripBatch, …");
  requireObject(where, "aims", aims, "an object with process, stripBatch, patches, …");
  requireObject(where, "specification", specification, "an object with id, name, geometry, …");
  for (const [argument, process] of [
    ["strip.process", strip.process],
    ["aims.process", aims.process],
  ] as const) {
    if (process !== specification.id) {
      const advice = `write ${JSON.stringify(specification.id)}, the process of the specification`;
      throw new InputError(where, argument, process, advice);
    }
  }
  if (aims.stripBatch !== strip.stripBatch) {
    const advice = `write the aims of the strip's batch ${JSON.stringify(strip.stripBatch)}`;
    throw new InputError(where, "aims.stripBatch", aims.stripBatch, advice);
  }
  requireSpecification(where, specification);
  requirePatches(where, "strip.patches", strip.patches);
  requireAims(where, "aims", aims);
  const keys = seriesKeys(specification);
  const values = new Float64Array(keys.length);
  deviationRow(where, keys, strip.patches, aims, values);
  return {
    takenAt: strip.takenAt,
    process: strip.process,
    stripBatch: strip.stripBatch,
    parameters: keys.map((key, i) => {
      const value = values[i] ?? Number.NaN;
      return {
        parameter: key.parameter.id,
        name: key.parameter.name,
        colour: key.colour,
        deviation: Number.isNaN(value) ? null : value,
        missingPatches: key.patches.filter((patch) => strip.patches[patch] === undefined),
      };
    }),
  };
}
