import { InputError } from "../../input/index.ts";
import type { ParameterSeries } from "../strips/parameter-series.ts";
import type { BasePeriod } from "./chart-choices.ts";

/** The base period's first and last position in a series; `undefined` if it holds no reading. */
export function basePositions(
  where: string,
  series: ParameterSeries,
  period: BasePeriod,
): { readonly first: number; readonly last: number } | undefined {
  const within = insideOf(where, period);
  let first = -1;
  let last = -1;
  for (let i = 0; i < series.rows.length; i++) {
    if (!within(series.rows[i] ?? 0, series.takenAt[i] ?? "")) continue;
    if (first < 0) first = i;
    last = i;
  }
  return first < 0 ? undefined : { first, last };
}

/** The error of a base period that holds no reading of a series. */
export function noBase(where: string, series: ParameterSeries, period: BasePeriod): InputError {
  const label = series.colour === null ? series.name : `${series.name} ${series.colour}`;
  const advice = `choose a period in which strips were run (${series.takenAt[0] ?? "no strip"} to ${series.takenAt.at(-1) ?? "no strip"})`;
  return new InputError(where, `basePeriod of ${label}`, period, advice);
}

/** Positions of a series that are left out of the base period. */
export function excludedPositions(
  where: string,
  series: ParameterSeries,
  exclude: readonly string[] | undefined,
): readonly number[] {
  if (exclude === undefined || exclude.length === 0) return [];
  requireDates(where, exclude);
  const found: number[] = [];
  series.takenAt.forEach((time, i) => {
    if (exclude.some((text) => time.startsWith(text))) found.push(i);
  });
  return found;
}

/** Lets days or times to be left out in: `"2026-06-09"`, `"2026-06-09T07:10"`. */
export function requireDates(where: string, exclude: readonly string[]): void {
  exclude.forEach((text, i) => {
    if (typeof text === "string" && dateOrTime.test(text)) return;
    throw new InputError(where, `exclude[${i}]`, text, 'write a local date, such as "2026-06-09"');
  });
}

const dateOrTime = /^\d{4}-\d\d-\d\d(T\d\d:\d\d(:\d\d)?)?$/;

function insideOf(where: string, period: BasePeriod): (row: number, time: string) => boolean {
  if ("firstRow" in period) {
    const { firstRow, lastRow } = period;
    if (!(Number.isInteger(firstRow) && Number.isInteger(lastRow) && firstRow <= lastRow)) {
      throw new InputError(where, "basePeriod", period, "write whole numbers, firstRow ≤ lastRow");
    }
    return (row) => row >= firstRow && row <= lastRow;
  }
  const { from, to } = period;
  for (const text of [from, to]) {
    if (typeof text !== "string" || !dateOrTime.test(text)) {
      const advice = 'write local dates, { from: "2026-06-01", to: "2026-07-15" }';
      throw new InputError(where, "basePeriod", period, advice);
    }
  }
  if (from > to) {
    throw new InputError(where, "basePeriod", period, "write from before to");
  }
  return (_, time) => time >= from && time.slice(0, to.length) <= to;
}
