import { Matrix } from "ml-matrix";
import type { FaultComponent } from "./fault-component.ts";
import type { ByParameterAndColour, FaultPattern, FaultTable, FreeShape } from "./fault-table.ts";

/** A pattern laid out over the components of an evidence, at size 1. */
export interface Signature {
  /** Densities; size 1 puts the largest of them, or its standard deviation, on its limit. */
  readonly mean: readonly number[];
  readonly covariance: Matrix;
}

/**
 * Lays a pattern out over components.
 *
 * The whole is scaled so that the largest |mean| (of a pattern that may go either way: the largest
 * standard deviation) is 1 in units of the limits. Then to the pattern's own free shapes are added:
 * each parameter a little more or less in all colours together, more so where nothing is published
 * of it, each colour a little more or less, and a floor for every reading.
 */
export function patternSignature(
  pattern: FaultPattern,
  table: FaultTable,
  components: readonly FaultComponent[],
): Signature {
  if (pattern.whole !== undefined) return wholeSignature(pattern, components);
  const p = components.length;
  const raw = components.map((each) => at(pattern.shape, each));
  const free = new Matrix(p, p);
  for (const factor of pattern.factors ?? []) free.add(factorCovariance(factor, components));
  const largest = Math.max(...reach(pattern.shape, table, components));
  const widest = Math.max(
    ...components.map(({ limit }, j) => Math.sqrt(Math.max(0, free.get(j, j))) / limit),
  );
  const size = largest > 0 ? largest : widest;
  if (!(size > 0)) return { mean: raw.map(() => 0), covariance: new Matrix(p, p) };
  const mean = raw.map((v) => v / size);
  const covariance = free.div(size * size);
  const scatter = { ...table.scatter, ...pattern.scatter };
  components.forEach((one, i) => {
    const known = pattern.published.find(({ parameter }) => parameter === one.parameter);
    const share = known === undefined ? scatter.unprinted : scatter[known.as];
    const open = known === undefined ? scatter.open : 0;
    components.forEach((other, j) => {
      if (one.parameter !== other.parameter) return;
      const together =
        share * share * (mean[i] ?? 0) * (mean[j] ?? 0) + open * open * one.limit * other.limit;
      covariance.set(i, j, covariance.get(i, j) + together);
    });
    const alone = (scatter.colours * (mean[i] ?? 0)) ** 2 + (scatter.floor * one.limit) ** 2;
    covariance.set(i, i, covariance.get(i, i) + alone);
  });
  return { mean, covariance };
}

/** Every density of a shape in units of its limit, also of readings that are missing here. */
function reach(
  shape: ByParameterAndColour,
  { limits }: FaultTable,
  components: readonly FaultComponent[],
): readonly number[] {
  const found = Object.entries(shape).flatMap(([parameter, values]) => {
    const here = components.find((each) => each.parameter === parameter);
    const limit = here?.limit ?? limits[parameter];
    return limit === undefined ? [] : Object.values(values).map((v) => Math.abs(v) / limit);
  });
  return [0, ...found];
}

function at(shape: ByParameterAndColour, { parameter, colour }: FaultComponent): number {
  const values = Object.hasOwn(shape, parameter) ? shape[parameter] : undefined;
  return values?.[colour] ?? 0;
}

function factorCovariance(factor: FreeShape, components: readonly FaultComponent[]): Matrix {
  const amounts = components.map((each) => factor.sd * at(factor.shape, each));
  const p = components.length;
  const covariance = new Matrix(p, p);
  for (let i = 0; i < p; i++) {
    for (let j = 0; j < p; j++) {
      const tied = factor.colours === "together" || components[i]?.colour === components[j]?.colour;
      if (tied) covariance.set(i, j, (amounts[i] ?? 0) * (amounts[j] ?? 0));
    }
  }
  return covariance;
}

function wholeSignature({ whole }: FaultPattern, components: readonly FaultComponent[]): Signature {
  const places = components.map(
    ({ parameter, colour }) =>
      whole?.components.findIndex((c) => c.parameter === parameter && c.colour === colour) ?? -1,
  );
  const raw = places.map((place) => whole?.mean[place] ?? 0);
  const largest = Math.max(...raw.map((v, j) => Math.abs(v) / (components[j]?.limit ?? 1)));
  const size = largest > 0 ? largest : 1;
  const covariance = new Matrix(components.length, components.length);
  places.forEach((a, i) => {
    places.forEach((b, j) => {
      covariance.set(i, j, (whole?.covariance[a]?.[b] ?? 0) / (size * size));
    });
    // A reading the episodes did not have: it may do as much as its limit.
    if (a < 0) covariance.set(i, i, (components[i]?.limit ?? 0) ** 2);
  });
  return { mean: raw.map((v) => v / size), covariance };
}
