import { Matrix } from "ml-matrix";
import { InputError, requireNumber } from "../../input/index.ts";
import { componentWords, requireComponents } from "./fault-component.ts";
import type { FaultEvidence } from "./fault-evidence.ts";
import type { FaultTable } from "./fault-table.ts";
import { choleskyOf } from "./size-evidence.ts";

/** Evidence restricted to what a table speaks of, with the root of its noise. */
export interface ReadyEvidence {
  readonly evidence: FaultEvidence;
  readonly noiseRoot: Matrix;
  readonly leftOut: readonly string[];
}

/** Lets evidence in, and keeps the readings that at least one signature of the table knows. */
export function requireFaultEvidence(
  where: string,
  given: FaultEvidence,
  table: FaultTable,
): ReadyEvidence {
  requireComponents(where, given.components);
  const p = given.components.length;
  if (!(given.deviations?.length > 0)) {
    const advice = "write at least one strip: a row of deviations";
    throw new InputError(where, "deviations", given.deviations, advice);
  }
  const square = given.noise?.length === p && given.noise.every((row) => row.length === p);
  if (!square) throw new InputError(where, "noise", given.noise, `write ${p} rows of ${p} numbers`);
  for (const [i, row] of given.deviations.entries()) {
    if (row.length !== p) {
      const advice = `write ${p} deviations, one for each component`;
      throw new InputError(where, `deviations[${i}].length`, row.length, advice);
    }
    for (const [j, v] of row.entries()) {
      requireNumber(where, `deviations[${i}][${j}]`, v, { min: -6, max: 6, unit: "density" });
    }
  }
  requireNumber(where, "lagOne", given.lagOne, { min: 0, max: 0.95 });
  requireNumber(where, "wander", given.wander, { min: 0, max: 100 });
  if (given.takenAt.length !== given.deviations.length) {
    const advice = "write one time for each strip";
    throw new InputError(where, "takenAt.length", given.takenAt.length, advice);
  }
  for (const [i, row] of given.noise.entries()) {
    for (const [j, v] of row.entries()) {
      requireNumber(where, `noise[${i}][${j}]`, v, { unit: "density²" });
      if (Math.abs(v - (given.noise[j]?.[i] ?? 0)) > 1e-9 * Math.abs(v) + 1e-18) {
        throw new InputError(where, `noise[${i}][${j}]`, v, "write the same value as its mirror");
      }
    }
  }
  const known = knownParameters(table);
  const kept = given.components.flatMap(({ parameter }, j) => (known.has(parameter) ? [j] : []));
  if (kept.length === 0) {
    const list = [...known].join(", ");
    const advice = `none of the parameters has a signature in the table; it knows ${list}`;
    throw new InputError(where, "components", given.components[0]?.parameter, advice);
  }
  const noise = kept.map((i) => kept.map((j) => given.noise[i]?.[j] ?? 0));
  const noiseRoot = choleskyOf(new Matrix(noise));
  if (noiseRoot === undefined) {
    const advice =
      "it is singular: some readings follow exactly from others or never vary; take it from stripCovariance, or leave those readings out";
    throw new InputError(where, "noise", "a covariance that cannot be inverted", advice);
  }
  const components = kept.flatMap((j) => given.components.slice(j, j + 1));
  const deviations = given.deviations.map((row) => kept.map((j) => row[j] ?? 0));
  const leftOut = given.components.filter((_, j) => !kept.includes(j)).map(componentWords);
  return { evidence: { ...given, components, deviations, noise }, noiseRoot, leftOut };
}

function knownParameters(table: FaultTable): ReadonlySet<string> {
  const known = new Set<string>();
  for (const { shape, factors, whole } of Object.values(table.patterns)) {
    for (const id of Object.keys(shape)) known.add(id);
    for (const factor of factors ?? []) for (const id of Object.keys(factor.shape)) known.add(id);
    for (const { parameter } of whole?.components ?? []) known.add(parameter);
  }
  return known;
}
