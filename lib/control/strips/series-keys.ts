import { InputError } from "../../input/index.ts";
import type {
  ParameterSpecification,
  ProcessSpecification,
} from "../process/process-specification.ts";
import type { Aims, Colour, Patches } from "../strip.ts";
import { requireDensity, roundDensity } from "./density.ts";

/** One series of a process: a parameter in a colour, with all it takes to compute a deviation. */
export interface SeriesKey {
  readonly parameter: ParameterSpecification;
  readonly colour: Colour | null;
  /** Patches it needs. */
  readonly patches: readonly string[];
  /** For a spread: positions, in the same list, of the colours compared. */
  readonly spreadOver: readonly number[];
}

/** The series of a process, in the order of its parameters and colours; spreads come last. */
export function seriesKeys(specification: ProcessSpecification): readonly SeriesKey[] {
  const keys: SeriesKey[] = [];
  for (const parameter of specification.parameters) {
    if (parameter.kind === "spread") continue;
    const patches =
      parameter.kind === "difference" ? [parameter.patch, parameter.minus] : [parameter.patch];
    for (const colour of parameter.colours)
      keys.push({ parameter, colour, patches, spreadOver: [] });
  }
  for (const parameter of specification.parameters) {
    if (parameter.kind !== "spread") continue;
    const spreadOver = keys.flatMap((key, i) => (key.parameter.id === parameter.of ? [i] : []));
    const patches = keys[spreadOver[0] ?? 0]?.patches ?? [];
    keys.push({ parameter, colour: null, patches, spreadOver });
  }
  return keys;
}

/**
 * Writes the deviations of one strip into `out`, one for each key. NaN stands for a missing reading
 * here and never leaves this room.
 */
export function deviationRow(
  where: string,
  keys: readonly SeriesKey[],
  patches: Patches,
  aims: Aims,
  out: Float64Array,
): void {
  for (let k = 0; k < keys.length; k++) {
    const key = keys[k];
    if (key === undefined) continue;
    if (key.colour === null) {
      out[k] = spreadOf(key, out);
      continue;
    }
    const first = key.patches[0] ?? "";
    let deviation = one(where, patches, aims, first, key.colour);
    const minus = key.patches[1];
    if (minus !== undefined) deviation -= one(where, patches, aims, minus, key.colour);
    out[k] = Number.isNaN(deviation) ? deviation : roundDensity(deviation);
  }
}

function one(where: string, patches: Patches, aims: Aims, patch: string, colour: Colour): number {
  const aim = aims.patches[patch]?.[colour];
  if (aim === undefined) {
    const advice = `give the batch a reference reading of this patch, or take the parameter that needs it out of the specification`;
    throw new InputError(where, `aim of batch ${aims.stripBatch} for patch ${patch}`, aim, advice);
  }
  const reading = patches[patch]?.[colour];
  if (reading === undefined) return Number.NaN;
  // A reading that is null would count as 0.
  if (typeof reading !== "number" || !(reading >= -0.1 && reading <= 6))
    requireDensity(where, `${patch}.${colour}`, reading);
  return reading - aim;
}

function spreadOf(key: SeriesKey, deviations: Float64Array): number {
  let largest = Number.NEGATIVE_INFINITY;
  let smallest = Number.POSITIVE_INFINITY;
  for (const k of key.spreadOver) {
    const value = deviations[k] ?? Number.NaN;
    if (Number.isNaN(value)) return Number.NaN;
    if (value > largest) largest = value;
    if (value < smallest) smallest = value;
  }
  return roundDensity(largest - smallest);
}
