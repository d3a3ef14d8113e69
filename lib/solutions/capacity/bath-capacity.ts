import { closestWord, InputError, requireNumber, requireObject } from "../../input/index.ts";
import {
  type AreaReading,
  type FormatCount,
  formatAreaM2,
  productionAreaM2,
} from "../../units/index.ts";
import { requireVolumeMl } from "../dilution/require-volume.ts";
import { publishedCapacities } from "./capacity-data.ts";

/** What a bath has done and can still do. */
export interface BathCapacity {
  readonly totalM2: number;
  readonly usedM2: number;
  /** Never negative; an overworked bath has 0 left and a warning. */
  readonly leftM2: number;
  readonly usedFraction: number;
  readonly exhausted: boolean;
  /** How many of each format alone the rest would treat (whole pieces). */
  readonly leftByFormat: readonly FormatCount[];
  /** How many times the coming mix fits; null without one. */
  readonly mixesLeft: number | null;
  readonly reading: AreaReading;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * Area a bath has treated and can still treat, by format mix.
 *
 * total = capacity · V; used = Σ count · area; left = max(0, total − used)
 *
 * @param given.volumeMl volume of the bath, mL, above 0
 * @param given.capacity a name in `publishedCapacities`, or instead:
 * @param given.capacityM2PerL m² per litre, above 0, from your own data sheet
 * @param given.used formats and counts already treated; default none
 * @param given.next the mix that comes next, to see how often it still fits
 * @param given.reading which area your own figure counts; default `"dimensions"`
 * @returns areas in m², what is left by format, and a warning when it is overworked
 * @throws InputError for an unknown capacity or format, or a number out of range
 *
 * @example
 * bathCapacity({ volumeMl: 1000, capacity: "acid fixer, film or paper", used: [{ format: "135-36", count: 15 }] }).leftByFormat[0] // => { format: "135-36", count: 5 }
 *
 * Source: per capacity in data/solutions/capacities.json.
 */
export function bathCapacity(given: {
  readonly volumeMl: number;
  readonly capacity?: string;
  readonly capacityM2PerL?: number;
  readonly used?: readonly FormatCount[];
  readonly next?: readonly FormatCount[];
  readonly reading?: AreaReading;
}): BathCapacity {
  const where = "bathCapacity";
  requireObject(where, "given", given, "an object with volumeMl");
  const volumeL = requireVolumeMl(where, "volumeMl", given.volumeMl) / 1000;
  const { areaM2PerL, reading, source } = capacityOf(given);
  const totalM2 = areaM2PerL * volumeL;
  const used = given.used ?? [];
  const next = given.next ?? [];
  const usedM2 = productionAreaM2(used, { reading }).areaM2;
  const leftM2 = Math.max(0, totalM2 - usedM2);
  const over = usedM2 - totalM2;
  const formats = [...new Set([...used, ...next].map(({ format }) => format))];
  const mixM2 = productionAreaM2(next, { reading }).areaM2;
  return {
    totalM2,
    usedM2,
    leftM2,
    usedFraction: usedM2 / totalM2,
    exhausted: leftM2 < 1e-12 * totalM2,
    leftByFormat: formats.map((format) => ({
      format,
      count: Math.floor((leftM2 / formatAreaM2(format, { reading })) * (1 + 1e-12)),
    })),
    mixesLeft: mixM2 > 0 ? leftM2 / mixM2 : null,
    reading,
    assumptions: [
      `area counted by ${reading === "trade" ? "the trade's count" : "dimensions"}`,
      source,
    ],
    warnings:
      over > 1e-12 * totalM2
        ? [
            `overworked by ${Number(over.toPrecision(3))} m²; replace the bath, treat the last films again`,
          ]
        : [],
  };
}

function capacityOf(given: {
  readonly capacity?: string;
  readonly capacityM2PerL?: number;
  readonly reading?: AreaReading;
}): { readonly areaM2PerL: number; readonly reading: AreaReading; readonly source: string } {
  const where = "bathCapacity";
  if ((given.capacity === undefined) === (given.capacityM2PerL === undefined)) {
    const advice = "write either capacity, a published one, or capacityM2PerL, your own";
    throw new InputError(where, "capacity", given.capacity, advice);
  }
  if (given.capacityM2PerL !== undefined) {
    const bounds = { above: 0, min: 1e-6, max: 1e6, unit: "m² per litre" };
    const areaM2PerL = requireNumber(where, "capacityM2PerL", given.capacityM2PerL, bounds);
    const reading = given.reading ?? "dimensions";
    return { areaM2PerL, reading, source: "capacity as given by the caller" };
  }
  const found = publishedCapacities.find(({ id }) => id === given.capacity);
  if (found)
    return { ...found, source: `${found.published} (${found.source}; ${found.howObtained})` };
  const ids = publishedCapacities.map(({ id }) => id);
  const near = closestWord(String(given.capacity), ids);
  const meant = near === undefined ? "" : ` (did you mean "${near}"?)`;
  const advice = `write one of ${ids.map((id) => `"${id}"`).join(", ")}${meant}`;
  throw new InputError(where, "capacity", given.capacity, advice);
}
