import { requireEntries, requireObject } from "../../input/index.ts";
import type {
  BathTemperature,
  LineCheck,
  ProductionRow,
  PumpReading,
  WorkEntry,
} from "../logs/log-rows.ts";
import type { LabDescription } from "./lab-description.ts";

/** Rows of the lab's logs; leave out those it does not keep. */
export interface LoggedRows {
  readonly temperatures?: readonly BathTemperature[] | undefined;
  readonly pumps?: readonly PumpReading[] | undefined;
  readonly production?: readonly ProductionRow[] | undefined;
  readonly checks?: readonly LineCheck[] | undefined;
  readonly work?: readonly WorkEntry[] | undefined;
}

/** What a lab logged of the developer of one line, as `likelyCauses` takes it. */
export interface DeveloperLogs {
  readonly process: string;
  readonly temperatures?: {
    readonly bath: string;
    readonly readings: readonly BathTemperature[];
  };
  readonly pumps?: { readonly pump: string; readonly readings: readonly PumpReading[] };
  readonly production?: { readonly process: string; readonly rows: readonly ProductionRow[] };
  readonly checks?: { readonly line: string; readonly readings: readonly LineCheck[] };
  readonly work?: { readonly line: string; readonly entries: readonly WorkEntry[] };
}

/**
 * Finds in a lab's logs, line by line, what belongs to its developer: temperatures of that bath,
 * readings of the pump that feeds it, and the line's own production, checks and work.
 *
 * @param lab the lab's description, which says which bath is a developer and which pump feeds it
 * @param rows rows of the logs that the lab keeps
 * @returns one entry for each line with a bath of the role `"developer"`; a log without entries for
 * it is left out
 *
 * @example
 * const bath = { id: "tank-1", role: "developer", volumeL: 20, setTemperatureC: 37.8, timeMin: 3.25 };
 * const line = { id: "film", name: "Film", process: "colour-negative", strips: "film.csv", patches: [], formats: [], baths: [bath] };
 * const lab = { name: "Shed", lines: [line], pumps: [], files: { stripBatches: "batches.csv" } };
 * const readings = [{ readAt: "2026-08-14T07:05", bath: "tank-1", instrument: "thermometer", temperatureC: 37.7 }];
 * developerLogs(lab, { temperatures: readings })[0].temperatures.bath // => "tank-1"
 */
export function developerLogs(lab: LabDescription, rows: LoggedRows): readonly DeveloperLogs[] {
  requireObject("developerLogs", "lab", lab, "an object with name, lines, pumps, …");
  requireEntries("developerLogs", "pumps", lab.pumps);
  requireEntries("developerLogs", "lines", lab.lines);
  requireObject("developerLogs", "rows", rows, "an object");
  if (rows.temperatures !== undefined)
    requireEntries("developerLogs", "temperatures", rows.temperatures);
  return lab.lines.flatMap(({ id: line, process, baths }) => {
    const bath = baths.find(({ role }) => role === "developer")?.id;
    if (bath === undefined) return [];
    const pump = lab.pumps.find((each) => each.bath === bath)?.id;
    const temperatures = rows.temperatures?.filter((row) => row.bath === bath) ?? [];
    const pumps = rows.pumps?.filter((row) => row.pump === pump) ?? [];
    const checks = rows.checks?.filter((row) => row.line === line) ?? [];
    const work = rows.work?.filter((row) => row.line === line) ?? [];
    const made = rows.production?.filter((row) => row.process === process) ?? [];
    return {
      process,
      ...(temperatures.length === 0 ? {} : { temperatures: { bath, readings: temperatures } }),
      ...(pump === undefined || pumps.length === 0 ? {} : { pumps: { pump, readings: pumps } }),
      ...(made.length === 0 ? {} : { production: { process, rows: made } }),
      ...(checks.length === 0 ? {} : { checks: { line, readings: checks } }),
      ...(work.length === 0 ? {} : { work: { line, entries: work } }),
    };
  });
}
