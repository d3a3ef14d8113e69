import { requireNumber, requireObject } from "../../input/index.ts";
import { densityOf, densitySource, requireTemperature } from "./density-source.ts";

/** What a density was taken from. */
export interface SolutionDensity {
  readonly densityGPerMl: number;
  /** Grams of the substance in a litre of solution. */
  readonly gPerL: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * Density of a solution of one substance in water.
 *
 * At 20 °C from a published table where there is one, between its rows by a monotone curve; at other
 * temperatures times the ratio of a published model, or of water where there is no model. Without a
 * table the model alone.
 *
 * @param of.substance `"acetic acid"`, `"sulfuric acid"`, `"sodium thiosulfate"`, `"sodium hydroxide"` …
 * @param of.massPercent per cent by mass, from 0 to the largest strength in the data
 * @param of.temperatureC °C, 0 to 100, default 20
 * @returns density in g/mL, grams per litre, what was assumed
 * @throws InputError for an unknown substance, or a strength or temperature beyond the data
 *
 * @example
 * solutionDensity({ substance: "acetic acid", massPercent: 28 }).densityGPerMl // => 1.0346
 *
 * Source: CRC Handbook of Chemistry and Physics, 102nd ed. (tables); M. Laliberté, J. Chem. Eng. Data
 * 54 (2009) 1725–1760 (model).
 */
export function solutionDensity(of: {
  readonly substance: string;
  readonly massPercent: number;
  readonly temperatureC?: number;
}): SolutionDensity {
  const where = "solutionDensity";
  requireObject(where, "of", of, "an object with substance and massPercent");
  const source = densitySource(where, of.substance);
  const w = requireNumber(where, "massPercent", of.massPercent, {
    min: 0,
    max: source.maxMassPercent,
    unit: "%",
  });
  const t = requireTemperature(where, source, of.temperatureC ?? 20);
  const densityGPerMl = densityOf(source, w, t);
  const byWater = source.model === undefined && t !== source.table?.temperatureC;
  const m = source.model;
  const outside = m !== undefined && t !== 20 && (t < m.minC || t > m.maxC);
  return {
    densityGPerMl,
    gPerL: w * 10 * densityGPerMl,
    assumptions: byWater ? ["the solution expands with temperature as water does"] : [],
    warnings: outside ? [`${t} °C lies outside the data, ${m.minC} to ${m.maxC} °C`] : [],
  };
}
