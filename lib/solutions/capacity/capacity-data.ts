import capacityData from "../../../data/solutions/capacities.json" with { type: "json" };
import ruleData from "../../../data/solutions/reuse-rules.json" with { type: "json" };
import type { AreaReading } from "../../units/index.ts";

/** A published capacity of a bath. */
export interface PublishedCapacity {
  readonly id: string;
  readonly bath: string;
  readonly areaM2PerL: number;
  /** Which area the figure counts. */
  readonly reading: AreaReading;
  /** The figure as printed. */
  readonly published: string;
  readonly source: string;
  readonly howObtained: string;
  readonly note: string;
}

/** A rule for lengthening development when a developer is used again. */
export interface ReuseRule {
  readonly id: string;
  readonly name: string;
  /** Films per litre that make one step. */
  readonly filmsPerLPerStep: number;
  /** Per cent of the first time added at each step. */
  readonly percentPerStep: number;
  /** Films per litre after which the developer is thrown away. */
  readonly mostFilmsPerL: number;
  readonly source: string;
  readonly howObtained: string;
}

/** Capacities of baths, each with its source. */
export const publishedCapacities: readonly PublishedCapacity[] =
  capacityData.capacities as readonly PublishedCapacity[];

/** Rules for re-use, each with its source. */
export const reuseRules: readonly ReuseRule[] = ruleData.rules;
