import type { RandomStream } from "../numerics/index.ts";
import type { PumpReading } from "../records/index.ts";
import { clockTime } from "./days.ts";
import type { PumpPlan } from "./pump-plan.ts";
import type { SimulatedBath } from "./simulated-line.ts";

/** Each stroke's volume wanders a little; a replenisher tank's level is read to 50 mL. */
const STROKE_SD = 0.004;
const LEVEL_SD_ML = 40;
const LEVEL_STEP_ML = 50;
const CYLINDER_SD = 0.006;
const CYLINDER_STROKES = 20;

/** A pump's log, and what it truly delivered each day. */
export interface SimulatedPump {
  readonly readings: readonly PumpReading[];
  readonly deliveredMl: readonly number[];
}

/**
 * A pump that fires as often as the day's area asks for and is read in the evening: its counter and
 * setting tell what it should have delivered, the level and the cylinder what it did.
 *
 * @param plan its settings, resets of its counter and checks by cylinder
 * @param errorOn fraction by which it delivers too much on a day, by index
 */
export function simulatePump(
  bath: SimulatedBath,
  days: readonly string[],
  areaM2: readonly number[],
  plan: PumpPlan,
  errorOn: (day: number) => number,
  { normal, integer }: RandomStream,
): SimulatedPump {
  const rateMlPerM2 = bath.rateMlPerM2 ?? 0;
  const invented = integer(20_000, 90_000);
  let counter = bath.firstCounterStrokes ?? invented;
  let slip = 0;
  let owed = 0;
  const deliveredMl: number[] = [];
  const readings = days.map((day, at): PumpReading => {
    // What is left of a stroke is not forgotten but asked for the next day.
    owed += ((areaM2[at] ?? 0) * rateMlPerM2) / plan.usualSettingMl;
    const strokes = Math.round(owed);
    owed -= strokes;
    const settingMlPerStroke = plan.settingMlOn(at);
    const perStroke = settingMlPerStroke * (1 + errorOn(at));
    const volume = strokes * perStroke * (1 + STROKE_SD * normal());
    deliveredMl.push(volume);
    const newSlip = LEVEL_SD_ML * normal();
    const level = volume + newSlip - slip;
    slip = newSlip;
    const counterReset = plan.resetOn(at);
    counter = (counterReset ? 0 : counter) + strokes;
    const reading: PumpReading = {
      readAt: `${day}T${clockTime("18:00", integer(0, 15))}`,
      pump: bath.id,
      counterStrokes: counter,
      settingMlPerStroke,
      deliveredMl: Math.max(0, Math.round(level / LEVEL_STEP_ML) * LEVEL_STEP_ML),
      counterReset,
    };
    if (!plan.cylinderOn(at)) return reading;
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
