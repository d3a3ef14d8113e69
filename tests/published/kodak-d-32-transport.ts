import { machineRun } from "wetside/replenishment";
import { areaRateFromFilmLength, convertLength } from "wetside/units";
import type { Computed } from "./run.ts";

const pathM = convertLength(84, "ft", "m");
const run = machineRun({
  widthMm: 35,
  baths: [{ name: "developer", pathM }],
  timeIn: { bath: "developer", timeMin: 70 / 60 },
  rateMlPerM2: areaRateFromFilmLength({
    volumeMl: 2,
    lengthM: convertLength(1, "ft", "m"),
    widthMm: 35,
  }),
});

export const computed: Computed = {
  speed: () => convertLength(run.speedMPerMin, "m", "ft"),
  flow: () => run.replenisherMlPerMin ?? Number.NaN,
};
