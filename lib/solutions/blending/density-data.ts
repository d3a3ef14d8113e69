import modelData from "../../../data/solutions/density-models.json" with { type: "json" };
import tableData from "../../../data/solutions/density-tables.json" with { type: "json" };

/** Density of a solution against its strength at one temperature. */
export interface DensityTable {
  /** Name of the dissolved substance: `"acetic acid"`. */
  readonly id: string;
  readonly name: string;
  readonly temperatureC: number;
  /** Per cent by mass of the substance, rising. */
  readonly massPercent: readonly number[];
  readonly densityGPerMl: readonly number[];
  readonly source: string;
  readonly howObtained: string;
  readonly note: string;
}

/** Coefficients of the density of a solution over strength and temperature. */
export interface DensityModel {
  readonly id: string;
  readonly formula: string;
  readonly c: readonly number[];
  readonly minC: number;
  readonly maxC: number;
  readonly maxMassPercent: number;
}

/** Published tables of density, each with its source. */
export const densityTables: readonly DensityTable[] = tableData.tables;

/** Published density models, all from one source. */
export const densityModels: readonly DensityModel[] = modelData.models;
