import { seededRandom } from "../../../lib/numerics/index.ts";
import type { ProductionRow, PumpReading } from "../../../lib/records/index.ts";
import { areaOf } from "./areas.ts";
import { clock } from "./days.ts";
import { lab } from "./lab.ts";
import { COUNTER_RESET, CYLINDER_DAYS, CYLINDER_STROKES, PUMP_FAULT, STREAMS } from "./plan.ts";

/** Each stroke's volume wanders a little; the level of a replenisher tank is read to 50 mL. */
const STROKE_SD = 0.004;
const LEVEL_SD_ML = 40;
const LEVEL_STEP_ML = 50;
const CYLINDER_SD = 0.006;

/** The pump log, and what each pump truly delivered each day in mL. */
export interface Pumping {
  readonly readings: readonly PumpReading[];
  readonly deliveredMl: ReadonlyMap<string, ReadonlyMap<string, number>>;
}

/** Every pump fires so often as the area of the day asks for, and is read in the evening. */
export function makePumping(
  days: readonly string[],
  production: readonly ProductionRow[],
): Pumping {
  const { normal, integer } = seededRandom(STREAMS.pumps);
  const counters = new Map<string, number>(lab.pumps.map((p) => [p.id, p.firstCounterStrokes]));
  const deliveredMl = new Map(lab.pumps.map((p) => [p.id, new Map<string, number>()]));
  const slips = new Map<string, number>();
  const readings: PumpReading[] = [];
  for (const day of days) {
    const evening = clock("18:00", integer(0, 15));
    for (const { id, settingMlPerStroke, rateMlPerM2 } of lab.pumps) {
      const process = id.startsWith("film") ? "colour-negative" : "colour-paper";
      const areaM2 = areaOf(production, process, day);
      const strokes = Math.round((areaM2 * rateMlPerM2) / settingMlPerStroke);
      const faulty = id === PUMP_FAULT.pump && day >= PUMP_FAULT.from;
      const perStroke = settingMlPerStroke * (faulty ? 1 + PUMP_FAULT.error : 1);
      const volume = strokes * perStroke * (1 + STROKE_SD * normal());
      deliveredMl.get(id)?.set(day, volume);
      const checked = CYLINDER_DAYS.some((each) => each === day);
      const reset = id === COUNTER_RESET.pump && day === COUNTER_RESET.day;
      const counter = (reset ? 0 : (counters.get(id) ?? 0)) + strokes;
      counters.set(id, counter + (checked ? CYLINDER_STROKES : 0));
      const slip = LEVEL_SD_ML * normal();
      const level = volume + slip - (slips.get(id) ?? 0);
      slips.set(id, slip);
      readings.push({
        readAt: `${day}T${evening}`,
        pump: id,
        counterStrokes: counter,
        settingMlPerStroke,
        deliveredMl: Math.max(0, Math.round(level / LEVEL_STEP_ML) * LEVEL_STEP_ML),
        counterReset: reset,
        ...(checked ? { cylinder: cylinder(perStroke * (1 + CYLINDER_SD * normal())) } : {}),
      });
    }
  }
  return { readings, deliveredMl };
}

function cylinder(perStrokeMl: number) {
  return { strokes: CYLINDER_STROKES, volumeMl: Math.round(CYLINDER_STROKES * perStrokeMl) };
}
