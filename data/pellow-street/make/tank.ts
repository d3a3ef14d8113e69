import { CONTAMINATION } from "./plan.ts";

/**
 * How far a fractional error of the replenisher pump has come to show in the tank, day by day:
 * after n tank turnovers a lasting error e shows as e (1 − exp(−n)). A fresh bath starts at 0.
 *
 * @param days the days, in order
 * @param deliveredMl what was delivered each day
 * @param errorOn the pump's fractional error on a day
 * @returns the state on the morning of each day
 */
export function tankResponse(
  days: readonly string[],
  deliveredMl: ReadonlyMap<string, number>,
  errorOn: (day: string) => number,
  volumeL: number,
  freshBath: boolean,
): ReadonlyMap<string, number> {
  const mornings = new Map<string, number>();
  let state = 0;
  for (const day of days) {
    mornings.set(day, state);
    if (freshBath && day === CONTAMINATION.day) state = 0;
    const turnovers = (deliveredMl.get(day) ?? 0) / (volumeL * 1000);
    const error = errorOn(day);
    state = error + (state - error) * Math.exp(-turnovers);
  }
  return mornings;
}
