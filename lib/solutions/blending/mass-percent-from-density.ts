import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { findRoot } from "../../numerics/index.ts";
import { densityOf, densitySource, requireTemperature } from "./density-source.ts";

/** Points at which the density curve is sampled for a model without a table. */
const STEPS = 400;

/**
 * Strength of a solution from its density.
 *
 * Solves ρ(w, t) = ρ_measured for w.
 *
 * @param of.substance as in `solutionDensity`
 * @param of.densityGPerMl measured density, g/mL
 * @param of.temperatureC temperature of the solution, °C, default 20
 * @param of.between smallest and largest strength to look for, per cent by mass
 * @returns per cent by mass
 * @throws InputError if no strength has that density, or several have: acetic acid of 68 % is as heavy
 *   as that of 86 %; then all are named, and `between` says which is meant
 *
 * @example
 * massPercentFromDensity({ substance: "acetic acid", densityGPerMl: 1.0346 }) // => 28
 *
 * Source: as `solutionDensity`.
 */
export function massPercentFromDensity(of: {
  readonly substance: string;
  readonly densityGPerMl: number;
  readonly temperatureC?: number;
  readonly between?: readonly [low: number, high: number];
}): number {
  const where = "massPercentFromDensity";
  requireObject(where, "of", of, "an object with substance and densityGPerMl");
  const source = densitySource(where, of.substance);
  const density = requireNumber(where, "densityGPerMl", of.densityGPerMl, { above: 0 });
  const t = requireTemperature(where, source, of.temperatureC ?? 20);
  const [low, high] = of.between ?? [0, source.maxMassPercent];
  const strengths = { min: 0, max: source.maxMassPercent, unit: "%" };
  requireNumber(where, "between[0]", low, strengths);
  requireNumber(where, "between[1]", high, { ...strengths, above: low });
  const grid = Array.from({ length: STEPS + 1 }, (_, i) => low + ((high - low) * i) / STEPS);
  const inner = (source.table?.massPercent ?? []).filter((w) => w > low && w < high);
  const points = [...new Set([...grid, ...inner])].sort((a, b) => a - b);
  const off = (w: number) => densityOf(source, w, t) - density;
  const found = points.flatMap((w, i) => {
    const next = points[i + 1];
    if (Math.abs(off(w)) < 1e-12) return [w];
    if (next === undefined || Math.abs(off(next)) < 1e-12 || off(w) > 0 === off(next) > 0)
      return [];
    return [findRoot(off, { lower: w, upper: next, tolerance: 1e-10 })];
  });
  const [only, another] = found;
  if (only !== undefined && another === undefined) return only;
  if (only === undefined) {
    const range = points.map((w) => densityOf(source, w, t));
    const advice = `write a density from ${Math.min(...range).toFixed(4)} to ${Math.max(...range).toFixed(4)} g/mL at ${t} °C, or check the substance`;
    throw new InputError(where, "densityGPerMl", density, advice);
  }
  const all = found.map((w) => `${w.toFixed(1)} %`).join(" or ");
  const advice = `it may be ${all}; write between: [low, high] around the one meant`;
  throw new InputError(where, "densityGPerMl", density, advice);
}
