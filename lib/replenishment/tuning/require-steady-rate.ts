import { median } from "simple-statistics";
import { InputError } from "../../input/index.ts";
import type { DeliveredInterval } from "../rates/delivered-rates.ts";

/** Typical departure of a day's set rate from the one before, as a fraction: a pump follows its area. */
const MOST = 0.15;

/** Refuses a pump whose strokes do not follow the area: it belongs to another line, or its log does. */
export function requireSteadyRate(where: string, intervals: readonly DeliveredInterval[]): void {
  const rates = intervals.flatMap(({ setMlPerM2 }) =>
    setMlPerM2 === null || setMlPerM2 <= 0 ? [] : [setMlPerM2],
  );
  if (rates.length < 5) return;
  const off = rates.slice(1).map((rate, i) => Math.abs(rate / (rates[i] ?? rate) - 1));
  const typical = median(off);
  if (typical <= MOST) return;
  const found = `${(100 * typical).toFixed(0)} % up or down from one reading to the next`;
  const advice =
    "a pump fires with the area that goes through its line; bring the production of the process that this pump feeds, or the pump of this line";
  throw new InputError(where, "set rate (strokes × setting ÷ area)", found, advice);
}
