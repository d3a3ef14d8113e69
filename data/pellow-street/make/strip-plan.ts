import { seededRandom } from "../../../lib/numerics/index.ts";
import { clock, weekday } from "./days.ts";
import type { Line } from "./lab.ts";
import { CONTAMINATION, CROSSOVERS, FALSE_ALARMS, STREAMS, TODAY } from "./plan.ts";

/** A strip to be run. */
export interface PlannedStrip {
  readonly day: string;
  readonly time: string;
  /** 0 for the first batch, 1 for the one that follows it. */
  readonly batch: 0 | 1;
  readonly special?: "contaminated" | "false alarm";
}

const START_UP: Readonly<Record<Line, string>> = { film: "07:10", paper: "07:20" };
const MIDDAY = "12:50";
const EVENING = "17:25";

/**
 * Which strips are run when: one at start-up, one at midday but on Sundays, one in the evening on
 * Mondays and Thursdays; pairs at a crossover; a repeat after a strip beyond the control limits;
 * two after a fresh bath.
 */
export function planStrips(line: Line, days: readonly string[]): readonly PlannedStrip[] {
  const { integer } = seededRandom(STREAMS.stripTimes[line]);
  const crossover: readonly string[] = CROSSOVERS[line];
  const changed = crossover[0] ?? TODAY;
  const lastPair = crossover[crossover.length - 1] ?? TODAY;
  return days.flatMap((day) => {
    const at = clock(START_UP[line], integer(0, 7));
    const midday = clock(MIDDAY, integer(0, 20));
    const evening = clock(EVENING, integer(0, 12));
    const paired = day >= changed && day <= lastPair;
    const batch = day > lastPair ? 1 : 0;
    const first = { day, time: at, batch } as const;
    const strips: PlannedStrip[] = [first];
    if (paired) strips.push({ day, time: clock(at, 4), batch: 1 });
    if (line === "film" && day === CONTAMINATION.day) {
      const repeat = { ...first, time: clock(at, 14), special: "contaminated" } as const;
      strips.splice(0, 1, { ...first, special: "contaminated" }, repeat);
      strips.push({ ...first, time: "11:42" }, { ...first, time: "11:55" });
    }
    if (day === FALSE_ALARMS[line].day) {
      strips.splice(0, 1, { ...first, special: "false alarm" }, { ...first, time: clock(at, 13) });
    }
    if (day === TODAY) return strips;
    if (weekday(day) !== 0) strips.push({ ...first, time: midday });
    if (weekday(day) === 1 || weekday(day) === 4) strips.push({ ...first, time: evening });
    return strips;
  });
}
