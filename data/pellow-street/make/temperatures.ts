import { seededRandom } from "../../../lib/numerics/index.ts";
import type { BathTemperature } from "../../../lib/records/index.ts";
import { clock, weekday } from "./days.ts";
import { lab } from "./lab.ts";
import { HEATER_FAULT, STREAMS, TODAY } from "./plan.ts";

const CONTROLLER_TIMES = ["07:00", "12:00", "16:30"] as const;
const DEVELOPER_SD_C = 0.05;
const OTHER_SD_C = 0.25;
const THERMOMETER_SD_C = 0.05;

/** The temperature log, and how far from its set point each developer truly was on a morning. */
export interface Heating {
  readonly readings: readonly BathTemperature[];
  /** By bath and day. */
  readonly trueOffsetC: ReadonlyMap<string, ReadonlyMap<string, number>>;
}

/**
 * The controllers show all baths three times a day. An independent thermometer is held into the
 * developers every morning and into the other baths on Mondays.
 */
export function makeHeating(days: readonly string[]): Heating {
  const { normal, integer } = seededRandom(STREAMS.temperatures);
  const readings: BathTemperature[] = [];
  const places = lab.lines.flatMap((line) => [...line.baths, line.dryer]);
  const trueOffsetC = new Map(places.map(({ id }) => [id, new Map<string, number>()]));
  for (const day of days) {
    const delay = integer(0, 8);
    for (const [at, time] of CONTROLLER_TIMES.entries()) {
      if (day === TODAY && at > 0) break;
      places.forEach(({ id, setTemperatureC }, place) => {
        const developer = id.endsWith("developer");
        const shown = (developer ? DEVELOPER_SD_C : OTHER_SD_C) * normal();
        const readAt = `${day}T${clock(time, delay + place)}`;
        readings.push(reading(readAt, id, "controller", setTemperatureC + shown));
        if (at > 0) return;
        const offset = shown + heaterOffset(id, day);
        trueOffsetC.get(id)?.set(day, offset);
        const held = developer || (weekday(day) === 1 && !id.endsWith("dryer"));
        if (!held) return;
        const seen = setTemperatureC + offset + THERMOMETER_SD_C * normal();
        readings.push(reading(readAt, id, "thermometer", seen));
      });
    }
  }
  return { readings, trueOffsetC };
}

function heaterOffset(bath: string, day: string): number {
  const { from, until, offsetC } = HEATER_FAULT;
  return bath === HEATER_FAULT.bath && day >= from && day < until ? offsetC : 0;
}

function reading(readAt: string, bath: string, instrument: string, degrees: number) {
  return { readAt, bath, instrument, temperatureC: Math.round(degrees * 10) / 10 };
}
