import { solutionDensity } from "wetside/solutions";
import { type Computed, readSource } from "./run.ts";

interface Inputs {
  readonly substance: string;
  readonly massPercent: readonly number[];
}

const densities = ({ substance, massPercent }: Inputs) =>
  massPercent.map((percent) => solutionDensity({ substance, massPercent: percent }).densityGPerMl);

export const computed: Computed = Object.fromEntries(
  readSource("crc-solution-density").checks.map(({ id }) => [id, densities]),
);
