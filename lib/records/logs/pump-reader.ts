import type { Column, Columns } from "../cells/columns.ts";
import { numberCell, optionalNumberCell } from "../cells/number-cell.ts";
import type { NumberKind } from "../cells/number-fault.ts";
import { momentCell } from "../cells/time-cell.ts";
import { wordCell } from "../cells/word-cell.ts";
import type { ReadContext, RowReader } from "../reading/log-shape.ts";
import { type Report, refuse } from "../reading/report.ts";
import type { CylinderCheck, PumpReading } from "./log-rows.ts";

const MOST = Number.MAX_SAFE_INTEGER;
const STROKES: NumberKind = { what: "number of strokes", min: 0, max: MOST, whole: true };
const SETTING: NumberKind = { what: "volume per stroke in mL", min: 0, max: 1000 };
const VOLUME: NumberKind = { what: "volume in mL", min: 0, max: 10_000_000 };

/** Builds the reader of one row of a pump log. */
export function pumpReader(
  columns: Columns,
  report: Report,
  context: ReadContext,
  pumps: readonly string[] | undefined,
): RowReader<PumpReading> {
  const allowed = pumps === undefined ? {} : { allowed: pumps };
  const pumpKind = { what: "pump", ifUnknown: "add it to the list of pumps", ...allowed };
  const readAtOf = momentCell(columns, "read_at", report, context);
  const pumpOf = wordCell(columns.get("pump"), pumpKind, report);
  const counterOf = numberCell(columns.get("counter_strokes"), STROKES, report, context);
  const settingOf = numberCell(columns.get("setting_ml_per_stroke"), SETTING, report, context);
  const deliveredOf = optionalNumberCell(columns.find("delivered_ml"), VOLUME, report, context);
  const resetOf = yesNoCell(columns.find("counter_reset"), report);
  const cylinderOf = cylinderReader(columns, report, context);
  return (cells) => {
    const before = report.problems.length;
    const readAt = readAtOf(cells);
    const pump = pumpOf(cells);
    const counterStrokes = counterOf(cells);
    const settingMlPerStroke = settingOf(cells);
    const deliveredMl = deliveredOf(cells);
    const counterReset = resetOf(cells);
    const cylinder = cylinderOf(cells);
    if (report.problems.length > before) return undefined;
    return {
      readAt,
      pump,
      counterStrokes,
      settingMlPerStroke,
      ...(deliveredMl === undefined ? {} : { deliveredMl }),
      counterReset,
      ...(cylinder === undefined ? {} : { cylinder }),
      source: { file: report.file, line: report.line },
    };
  };
}

function yesNoCell(column: Column | undefined, report: Report) {
  if (column === undefined) return () => false;
  return (cells: readonly string[]): boolean => {
    const cell = cells[column.index] ?? "";
    const word = cell.trim().toLowerCase();
    if (word === "yes") return true;
    if (word !== "" && word !== "no") {
      refuse(report, column.header, cell, "neither yes nor no", "write yes, no, or nothing");
    }
    return false;
  };
}

function cylinderReader(columns: Columns, report: Report, context: ReadContext) {
  const strokesColumn = columns.find("cylinder_strokes");
  const volumeColumn = columns.find("cylinder_ml");
  const strokesOf = optionalNumberCell(strokesColumn, { ...STROKES, min: 1 }, report, context);
  const volumeOf = optionalNumberCell(volumeColumn, VOLUME, report, context);
  return (cells: readonly string[]): CylinderCheck | undefined => {
    const strokes = strokesOf(cells);
    const volumeMl = volumeOf(cells);
    if (strokes !== undefined && volumeMl !== undefined) return { strokes, volumeMl };
    if (strokes === undefined && volumeMl === undefined) return undefined;
    const missing = strokes === undefined ? strokesColumn : volumeColumn;
    const name = strokes === undefined ? "cylinder_strokes" : "cylinder_ml";
    const advice = "write both the strokes and the volume of a calibration, or neither";
    refuse(report, missing?.header ?? name, "", "half a calibration", advice);
    return undefined;
  };
}
