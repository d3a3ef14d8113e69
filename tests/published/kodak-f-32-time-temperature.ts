import { fitTimeTemperature, publishedTimeTable, publishedTimeTables } from "wetside/development";
import type { CheckValue, Computed } from "./run.ts";

interface Inputs {
  readonly table: string;
}

const fitOf = ({ table }: Inputs) => {
  const { rows, roundingMin } = publishedTimeTable(table);
  return fitTimeTemperature({ rows, roundingMin });
};

export const computed: Computed = Object.fromEntries(
  publishedTimeTables.flatMap(({ id }): [string, (inputs: Inputs) => CheckValue][] => [
    [`${id}-times`, (inputs) => fitOf(inputs).rows.map((row) => row.fittedMin)],
    [`${id}-energy`, (inputs) => fitOf(inputs).activationEnergyKJPerMol.value],
    [`${id}-factor`, (inputs) => fitOf(inputs).factorPerTenDegrees.value],
  ]),
);
