import { closestWord, InputError, requireNumber } from "../../input/index.ts";
import { pchip } from "../../numerics/index.ts";
import {
  type DensityModel,
  type DensityTable,
  densityModels,
  densityTables,
} from "./density-data.ts";
import { waterDensityGPerMl } from "./water-density.ts";

/** Largest strength known for a substance and the data behind it. */
export interface DensitySource {
  readonly table: DensityTable | undefined;
  readonly model: DensityModel | undefined;
  readonly maxMassPercent: number;
}

/** How far past a model's own temperatures it is still used, with a warning, °C. */
const MODEL_MARGIN_C = 10;

/** "Sulphuric-Acid" and "sulfuric acid" are one name. */
function plainName(text: string): string {
  return text.trim().toLowerCase().replace(/[-_]+/g, " ").replace(/sulph/g, "sulf");
}

/** The data for a substance, or an error that names the closest one. */
export function densitySource(where: string, substance: unknown): DensitySource {
  const name = typeof substance === "string" ? plainName(substance) : substance;
  const table = densityTables.find(({ id }) => id === name);
  const model = densityModels.find(({ id }) => id === name);
  if (table === undefined && model === undefined) {
    const ids = [...new Set([...densityTables, ...densityModels].map(({ id }) => id))];
    const near = typeof substance === "string" ? closestWord(plainName(substance), ids) : undefined;
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
  { model }: DensitySource,
  temperatureC: number,
): number {
  const [low, high] = model ? [model.minC, model.maxC] : [0, 60];
  return requireNumber(where, "temperatureC", temperatureC, {
    min: Math.max(0, low - MODEL_MARGIN_C),
    max: Math.min(100, high + MODEL_MARGIN_C),
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
