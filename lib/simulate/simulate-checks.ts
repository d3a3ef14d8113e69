import type { RandomStream } from "../numerics/index.ts";
import type { LineCheck } from "../records/index.ts";
import { clockTime, weekdayOf } from "./days.ts";
import type { DeveloperState } from "./developer-over-days.ts";
import type { SimulatedLine } from "./simulated-line.ts";

/** What a line truly is on a morning, as far as a check could tell. */
export interface LineState {
  readonly developer: DeveloperState;
  /** Time in the developer over its own. */
  readonly timeFactor: number;
  /** Shares of strength lost by fixer and wash, and the densitometer's zero drift. */
  readonly fixerLost: number;
  readonly washLost: number;
  readonly zeroDrift: number;
}

/** Invented: what each check reads in order, and how far two readings of the same thing differ. */
const CIRCULATION = { lPerMin: 12, sd: 0.02 };
const PLAQUE = { density: 1.02, sd: 0.002 };
const TIMING_SD_S = 0.7;
const GRAVITY = { perGPerL: 0.0011, sd: 0.0006 };
const CLEARING = { seconds: 40, sd: 0.05 };
const RESIDUAL = { mgPerM2: 15, sd: 0.12, perWashLost: 4, perFixerLost: 0.5 };

/**
 * Checks of a line with a number: circulation and check plaque every morning; on Mondays and Thursdays
 * the time through the developer by stopwatch, its specific gravity, the clearing time of the fixer and
 * residual thiosulfate in what comes out. None of them knows what is wrong.
 */
export function simulateChecks(
  { id, baths }: SimulatedLine,
  days: readonly string[],
  stateOn: (day: number, readAt: string) => LineState,
  { normal, integer }: RandomStream,
): readonly LineCheck[] {
  const timeS = 60 * (baths[0]?.timeMin ?? 1);
  return days.flatMap((date, day) => {
    const readAt = `${date}T${clockTime("07:02", integer(0, 5))}`;
    const { developer, timeFactor, fixerLost, washLost, zeroDrift } = stateOn(day, readAt);
    const read = (check: string, value: number, step: number): LineCheck => {
      const rounded = Number((Math.round(value / step) * step).toFixed(4));
      return { readAt, line: id, check, value: Math.max(0, rounded) };
    };
    const daily = [
      read("circulation", CIRCULATION.lPerMin * (1 + CIRCULATION.sd * normal()), 0.1),
      read("check-plaque", PLAQUE.density + zeroDrift + PLAQUE.sd * normal(), 0.001),
    ];
    const dissolved = ["developing agent", "bromide", "alkali"].reduce(
      (sum, name) => sum + (developer[name] ?? 0),
      0,
    );
    const gravity = 1 + GRAVITY.perGPerL * dissolved + GRAVITY.sd * normal();
    const clearing = (CLEARING.seconds * (1 + CLEARING.sd * normal())) / (1 - fixerLost);
    const left =
      RESIDUAL.mgPerM2 *
      (1 + RESIDUAL.perWashLost * washLost + RESIDUAL.perFixerLost * fixerLost) *
      (1 + RESIDUAL.sd * normal());
    const twiceAWeek = [
      read("developer-time", timeS * timeFactor + TIMING_SD_S * normal(), 0.1),
      read("specific-gravity", gravity, 0.0005),
      read("clearing-time", clearing, 1),
      read("residual-thiosulfate", left, 1),
    ];
    const weekday = weekdayOf(date);
    return weekday === 1 || weekday === 4 ? [...daily, ...twiceAWeek] : daily;
  });
}
