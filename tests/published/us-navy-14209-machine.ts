import { machineRun } from "wetside/replenishment";
import { convertLength } from "wetside/units";
import type { Computed } from "./run.ts";

export const computed: Computed = {
  "developer-time": () =>
    machineRun({
      widthMm: 35,
      speedMPerMin: convertLength(10, "ft", "m"),
      baths: [{ name: "developer", pathM: convertLength(30, "ft", "m") }],
    }).throughMin,
};
