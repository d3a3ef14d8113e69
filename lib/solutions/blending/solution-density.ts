import { closestWord, InputError, requireNumber } from "../../input/index.ts";
import { pchip } from "../../numerics/index.ts";
import {
  type DensityModel,
  type DensityTable,
  densityModels,
  densityTables,
} from "./density-data.ts";
import { waterDensityGPerMl } from "./water-density.ts";

/** What a density was taken from. */
export interface SolutionDensity {
  readonly densityGPerMl: number;
  /** Grams of the substance in a litre of solution. */
  readonly gPerL: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** Largest strength known for a substance and the data behind it. */
export interface DensitySource {
  readonly table: DensityTable | undefined;
  readonly model: DensityModel | undefined;
  readonly maxMassPercent: number;
}

/** How far past a model's own temperatures it is still used, with a warning, °C. */
const MODEL_MARGIN_C = 10;

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

/** The data for a substance, or an error that names the closest one. */
export function densitySource(where: string, substance: unknown): DensitySource {
  const table = densityTables.find(({ id }) => id === substance);
  const model = densityModels.find(({ id }) => id === substance);
  if (table === undefined && model === undefined) {
    const ids = [...new Set([...densityTables, ...densityModels].map(({ id }) => id))];
    const near = typeof substance === "string" ? closestWord(substance, ids) : undefined;
    const meant = near === undefined ? "" : ` (did you mean "${near}"?)`;
    throw new InputError(where, "substance", substance, `write one of ${ids.join(", ")}${meant}`);
  }
  return {
    table,
    model,
    maxMassPercent: table?.massPercent.at(-1) ?? model?.maxMassPercent ?? 0,
  };
}

/** A temperature that the data reach, with a margin. */
export function requireTemperature(
  where: string,
  { table, model }: DensitySource,
  temperatureC: number,
): number {
  const [low, high] = model ? [model.minC, model.maxC] : [0, 60];
  const known = table ? [0, 100] : [0, 100];
  return requireNumber(where, "temperatureC", temperatureC, {
    min: Math.max(known[0] ?? 0, low - MODEL_MARGIN_C),
    max: Math.min(known[1] ?? 100, high + MODEL_MARGIN_C),
    unit: "°C",
  });
}

const curves = new Map<string, (x: number) => number>();

/** Density in g/mL without checks. */
export function densityOf({ table, model }: DensitySource, w: number, t: number): number {
  if (table === undefined) return model ? modelDensity(model, w, t) : Number.NaN;
  const curve = curves.get(table.id) ?? pchip(table.massPercent, table.densityGPerMl).evaluate;
  curves.set(table.id, curve);
  const t0 = table.temperatureC;
  if (t === t0) return curve(w);
  const inModel = model !== undefined && w <= model.maxMassPercent;
  const expansion = inModel
    ? modelDensity(model, w, t) / modelDensity(model, w, t0)
    : waterDensityGPerMl(t) / waterDensityGPerMl(t0);
  return curve(w) * expansion;
}

function modelDensity({ c }: DensityModel, massPercent: number, t: number): number {
  const w = massPercent / 100;
  const [c0 = 0, c1 = 0, c2 = 0, c3 = 0, c4 = 0] = c;
  const apparent = ((c0 * w + c1) * Math.exp(1e-6 * (t + c4) ** 2)) / (w + c2 + c3 * t) / 1000;
  return 1 / ((1 - w) / waterDensityGPerMl(t) + w / apparent);
}
