import { daysInMonth, monthName } from "./calendar.ts";
import type { CellFault } from "./number-fault.ts";

const FIRST_YEAR = 1950;
const LAST_YEAR = 2100;

/** What is wrong with a day, which should read `2026-08-14`. */
export function dayFault(text: string, today: string | undefined): CellFault | undefined {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (match === null) return otherDayFault(text);
  const year = Number(match[1]);
  const month = Number(match[2]);
  const day = Number(match[3]);
  const days = daysInMonth(year, month);
  if (days === 0) {
    return { problem: `there is no month ${match[2]}`, advice: "write year-month-day" };
  }
  if (day < 1 || day > days) {
    const problem = `${monthName(month)} ${year} has ${days} days`;
    return { problem, advice: "write a day that exists" };
  }
  if (year < FIRST_YEAR || year > LAST_YEAR) {
    return {
      problem: `a year outside ${FIRST_YEAR} to ${LAST_YEAR}`,
      advice: "write the right year",
    };
  }
  if (today !== undefined && text > today) {
    return { problem: `a day after ${today}`, advice: "write the day on which it was read" };
  }
  return undefined;
}

function otherDayFault(text: string): CellFault {
  if (text === "") return { problem: "the cell is empty", advice: "write a day: 2026-08-14" };
  const dmy = /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4})\b/.exec(text);
  if (dmy !== null) return orderFault(Number(dmy[1]), Number(dmy[2]), Number(dmy[3]));
  const slashed = /^(\d{4})[/.](\d{1,2})[/.](\d{1,2})\b/.exec(text);
  const short = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text);
  const ymd = slashed ?? short;
  if (ymd !== null) {
    const advice = `write ${isoDay(Number(ymd[1]), Number(ymd[2]), Number(ymd[3]))}`;
    return { problem: "a day not written as year-month-day with hyphens and two digits", advice };
  }
  if (/^\d{5}(\.\d+)?$/.test(text)) {
    const advice =
      "format the column as text or as year-month-day in the spreadsheet, export again";
    return { problem: "a spreadsheet's day number", advice };
  }
  if (/^\d{4}-\d{2}-\d{2}[T ]/.test(text)) {
    return { problem: "a time where a day belongs", advice: `write ${text.slice(0, 10)}` };
  }
  return { problem: "not a day", advice: "write year-month-day: 2026-08-14" };
}

function orderFault(first: number, second: number, year: number): CellFault {
  const dayFirst = isoDay(year, second, first);
  const monthFirst = isoDay(year, first, second);
  const advice =
    first > 12 || first === second
      ? `write ${dayFirst}`
      : second > 12
        ? `write ${monthFirst}`
        : `write ${dayFirst} if the day stands first, ${monthFirst} if the month does`;
  return { problem: "a day not written as year-month-day", advice };
}

function isoDay(year: number, month: number, day: number): string {
  return `${year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

/**
 * What is wrong with a time of day.
 *
 * @param text the whole cell
 * @param clock `hh:mm` if the cell was laid out as it should be
 */
export function clockFault(text: string, clock: string | undefined): CellFault | undefined {
  if (clock !== undefined) {
    if (clock <= "23:59" && clock.slice(3) <= "59") return undefined;
    return { problem: "no such time of day", advice: "write hours 00 to 23 and minutes 00 to 59" };
  }
  const example = "2026-08-14T07:10";
  if (text === "") return { problem: "the cell is empty", advice: `write a time: ${example}` };
  if (/(Z|[+-]\d{2}:?\d{2})$/.test(text) && /T| \d/.test(text)) {
    const advice = `write local lab time without a zone: ${example}`;
    return { problem: "a time with a zone", advice };
  }
  if (/\d\s*[ap]\.?m\.?$/i.test(text)) {
    const day = /\d[/.]\d/.test(text) ? ", and the day as year-month-day: 2026-08-14T19:10" : "";
    return { problem: "a twelve-hour time", advice: `write 24 hours: 19:10 for 7:10 pm${day}` };
  }
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) {
    return { problem: "the time of day is missing", advice: `write it too: ${text}T07:10` };
  }
  if (/\d[/.]\d+[/.]\d/.test(text) || /^\d{5}/.test(text)) {
    const { problem, advice } = otherDayFault(text);
    const [, hour, minute] = /[T ](\d{1,2}):(\d{2})(?::\d{2})?$/.exec(text) ?? [];
    if (hour !== undefined && /^write \d{4}-\d{2}-\d{2}$/.test(advice)) {
      return { problem, advice: `${advice}T${hour.padStart(2, "0")}:${minute}` };
    }
    return { problem, advice: `${advice}, with the time after a T: ${example}` };
  }
  if (/\d\d:\d\d:\d\d(\.\d+)?$/.test(text)) {
    return { problem: "a time with seconds", advice: "write it to the minute" };
  }
  if (/(^|[T ])\d:\d{2}$/.test(text)) {
    return { problem: "an hour of one digit", advice: "write two digits: 07:10" };
  }
  return { problem: "not a time", advice: `write ${example}` };
}
