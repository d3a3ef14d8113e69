import { requireEntries } from "../../input/index.ts";
import type { BathTemperature, ProductionRow, PumpReading, RemakesDay } from "../logs/log-rows.ts";
import { snakeCase } from "../strips/patch-columns.ts";
import { csvText } from "./csv-text.ts";
import { plainNumber } from "./plain-number.ts";

/**
 * Writes a production log that `parseProductionLog` reads back to the same rows.
 *
 * @param rows any rows
 * @returns the CSV text
 *
 * @example
 * formatProductionLog([{ date: "2026-08-14", process: "colour-negative", format: "135-36", count: 41 }]) // => "date,process,format,count\n2026-08-14,colour-negative,135-36,41\n"
 */
export function formatProductionLog(rows: readonly ProductionRow[]): string {
  requireEntries("formatProductionLog", "rows", rows);
  const cells = rows.map(({ date, process, format, count }) => [
    date,
    process,
    format,
    plainNumber(count),
  ]);
  return csvText(["date", "process", "format", "count"], cells);
}

/**
 * Writes a pump log that `parsePumpLog` reads back to the same readings.
 *
 * @param readings any readings
 * @returns the CSV text, with all optional columns
 *
 * @example
 * formatPumpLog([{ readAt: "2026-08-14T18:05", pump: "film-developer", counterStrokes: 48120, settingMlPerStroke: 2, counterReset: false }]) // => "read_at,pump,counter_strokes,setting_ml_per_stroke,delivered_ml,counter_reset,cylinder_strokes,cylinder_ml\n2026-08-14T18:05,film-developer,48120,2,,,,\n"
 */
export function formatPumpLog(readings: readonly PumpReading[]): string {
  requireEntries("formatPumpLog", "readings", readings);
  const header = [
    "read_at",
    "pump",
    "counter_strokes",
    "setting_ml_per_stroke",
    "delivered_ml",
    "counter_reset",
    "cylinder_strokes",
    "cylinder_ml",
  ];
  const cells = readings.map((reading) => [
    reading.readAt,
    reading.pump,
    plainNumber(reading.counterStrokes),
    plainNumber(reading.settingMlPerStroke),
    optional(reading.deliveredMl),
    reading.counterReset ? "yes" : "",
    optional(reading.cylinder?.strokes),
    optional(reading.cylinder?.volumeMl),
  ]);
  return csvText(header, cells);
}

/**
 * Writes a bath-temperature log that `parseTemperatureLog` reads back to the same readings.
 *
 * @param readings any readings
 * @returns the CSV text
 *
 * @example
 * formatTemperatureLog([{ readAt: "2026-08-14T07:05", bath: "film-developer", instrument: "controller", temperatureC: 37.8 }]) // => "read_at,bath,instrument,temperature_c\n2026-08-14T07:05,film-developer,controller,37.8\n"
 */
export function formatTemperatureLog(readings: readonly BathTemperature[]): string {
  requireEntries("formatTemperatureLog", "readings", readings);
  const cells = readings.map((reading) => [
    reading.readAt,
    reading.bath,
    reading.instrument,
    plainNumber(reading.temperatureC),
  ]);
  return csvText(["read_at", "bath", "instrument", "temperature_c"], cells);
}

/**
 * Writes a remakes log that `parseRemakesLog` reads back to the same days.
 *
 * @param days any days; a reason a day lacks is written as 0
 * @returns the CSV text, reasons in the order they first occur
 *
 * @example
 * formatRemakesLog([{ date: "2026-08-14", printsMade: 1210, remade: { tooBright: 9 } }]) // => "date,prints_made,remade_too_bright\n2026-08-14,1210,9\n"
 */
export function formatRemakesLog(days: readonly RemakesDay[]): string {
  requireEntries("formatRemakesLog", "days", days);
  const reasons = [...new Set(days.flatMap((day) => Object.keys(day.remade)))];
  const header = ["date", "prints_made", ...reasons.map((reason) => `remade_${snakeCase(reason)}`)];
  const cells = days.map((day) => [
    day.date,
    plainNumber(day.printsMade),
    ...reasons.map((reason) => plainNumber(day.remade[reason] ?? 0)),
  ]);
  return csvText(header, cells);
}

function optional(value: number | undefined): string {
  return value === undefined ? "" : plainNumber(value);
}
