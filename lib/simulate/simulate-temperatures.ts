import type { RandomStream } from "../numerics/index.ts";
import type { BathTemperature } from "../records/index.ts";
import { clockTime, weekdayOf } from "./days.ts";
import type { SimulatedBath } from "./simulated-line.ts";

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
 * developer every morning and into another bath on Mondays. The controller does not know its error.
 *
 * @param errorOn degrees by which the bath is warmer than its controller shows on a day, by index
 */
export function simulateTemperatures(
  bath: SimulatedBath,
  days: readonly string[],
  errorOn: (day: number) => number,
  { normal, integer }: RandomStream,
): SimulatedHeating {
  const developer = bath.role === "developer";
  const readings: BathTemperature[] = [];
  const add = (readAt: string, instrument: string, degrees: number) => {
    const temperatureC = Math.round(degrees * 10) / 10;
    readings.push({ readAt, bath: bath.id, instrument, temperatureC });
  };
  const trueOffsetC = days.map((day, at) => {
    let morning = 0;
    CONTROLLER_TIMES.forEach((time, of) => {
      const shown = (developer ? DEVELOPER_SD_C : OTHER_SD_C) * normal();
      const readAt = `${day}T${clockTime(time, integer(0, 8))}`;
      add(readAt, "controller", bath.setTemperatureC + shown);
      if (of > 0) return;
      morning = shown + errorOn(at);
      if (developer || weekdayOf(day) === 1) {
        add(readAt, "thermometer", bath.setTemperatureC + morning + THERMOMETER_SD_C * normal());
      }
    });
    return morning;
  });
  return { readings, trueOffsetC };
}
