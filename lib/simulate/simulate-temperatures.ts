import type { RandomStream } from "../numerics/index.ts";
import type { BathTemperature } from "../records/index.ts";
import { clockTime, weekdayOf } from "./days.ts";
import type { SimulatedHeater } from "./simulated-line.ts";

const CONTROLLER_TIMES = ["07:00", "12:00", "16:30"] as const;
const DEVELOPER_SD_C = 0.05;
const OTHER_SD_C = 0.25;
const THERMOMETER_SD_C = 0.05;

/** A heater's log, and how far from its set point the bath truly was. */
export interface SimulatedHeating {
  readonly readings: readonly BathTemperature[];
  /** By day, in order. */
  readonly trueOffsetC: readonly number[];
}

/**
 * The controller shows the bath three times a day. An independent thermometer is held into a
 * developer every morning and into another bath on Mondays, never into a dryer. The controller does not
 * know its error.
 *
 * @param errorOn degrees by which the bath is warmer than its controller shows on a day, by index
 * @param endsInTheMorning whether the last day has only its first readings
 */
export function simulateTemperatures(
  bath: SimulatedHeater,
  days: readonly string[],
  errorOn: (day: number) => number,
  { normal, integer }: RandomStream,
  endsInTheMorning = false,
): SimulatedHeating {
  const developer = bath.role === "developer";
  const readings: BathTemperature[] = [];
  const add = (readAt: string, instrument: string, degrees: number) => {
    const temperatureC = Math.round(degrees * 10) / 10;
    readings.push({ readAt, bath: bath.id, instrument, temperatureC });
  };
  const trueOffsetC = days.map((day, at) => {
    let morning = 0;
    const last = endsInTheMorning && at === days.length - 1;
    CONTROLLER_TIMES.forEach((time, of) => {
      if (last && of > 0) return;
      const shown = (developer ? DEVELOPER_SD_C : OTHER_SD_C) * normal();
      const readAt = `${day}T${clockTime(time, integer(0, 8))}`;
      add(readAt, "controller", bath.setTemperatureC + shown);
      if (of > 0) return;
      morning = shown + errorOn(at);
      if (developer || (weekdayOf(day) === 1 && bath.role !== "dryer")) {
        add(readAt, "thermometer", bath.setTemperatureC + morning + THERMOMETER_SD_C * normal());
      }
    });
    return morning;
  });
  return { readings, trueOffsetC };
}
