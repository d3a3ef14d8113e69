import {
  formatProductionLog,
  formatPumpLog,
  formatRemakesLog,
  formatStripBatchRegister,
  formatStripLog,
  formatTemperatureLog,
} from "../../../lib/records/index.ts";
import { madeBatches } from "./batches.ts";
import { daysFrom } from "./days.ts";
import { type Line, lab } from "./lab.ts";
import { FIRST_DAY, PUMP_FAULT, TODAY } from "./plan.ts";
import { makeProduction } from "./production.ts";
import { makePumping, type Pumping } from "./pumps.ts";
import { makeRemakes } from "./remakes.ts";
import { planStrips } from "./strip-plan.ts";
import { makeStrips } from "./strips.ts";
import { tankResponse } from "./tank.ts";
import { type Heating, makeHeating } from "./temperatures.ts";

/** The densitometer of the lab shows thousandths. */
const DENSITY_DECIMALS = 3;

/** All files of the demo lab by name: the same text every time. */
export function demoLabFiles(): Readonly<Record<string, string>> {
  const days = daysFrom(FIRST_DAY, TODAY);
  const workedDays = days.slice(0, -1);
  const production = makeProduction(workedDays);
  const pumping = makePumping(workedDays, production);
  const heating = makeHeating(days);
  const batches = [...madeBatches.film, ...madeBatches.paper].map(({ registered }) => registered);
  return {
    "lab.json": `${JSON.stringify(lab, null, 2)}\n`,
    "film-strips.csv": stripsOf("film", days, pumping, heating),
    "paper-strips.csv": stripsOf("paper", days, pumping, heating),
    "strip-batches.csv": formatStripBatchRegister(batches, { decimals: DENSITY_DECIMALS }),
    "production.csv": formatProductionLog(production),
    "pumps.csv": formatPumpLog(pumping.readings),
    "temperatures.csv": formatTemperatureLog(heating.readings),
    "remakes.csv": formatRemakesLog(makeRemakes(workedDays, production)),
  };
}

function stripsOf(
  line: Line,
  days: readonly string[],
  { deliveredMl }: Pumping,
  { trueOffsetC }: Heating,
): string {
  const developer = `${line}-developer`;
  const baths = lab.lines.flatMap((each) => [...each.baths]);
  const volumeL = baths.find(({ id }) => id === developer)?.volumeL ?? Number.NaN;
  const errorOn = (day: string) =>
    developer === PUMP_FAULT.pump && day >= PUMP_FAULT.from ? PUMP_FAULT.error : 0;
  const delivered = deliveredMl.get(developer) ?? new Map<string, number>();
  const response = tankResponse(days, delivered, errorOn, volumeL, line === "film");
  const offsets = trueOffsetC.get(developer);
  const strips = makeStrips(line, planStrips(line, days), (day) => ({
    replenisherError: response.get(day) ?? 0,
    offsetC: offsets?.get(day) ?? 0,
  }));
  return formatStripLog(strips, { decimals: DENSITY_DECIMALS });
}
