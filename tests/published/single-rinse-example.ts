import { waterForLimit } from "wetside/replenishment";
import { convertArea, convertAreaRate } from "wetside/units";
import type { Computed } from "./run.ts";

const wash = {
  areaM2PerHour: convertArea(600, "ft2", "m2"),
  carryOverMlPerM2: convertAreaRate(20, "mL/ft2", "mL/m2"),
  carriedInGPerL: 250,
  stages: 1,
  flow: "counter-current",
} as const;
const draggedL = (wash.areaM2PerHour * wash.carryOverMlPerM2) / 1000;

export const computed: Computed = {
  "drag-in": () => draggedL * wash.carriedInGPerL,
  water: ({ mgPerL }: { readonly mgPerL: readonly number[] }) =>
    mgPerL.map((limit) => {
      const limitGPerM2 = (limit / 1000) * (wash.carryOverMlPerM2 / 1000);
      return waterForLimit(wash, { limitGPerM2 }).waterLPerHour / 60;
    }),
};
