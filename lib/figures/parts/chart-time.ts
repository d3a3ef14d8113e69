import { InputError } from "../../input/index.ts";
import type { JsonObject } from "./figure.ts";

const MS_PER_DAY = 86_400_000;
const MONTHS = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(" ");

/** A clock reading of the lab as a number for a time axis: the same on every machine. */
export function chartTime(where: string, argument: string, time: string): number {
  const found = /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2}))?)?/.exec(time);
  const numbers = found?.slice(1).map((part) => Number(part ?? 0));
  if (numbers === undefined) {
    throw new InputError(where, argument, time, 'write a date and time as "2026-03-02T08:05"');
  }
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0] = numbers;
  return Date.UTC(year, month - 1, day, hour, minute, second);
}

/** "2 Mar 2026". */
export function dayText(ms: number): string {
  const date = new Date(ms);
  return `${date.getUTCDate()} ${MONTHS[date.getUTCMonth()]} ${date.getUTCFullYear()}`;
}

/** "2 Mar 08:05". */
export function minuteText(ms: number): string {
  const date = new Date(ms);
  const two = (n: number) => String(n).padStart(2, "0");
  const clock = `${two(date.getUTCHours())}:${two(date.getUTCMinutes())}`;
  return `${date.getUTCDate()} ${MONTHS[date.getUTCMonth()]} ${clock}`;
}

/** A span of time for an axis, a little wider than the times, with its ticks and unit words. */
export interface TimeAxis {
  readonly domain: readonly [number, number];
  readonly ticks: readonly number[];
  /** How a tick is written, in the notation of d3-time-format. */
  readonly format: string;
  readonly title: string;
}

/** The time axis that suits a list of times (at least one). */
export function timeAxis(times: readonly number[], subject: string): TimeAxis {
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (const time of times) {
    first = Math.min(first, time);
    last = Math.max(last, time);
  }
  const margin = Math.max((last - first) * 0.012, MS_PER_DAY / 24);
  const domain = [first - margin, last + margin] as const;
  const from = new Date(first).getUTCFullYear();
  const to = new Date(last).getUTCFullYear();
  const years = from === to ? `${from}` : `${from} to ${to}`;
  const days = (domain[1] - domain[0]) / MS_PER_DAY;
  if (days > 330) {
    const title = `${subject} (month and year)`;
    return { domain, ticks: monthTicks(domain, Math.ceil(days / 300)), format: "%b %Y", title };
  }
  const title = `${subject} (day and month, ${years})`;
  if (days > 4) return { domain, ticks: dayTicks(domain, days), format: "%e %b", title };
  const ticks = evenTicks(domain, [1, 2, 3, 6, 12].find((h) => days * 24 <= h * 9) ?? 12);
  return { domain, ticks, format: "%e %b %H:%M", title: `${subject} (day and time, ${years})` };
}

/** Whole days; a week or more apart they fall on Mondays. */
function dayTicks([first, last]: TimeAxis["domain"], days: number): number[] {
  const step = [1, 2, 7, 14, 28].find((each) => days / each <= 10) ?? 28;
  const monday = 4 * MS_PER_DAY;
  const origin = step < 7 ? Math.ceil(first / MS_PER_DAY) * MS_PER_DAY : monday;
  const start = origin + Math.ceil((first - origin) / (step * MS_PER_DAY)) * step * MS_PER_DAY;
  return range(start, last, step * MS_PER_DAY);
}

function evenTicks([first, last]: TimeAxis["domain"], hours: number): number[] {
  const step = (hours * MS_PER_DAY) / 24;
  return range(Math.ceil(first / step) * step, last, step);
}

function monthTicks([first, last]: TimeAxis["domain"], months: number): number[] {
  const step = [1, 2, 3, 6, 12].find((each) => each >= months) ?? 12 * Math.ceil(months / 12);
  const ticks: number[] = [];
  const start = new Date(first).getUTCFullYear();
  for (let month = 0; ; month += step) {
    const tick = Date.UTC(start, month, 1);
    if (tick > last) return ticks;
    if (tick >= first) ticks.push(tick);
  }
}

function range(start: number, last: number, step: number): number[] {
  const count = Math.max(0, Math.floor((last - start) / step) + 1);
  return Array.from({ length: count }, (_, i) => start + i * step);
}

/** The x channel of a chart over time. */
export function timeChannel(axis: TimeAxis, drawn: boolean): JsonObject {
  const common = { values: axis.ticks, grid: true };
  const labelExpr = `utcFormat(datum.value, '${axis.format}')`;
  return {
    field: "t",
    type: "quantitative",
    scale: { domain: axis.domain, nice: false, zero: false },
    axis: drawn
      ? { ...common, title: axis.title, labelExpr }
      : { ...common, title: null, labels: false, ticks: false },
  };
}

/** Decimals that densities are read to: two, or three if any of them has a third. */
export function densityDigits(densities: readonly number[]): 2 | 3 {
  const HAIR = 1e-6;
  return densities.every((v) => Math.abs(v * 100 - Math.round(v * 100)) < HAIR) ? 2 : 3;
}

/** "+0.04", "−0.04", "0.00". */
export function signed(v: number, digits = 2): string {
  const text = Math.abs(v).toFixed(digits);
  return Number(text) === 0 ? text : `${v < 0 ? "−" : "+"}${text}`;
}
