import { heaterTime, temperWater, waterTemperatureFor } from "wetside/development";
import type { Computed } from "./run.ts";

export const computed: Computed = {
  "hot-and-cold": (inputs: Parameters<typeof temperWater>[0]) => {
    const { hotMl, coldMl } = temperWater(inputs);
    return [hotMl, coldMl];
  },
  concentrate: (inputs: Parameters<typeof waterTemperatureFor>[0]) =>
    waterTemperatureFor(inputs).waterC,
  heater: (inputs: Parameters<typeof heaterTime>[0]) => heaterTime(inputs).minutes,
};
