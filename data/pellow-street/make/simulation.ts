import {
  type SimulatedEvent,
  type SimulatedFault,
  type SimulatedLab,
  type SimulatedLine,
  simulateLab,
} from "../../../lib/simulate/index.ts";
import {
  CONTAMINATION,
  COUNTER_RESET,
  CYLINDER_DAYS,
  DOUBLING_DENSITY,
  FALSE_ALARMS,
  FIRST_DAY,
  HEATER_FAULT,
  MIXES,
  PUMP_FAULT,
  SEEDS,
  TODAY,
} from "./plan.ts";

const DAY_MS = 86_400_000;

/** Index of a day, 0 for the first. */
function dayOf(date: string): number {
  return (Date.parse(date) - Date.parse(FIRST_DAY)) / DAY_MS;
}

/** What is wrong, in the simulator's words. */
export const faults: readonly SimulatedFault[] = [
  {
    kind: "under-replenished",
    line: "film",
    fromDay: dayOf(PUMP_FAULT.from),
    size: -PUMP_FAULT.error,
  },
  {
    kind: "developer-too-warm",
    line: "paper",
    fromDay: dayOf(HEATER_FAULT.from),
    untilDay: dayOf(HEATER_FAULT.until),
    size: HEATER_FAULT.offsetC,
  },
  {
    kind: "contaminated-with-fixer",
    line: "film",
    fromDay: dayOf(CONTAMINATION.day),
    untilDay: dayOf(CONTAMINATION.day) + 1,
    size: CONTAMINATION.fixerMlPerL,
  },
  { kind: "strip-mishandled", line: "film", fromDay: dayOf(FALSE_ALARMS.film.day), size: 1 },
  { kind: "strip-mishandled", line: "paper", fromDay: dayOf(FALSE_ALARMS.paper.day), size: 1 },
];

/** What the lab does itself, and knows of. */
const events: readonly SimulatedEvent[] = [
  {
    kind: "fresh-bath",
    line: "film",
    day: dayOf(CONTAMINATION.day),
    at: CONTAMINATION.freshBathAt,
  },
  { kind: "counter-reset", bath: COUNTER_RESET.pump, day: dayOf(COUNTER_RESET.day) },
  ...CYLINDER_DAYS.map((day) => ({ kind: "cylinder-check", day: dayOf(day) }) as const),
];

/** The ninety days of one line, from the library's own simulator. */
export function simulateLineOfPellowStreet(
  line: SimulatedLine,
  seed: number = SEEDS[line.id === "film" ? "film" : "paper"],
): SimulatedLab {
  const ofLine = line.baths.map(({ id }) => id);
  return simulateLab({
    seed,
    from: FIRST_DAY,
    days: dayOf(TODAY) + 1,
    lines: [line],
    faults: faults.filter((fault) => fault.line === line.id),
    events: events.filter(
      (event) =>
        !("line" in event && event.line !== line.id) &&
        !("bath" in event && !ofLine.includes(event.bath)),
    ),
    ...MIXES,
    doublingDensity: DOUBLING_DENSITY,
    repeatStrips: true,
    endsInTheMorning: true,
  });
}
