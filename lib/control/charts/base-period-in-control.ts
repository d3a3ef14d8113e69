import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { dateOf } from "../strips/local-time.ts";
import type { StripHistory } from "../strips/strip-history.ts";
import { type StripTable, stripTable } from "../strips/strip-table.ts";
import { isBeyondLimit } from "../verdict/limit-level.ts";
import { requireDates } from "./base-positions.ts";
import type { BasePeriod } from "./chart-choices.ts";

/** How a base period is looked for. */
export interface BasePeriodSearch {
  /** Days in control that are wanted. Default 21. */
  readonly days?: number;
  /** Local day from which to look, `"2026-05-17"`. Default: the day of the first strip. */
  readonly from?: string;
  /** Days or strips left out because their cause is known, as in `ChartChoices`. */
  readonly exclude?: readonly string[];
  /** Fewer strips than this are no base period. Default 20 (common practice, no source). */
  readonly minimumReadings?: number;
}

/** A base period that was looked for, or why there is none. */
export interface BasePeriodFound {
  /** `null` if there is none. */
  readonly basePeriod: BasePeriod | null;
  /** Days within it that are left out: those that were asked for and those not in control. */
  readonly exclude: readonly string[];
  /** Days and strips that count. */
  readonly days: number;
  readonly strips: number;
  /** The choice, or why there is none, in one sentence. */
  readonly reason: string;
}

interface Day {
  readonly date: string;
  strips: number;
  inControl: boolean;
}

/**
 * The base period of a process by default: its first days in control, judged by the process's own
 * limits.
 *
 * A day is in control if every reading of every strip is within its action limits (its control
 * limits where a parameter has no action limits). Days that are not are left out. The day of the
 * latest strip never counts, so that a strip is not judged by limits that it helped to make.
 *
 * @param history strips, batches, crossovers, specification, and the time up to which strips count
 * @param search how many days (1 to 3650, default 21), from which day on, what to leave out, how many
 * strips it must hold
 * @returns the period with the days left out of it, or the reason why there is none
 * @throws InputError if an option is out of range, and as `seriesOfStrips`
 *
 * @example
 * const grey = (d: number) => ({ red: d, green: d, blue: d });
 * const reference = { dMin: grey(0.1), ld: grey(0.8), hd: grey(1.6), dMax: grey(2.4) };
 * const batches = [{ id: "77", process: "colour-paper", reference, correction: {} }];
 * const strips = [1, 2, 3].map((day) => ({
 *   takenAt: `2026-08-0${day}T07:10`, process: "colour-paper", stripBatch: "77", operator: "A", patches: reference,
 * }));
 * const found = basePeriodInControl({ strips, batches, specification: colourPaperProcess });
 * found.reason // => "2 strips on 2 days in control before the latest strip's day; at least 20 are needed, so 18 more"
 *
 * Source: common practice, no source (a base period of some three weeks in control).
 */
export function basePeriodInControl(
  history: StripHistory,
  search: BasePeriodSearch = {},
): BasePeriodFound {
  const where = "basePeriodInControl";
  requireObject(where, "history", history, "an object with strips, batches and specification");
  const wanted = requireNumber(where, "days", search.days ?? 21, {
    min: 1,
    max: 3650,
    whole: true,
    unit: "days",
  });
  const least = requireNumber(where, "minimumReadings", search.minimumReadings ?? 20, {
    min: 2,
    whole: true,
  });
  const from = search.from ?? "";
  if (from !== "" && !/^\d{4}-\d\d-\d\d$/.test(from)) {
    throw new InputError(where, "from", from, 'write a local date, such as "2026-05-17"');
  }
  const exclude = search.exclude ?? [];
  requireDates(where, exclude);
  const days = daysOf(stripTable(where, history), from, exclude);
  const good = days.filter((day) => day.inControl && day.strips > 0).slice(0, wanted);
  const strips = good.reduce((sum, day) => sum + day.strips, 0);
  const [first, last] = [good[0]?.date, good.at(-1)?.date];
  const counted = `${some(strips, "strip")} on ${some(good.length, "day")} in control`;
  if (first === undefined || last === undefined || strips < least) {
    const since = from === "" ? "" : ` from ${from} on`;
    const more = `at least ${least} are needed, so ${least - strips} more`;
    const reason = `${counted}${since} before the latest strip's day; ${more}`;
    return { basePeriod: null, exclude, days: good.length, strips, reason };
  }
  const out = days.filter((day) => !day.inControl && day.date > first && day.date < last);
  const dates = out.map((day) => day.date);
  const left = dates.length === 0 ? "" : `; not in control and left out: ${dates.join(", ")}`;
  return {
    basePeriod: { from: first, to: last },
    exclude: [...new Set([...exclude, ...dates])],
    days: good.length,
    strips,
    reason: `${counted}, ${first} to ${last}${left}`,
  };
}

/** The days from `from` up to the day before the latest strip's. */
function daysOf(table: StripTable, from: string, exclude: readonly string[]): readonly Day[] {
  const latest = dateOf(table.takenAt.at(-1) ?? "");
  const days: Day[] = [];
  table.takenAt.forEach((time, i) => {
    const date = dateOf(time);
    if (date < from || date >= latest) return;
    let day = days.at(-1);
    if (day?.date !== date) {
      day = { date, strips: 0, inControl: true };
      days.push(day);
    }
    if (exclude.some((text) => time.startsWith(text))) return;
    day.strips++;
    if (!isInControl(table, i)) day.inControl = false;
  });
  return days;
}

function isInControl(table: StripTable, i: number): boolean {
  return table.keys.every(({ parameter: { limits } }, k) => {
    const deviation = table.columns[k]?.[i] ?? Number.NaN;
    return !isBeyondLimit(deviation, limits.action ?? limits.control);
  });
}

function some(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? "" : "s"}`;
}
