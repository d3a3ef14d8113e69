import { requireObject } from "../../input/index.ts";
import type { BathTemperature, LoggedBath, ParsedLog } from "../../records/index.ts";
import { type Table, table } from "../parts/table.ts";
import { counts, type DayTableOptions, nothing, problems } from "./day-table.ts";

/**
 * Bath temperatures on some days, lowest to highest of each day, by bath and instrument.
 *
 * @param log what `parseTemperatureLog` gave; `undefined` for a log that is not kept
 * @param options the days, the time up to which readings count, the baths for their set temperatures
 * @returns table; a column a day, °C; what is wrong with the log stands below; a sentence if there is
 * nothing to show
 *
 * @example
 * temperatureTable(undefined, { days: ["2026-08-14"] }).caption // => "Bath temperatures, lowest to highest of the day"
 */
export function temperatureTable(
  log: ParsedLog<BathTemperature> | undefined,
  options: DayTableOptions & { readonly baths?: readonly LoggedBath[] },
): Table {
  if (log !== undefined)
    requireObject("temperatureTable", "log", log, "an object with file, rows, problems, …");
  requireObject("temperatureTable", "options", options, "an object with days");
  const { days, baths = [] } = options;
  const read = (log?.rows ?? []).filter(({ readAt }) => counts(readAt, options));
  const keys = [...new Set(read.map((one) => `${one.bath}\n${one.instrument}`))];
  const rows = keys.map((key) => {
    const [bath = "", instrument = ""] = key.split("\n");
    const own = read.filter((one) => one.bath === bath && one.instrument === instrument);
    const ranges = days.map((day): [string, string] => {
      const seen = own.filter((one) => one.readAt.startsWith(day));
      return [day, rangeWords(seen.map((one) => one.temperatureC))];
    });
    const setC = baths.find((one) => one.id === bath)?.setTemperatureC ?? null;
    return { bath, instrument, setC, ...Object.fromEntries(ranges) };
  });
  const set = { field: "setC", heading: "Set", unit: "°C", digits: 1 };
  return table(rows, {
    caption: "Bath temperatures, lowest to highest of the day",
    ifEmpty: nothing("bath temperatures", log),
    notes: problems(log),
    columns: [
      { field: "bath", heading: "Bath" },
      { field: "instrument", heading: "Instrument" },
      ...(baths.length === 0 ? [] : [set]),
      ...days.map((day) => ({ field: day, heading: day, unit: "°C", align: "right" as const })),
    ],
  });
}

function rangeWords(values: readonly number[]): string {
  if (values.length === 0) return "–";
  const [low, high] = [Math.min(...values).toFixed(1), Math.max(...values).toFixed(1)];
  return low === high ? low : `${low} to ${high}`;
}
