import { InputError } from "../../input/index.ts";
import type { Columns } from "../cells/columns.ts";
import { numberCell } from "../cells/number-cell.ts";
import type { NumberKind } from "../cells/number-fault.ts";
import { momentCell, momentColumns } from "../cells/time-cell.ts";
import { wordCell } from "../cells/word-cell.ts";
import type { LogOptions, ParsedLog } from "../reading/log-problem.ts";
import type { ReadContext, RowReader } from "../reading/log-shape.ts";
import { readLog } from "../reading/read-log.ts";
import type { Report } from "../reading/report.ts";
import type { BathTemperature } from "./log-rows.ts";

/** A bath whose temperature is logged. */
export interface LoggedBath {
  readonly id: string;
  /** The temperature it is kept at; readings further than 20 °C away are reported. */
  readonly setTemperatureC: number;
}

/** What the reader of a bath-temperature log may be told. */
export interface TemperatureLogOptions extends LogOptions {
  /** The baths (and the dryer); a bath that is not named is reported. Without them 0 to 60 °C goes. */
  readonly baths?: readonly LoggedBath[];
}

/** Further than this from its set temperature no bath is found at work. */
const FURTHEST_C = 20;
const UNREGISTERED = temperatureKind(0, 60);

/**
 * Reads a bath-temperature log: one row a reading of one bath by one instrument.
 *
 * Columns `read_at` (`2026-08-14T07:10`; or `date` and `time`), `bath`, `instrument` (`controller`
 * for the line's own reading, `thermometer` for an independent one, or another name) and
 * `temperature_c` in °C. A reading that looks like Fahrenheit is reported with its value in °C.
 *
 * @param text the file's text; commas, semicolons or tabs; a byte order mark and any line ends
 * @param options the file's name, and what to check the rows against
 * @returns the good readings, everything wrong by line and column, and warnings
 * @throws InputError if `text` is not a string or an option cannot be meant; never for a bad file
 *
 * @example
 * parseTemperatureLog("read_at,bath,instrument,temperature_c\n2026-08-14T07:10,film-developer,controller,100", { file: "temperatures.csv" }).problems[0].advice // => "write a number from 0 to 60; 100 °F is 37.8 °C"
 */
export function parseTemperatureLog(
  text: string,
  options: TemperatureLogOptions,
): ParsedLog<BathTemperature> {
  for (const bath of options?.baths ?? []) {
    if (Number.isFinite(bath.setTemperatureC)) continue;
    const advice = "give each bath the temperature it is kept at, in °C";
    throw new InputError("parseTemperatureLog", `baths: ${bath.id}`, bath.setTemperatureC, advice);
  }
  return readLog<BathTemperature>(text, options, {
    where: "parseTemperatureLog",
    timeColumn: "read_at",
    timeOf: (row) => row.readAt,
    seriesOf: (row) => `${row.bath}\n${row.instrument}`,
    twice: "two readings of one bath by one instrument at the same minute",
    twiceAdvice: "write the minute of each, or delete the one that is wrong",
    needs: (headers) => ({
      required: [...momentColumns("read_at", headers), "bath", "instrument", "temperature_c"],
      optional: [],
    }),
    rowReader: (columns, report, context) => rowReader(columns, report, context, options.baths),
  });
}

function rowReader(
  columns: Columns,
  report: Report,
  context: ReadContext,
  baths: readonly LoggedBath[] | undefined,
): RowReader<BathTemperature> {
  const allowed = baths === undefined ? {} : { allowed: baths.map((bath) => bath.id) };
  const bathKind = { what: "bath", ifUnknown: "add it to the list of baths", ...allowed };
  const column = columns.get("temperature_c");
  const readAtOf = momentCell(columns, "read_at", report, context);
  const bathOf = wordCell(columns.get("bath"), bathKind, report);
  const instrumentOf = wordCell(columns.get("instrument"), { what: "instrument" }, report);
  const unregistered = numberCell(column, UNREGISTERED, report, context);
  const anyNumber = numberCell(column, { ...UNREGISTERED, min: -273, max: 1000 }, report, context);
  const byBath = new Map(
    (baths ?? []).map((bath) => [bath.id, numberCell(column, kindOf(bath), report, context)]),
  );
  return (cells) => {
    const readAt = readAtOf(cells);
    const bath = bathOf(cells);
    const instrument = instrumentOf(cells);
    const temperatureC = (byBath.get(bath) ?? (baths ? anyNumber : unregistered))(cells);
    const bad = readAt === "" || bath === "" || instrument === "" || Number.isNaN(temperatureC);
    if (bad) return undefined;
    const source = { file: report.file, line: report.line };
    return { readAt, bath, instrument, temperatureC, source };
  };
}

function kindOf({ setTemperatureC }: LoggedBath): NumberKind {
  return temperatureKind(tenth(setTemperatureC - FURTHEST_C), tenth(setTemperatureC + FURTHEST_C));
}

/** A temperature from `min` to `max` °C, with a hint if only the reading in °F would fit. */
function temperatureKind(min: number, max: number): NumberKind {
  const hint = (value: number): string | undefined => {
    const celsius = tenth(((value - 32) * 5) / 9);
    return celsius >= min && celsius <= max ? `${value} °F is ${celsius.toFixed(1)} °C` : undefined;
  };
  return { what: "temperature in °C", min, max, hint };
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
