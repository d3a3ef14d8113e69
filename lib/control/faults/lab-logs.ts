import { InputError, requireObject, requireOneOf } from "../../input/index.ts";
import { requireDates } from "../charts/base-positions.ts";
import type { LabLogs, LogOfReadings, LogOfWork } from "./lab-log.ts";
import type { LabLogsInput, LoggedWork } from "./log-input.ts";
import { faultLogKinds, faultWorkKinds, type LogKind, type WorkKind } from "./log-kinds.ts";
import { pumpSeries } from "./log-pump-series.ts";
import { type LogPeriod, type LogReading, logOfReadings } from "./log-series.ts";

const DAY_MS = 86_400_000;

/**
 * Makes a line's own logs ready for `rankFaults`: temperatures of the developer, what its replenisher
 * pump delivered, checks with a number (time, specific gravity, circulation, check plaque, clearing
 * time, residual thiosulfate), and work that was written down.
 *
 * Readings are counted from their mean in the base period, with the spread they had there; the
 * stated wander counts as four readings more. An independent thermometer goes before the controller,
 * which does not know its own error.
 *
 * @param input the logs that the lab keeps, the line's ids in them, the base period by local dates
 * @returns logs for the option `logs` of `rankFaults`, JSON-safe, and what could not be used
 * @throws InputError for a log without an entry, a bath, pump or line that the log does not hold, an
 * unknown check or work, a base period or `asOf` that is no date, numbers that are not finite
 *
 * @example
 * const readings = Array.from({ length: 9 }, (_, day) => ({
 *   readAt: `2026-08-0${day + 1}T07:00`, bath: "film-developer", instrument: "thermometer",
 *   temperatureC: day < 7 ? 37.8 : 38.5,
 * }));
 * const basePeriod = { from: "2026-08-01", to: "2026-08-07" };
 * const { logs } = labLogs({ basePeriod, temperatures: { bath: "film-developer", readings } });
 * logs.map(({ log }) => log) // => ["thermometer"]
 */
export function labLogs(input: LabLogsInput): LabLogs {
  const where = "labLogs";
  requireObject(where, "input", input, "an object with basePeriod");
  if (input.temperatures !== undefined)
    requireObject(where, "temperatures", input.temperatures, "an object with bath and readings");
  const { basePeriod, asOf } = input;
  requireDates(where, [basePeriod?.from, basePeriod?.to, ...(asOf === undefined ? [] : [asOf])]);
  const period: LogPeriod = { base: basePeriod, asOf: asOf ?? "9999" };
  const warnings: string[] = [];
  const logs: (LogOfReadings | LogOfWork)[] = [];
  const read = (id: string, readings: readonly LogReading[]) => {
    const made = logOfReadings(where, kindOf(where, id), readings, period);
    if (typeof made === "string") warnings.push(made);
    else logs.push(made);
  };
  if (input.temperatures !== undefined) {
    const { bath, readings } = input.temperatures;
    const own = ownEntries(where, "temperatures", readings, bath, (row) => row.bath);
    const byThermometer = own.filter(({ instrument }) => instrument === "thermometer");
    const used = byThermometer.length > 0 ? byThermometer : own;
    const id = byThermometer.length > 0 ? "thermometer" : "controller";
    read(
      id,
      used.map((row) => ({ at: row.readAt, value: row.temperatureC, weight: 1 })),
    );
  }
  if (input.pumps !== undefined) {
    const { pump, readings } = input.pumps;
    const own = ownEntries(where, "pumps", readings, pump, (row) => row.pump);
    read("pump", pumpSeries(own, productionOf(where, input)));
  }
  if (input.checks !== undefined) {
    const { line, readings } = input.checks;
    const own = ownEntries(where, "checks", readings, line, (row) => row.line);
    for (const id of new Set(own.map(({ check }) => check))) {
      const some = own.filter(({ check }) => check === id);
      read(
        id,
        some.map((row) => ({ at: row.readAt, value: row.value, weight: 1 })),
      );
    }
  }
  if (input.work !== undefined) {
    const { line, entries } = input.work;
    const own = ownEntries(where, "work", entries, line, (row) => row.line);
    const ids = faultWorkKinds.map(({ id }) => id);
    for (const { work } of own) requireOneOf(where, "work", work, ids);
    // Work that was never entered is perhaps not written down in this lab: it says nothing.
    const kept = faultWorkKinds.filter(({ id }) => own.some(({ work }) => work === id));
    logs.push(...kept.map((kind) => logOfWork(kind, own, period)));
  }
  return { logs, warnings };
}

function productionOf(where: string, { production }: LabLogsInput) {
  if (production === undefined) return undefined;
  const { process, rows } = production;
  return ownEntries(where, "production", rows, process, (row) => row.process);
}

function kindOf(where: string, id: string): LogKind {
  const ids = faultLogKinds.map((kind) => kind.id);
  const known = requireOneOf(where, "check", id, ids);
  const found = faultLogKinds.find((kind) => kind.id === known);
  if (found === undefined)
    throw new InputError(where, "check", id, "write the id of a known check");
  return found;
}

/** The entries of one bath, pump or line, or an error that names those there are. */
function ownEntries<Row>(
  where: string,
  log: string,
  rows: readonly Row[],
  id: string,
  idOf: (row: Row) => string,
): readonly Row[] {
  if (!Array.isArray(rows) || rows.length === 0) {
    const advice = `the log holds no entry; leave out ${log} if the lab does not keep it`;
    throw new InputError(where, log, rows, advice);
  }
  const ids = [...new Set(rows.map(idOf))];
  const known = requireOneOf(where, `${log}, of which`, id, ids);
  return rows.filter((row) => idOf(row) === known);
}

function logOfWork(
  kind: WorkKind,
  own: readonly LoggedWork[],
  { base, asOf }: LogPeriod,
): LogOfWork {
  const at = own
    .filter(({ work, doneAt }) => work === kind.id && doneAt.slice(0, asOf.length) <= asOf)
    .map(({ doneAt }) => doneAt)
    .sort();
  const inBase = at.filter((t) => t >= base.from && t.slice(0, base.to.length) <= base.to);
  const from = Date.parse(`${base.from.slice(0, 10)}T00:00Z`);
  const days = 1 + (Date.parse(`${base.to.slice(0, 10)}T00:00Z`) - from) / DAY_MS;
  // Half an entry more, so that what never happened is rare and not impossible.
  const perDay = (inBase.length + 0.5) / days;
  return {
    kind: "work",
    log: kind.id,
    words: kind.words,
    at,
    perDay,
    recorded: kind.recorded,
  };
}
