import type { RandomStream } from "../numerics/index.ts";
import type { PumpReading } from "../records/index.ts";
import { clockTime } from "./days.ts";
import type { SimulatedBath } from "./simulated-line.ts";

/** Each stroke's volume wanders a little; a replenisher tank's level is read to 50 mL. */
const STROKE_SD = 0.004;
const LEVEL_SD_ML = 40;
const LEVEL_STEP_ML = 50;
const CYLINDER_SD = 0.006;
const CYLINDER_STROKES = 20;
/** Every pump is run into a measuring cylinder once in so many days. */
const CYLINDER_EVERY_DAYS = 35;

/** A pump's log, and what it truly delivered each day. */
export interface SimulatedPump {
  readonly readings: readonly PumpReading[];
  readonly deliveredMl: readonly number[];
}

/**
 * A pump that fires as often as the day's area asks for and is read in the evening: its counter and
 * setting tell what it should have delivered, the level and the cylinder what it did.
 *
 * @param errorOn fraction by which it delivers too much on a day, by index
 */
export function simulatePump(
  bath: SimulatedBath,
  days: readonly string[],
  areaM2: readonly number[],
  errorOn: (day: number) => number,
  { normal, integer }: RandomStream,
): SimulatedPump {
  const settingMlPerStroke = bath.settingMlPerStroke ?? 5;
  const rateMlPerM2 = bath.rateMlPerM2 ?? 0;
  let counter = integer(20_000, 90_000);
  let slip = 0;
  let owed = 0;
  const deliveredMl: number[] = [];
  const readings = days.map((day, at): PumpReading => {
    // What is left of a stroke is not forgotten but asked for the next day.
    owed += ((areaM2[at] ?? 0) * rateMlPerM2) / settingMlPerStroke;
    const strokes = Math.round(owed);
    owed -= strokes;
    const perStroke = settingMlPerStroke * (1 + errorOn(at));
    const volume = strokes * perStroke * (1 + STROKE_SD * normal());
    deliveredMl.push(volume);
    const newSlip = LEVEL_SD_ML * normal();
    const level = volume + newSlip - slip;
    slip = newSlip;
    counter += strokes;
    const reading: PumpReading = {
      readAt: `${day}T${clockTime("18:00", integer(0, 15))}`,
      pump: bath.id,
      counterStrokes: counter,
      settingMlPerStroke,
      deliveredMl: Math.max(0, Math.round(level / LEVEL_STEP_ML) * LEVEL_STEP_ML),
      counterReset: false,
    };
    if (at % CYLINDER_EVERY_DAYS !== CYLINDER_EVERY_DAYS - 1) return reading;
    const inCylinder = CYLINDER_STROKES * perStroke * (1 + CYLINDER_SD * normal());
    // The strokes into the cylinder are counted but do not reach the bath; the next day shows them.
    counter += CYLINDER_STROKES;
    return {
      ...reading,
      cylinder: { strokes: CYLINDER_STROKES, volumeMl: Math.round(inCylinder) },
    };
  });
  return { readings, deliveredMl };
}
