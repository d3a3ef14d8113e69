import {
  formatProductionLog,
  formatPumpLog,
  formatRemakesLog,
  formatStripBatchRegister,
  formatStripLog,
  formatTemperatureLog,
} from "../../../lib/records/index.ts";
import type { SimulatedLab } from "../../../lib/simulate/index.ts";
import { lab as description } from "./lab.ts";
import { simulatePellowStreet } from "./simulation.ts";

/** The densitometer of the lab shows thousandths. */
const DENSITY_DECIMALS = 3;

/** All files of the demo lab by name: the same text every time. */
export function demoLabFiles(
  lab: SimulatedLab = simulatePellowStreet(),
): Readonly<Record<string, string>> {
  const strips = Object.fromEntries(
    description.lines.map(({ strips: file, process }) => {
      const ofLine = lab.strips.filter((strip) => strip.process === process);
      return [file, formatStripLog(ofLine, { decimals: DENSITY_DECIMALS })];
    }),
  );
  return {
    "lab.json": `${JSON.stringify(description, null, 2)}\n`,
    ...strips,
    "strip-batches.csv": formatStripBatchRegister(lab.batches, { decimals: DENSITY_DECIMALS }),
    "production.csv": formatProductionLog(lab.production),
    "pumps.csv": formatPumpLog(lab.pumps),
    "temperatures.csv": formatTemperatureLog(lab.temperatures),
    "remakes.csv": formatRemakesLog(lab.remakes),
  };
}
