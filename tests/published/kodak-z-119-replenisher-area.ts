import { bathCapacity } from "wetside/solutions";
import { convertArea, convertAreaRate, convertVolume } from "wetside/units";
import type { Computed } from "./run.ts";

interface Inputs {
  readonly usGallons: number;
  readonly mlPerFt2: number;
}

const rate = ({ mlPerFt2 }: Inputs) => convertAreaRate(mlPerFt2, "mL/ft2", "mL/m2");

const area = (inputs: Inputs) => {
  const volumeMl = convertVolume(inputs.usGallons, "usGallon", "mL");
  const { totalM2 } = bathCapacity({ volumeMl, capacityM2PerL: 1000 / rate(inputs) });
  return convertArea(totalM2, "m2", "ft2");
};

export const computed: Computed = {
  "first-developer": area,
  bleach: area,
  fixer: area,
  "first-developer-rate": rate,
  "bleach-rate": rate,
  "fixer-rate": rate,
};
