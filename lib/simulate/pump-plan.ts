import type { SimulatedEvent } from "./simulated-event.ts";
import type { SimulatedBath } from "./simulated-line.ts";

/** Every pump is run into a measuring cylinder once in so many days, unless the days are given. */
const CYLINDER_EVERY_DAYS = 35;

/** What is done to one pump, by the day's index. */
export interface PumpPlan {
  /** What it is set to while the line's own rate holds, mL a stroke. */
  readonly usualSettingMl: number;
  readonly settingMlOn: (day: number) => number;
  readonly resetOn: (day: number) => boolean;
  readonly cylinderOn: (day: number) => boolean;
}

/** Sorts out what the lab does to a pump. */
export function pumpPlan(
  { id, settingMlPerStroke = 5 }: SimulatedBath,
  events: readonly SimulatedEvent[],
): PumpPlan {
  const settings = events
    .filter((event) => event.kind === "pump-setting")
    .filter(({ bath }) => bath === id)
    .sort((a, b) => a.day - b.day);
  const checks = events.filter(({ kind }) => kind === "cylinder-check").map(({ day }) => day);
  return {
    usualSettingMl: settingMlPerStroke,
    settingMlOn: (day) =>
      settings.findLast((event) => event.day <= day)?.settingMlPerStroke ?? settingMlPerStroke,
    resetOn: (day) =>
      events.some((each) => each.kind === "counter-reset" && each.bath === id && each.day === day),
    cylinderOn: (day) =>
      checks.length > 0
        ? checks.includes(day)
        : day % CYLINDER_EVERY_DAYS === CYLINDER_EVERY_DAYS - 1,
  };
}
