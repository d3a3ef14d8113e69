import data from "../../../data/development/heat-properties.json" with { type: "json" };
import { requireOneOf } from "../../input/index.ts";

/** Where a number comes from. */
export interface HeatSource {
  readonly source: string;
  readonly howObtained: string;
}

/** What a vessel is made of. */
export interface VesselMaterial extends HeatSource {
  readonly material: string;
  readonly specificHeatJPerGK: number;
  readonly conductivityWPerMK: number;
}

/** What surrounds a vessel, with its heat transfer coefficient: an order of magnitude and a range. */
export interface HeatTransferMedium extends HeatSource {
  readonly medium: string;
  readonly typicalWPerM2K: number;
  readonly lowestWPerM2K: number;
  readonly highestWPerM2K: number;
}

/** The table behind tempering and cooling. */
export interface HeatProperties {
  readonly title: string;
  readonly water: HeatSource & {
    readonly specificHeatJPerGK: number;
    readonly densityGPerMl: number;
    readonly note: string;
  };
  readonly ice: HeatSource & {
    readonly latentHeatJPerG: number;
    readonly specificHeatJPerGK: number;
  };
  readonly materials: readonly VesselMaterial[];
  readonly surroundings: readonly HeatTransferMedium[];
}

/**
 * Heat capacities, conductivities and heat transfer coefficients, each with its source
 * (data/development/heat-properties.json).
 *
 * @example
 * heatProperties.water.specificHeatJPerGK // => 4.18
 */
export const heatProperties: HeatProperties = data;

/** The row of a material, by name. */
export function vesselMaterial(where: string, argument: string, name: string): VesselMaterial {
  const names = heatProperties.materials.map((each) => each.material);
  const known = requireOneOf(where, argument, name, names);
  return rowOf(heatProperties.materials, (each) => each.material === known);
}

/** The row of a surrounding medium, by name. */
export function heatTransferMedium(
  where: string,
  argument: string,
  name: string,
): HeatTransferMedium {
  const names = heatProperties.surroundings.map((each) => each.medium);
  const known = requireOneOf(where, argument, name, names);
  return rowOf(heatProperties.surroundings, (each) => each.medium === known);
}

function rowOf<T>(rows: readonly T[], test: (row: T) => boolean): T {
  const row = rows.find(test);
  if (row === undefined) throw new Error("a name that passed the door has its row");
  return row;
}
