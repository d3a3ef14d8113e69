import { type LabLogs, type LabLogsInput, labLogs } from "wetside/control";

// What a lab may have in place of all logs: fewer of them, or one that is wrong.

const DAY_MS = 86_400_000;

/** Logs of a lab that keeps less, by what it keeps. */
export const logsKept: Readonly<
  Record<string, (all: LabLogsInput, uniform: () => number) => LabLogs>
> = {
  "temperatures by the controller only": (all) => labLogs(onlyController(all)),
  "thermometer and pump": ({ checks: _, work: __, ...some }) => labLogs(some),
  "thermometer, pump, work": ({ checks: _, ...some }) => labLogs(some),
  "thermometer, pump, checks": ({ work: _, ...some }) => labLogs(some),
  "all logs": (all) => labLogs(all),
  "all logs, one instrument wrong": oneWrong,
};

function onlyController({ basePeriod, asOf, temperatures }: LabLogsInput): LabLogsInput {
  const { bath = "", readings = [] } = temperatures ?? {};
  const shown = readings.filter(({ instrument }) => instrument === "controller");
  const period = asOf === undefined ? { basePeriod } : { basePeriod, asOf };
  return { ...period, temperatures: { bath, readings: shown } };
}

/** One instrument, drawn by chance, begins to read wrong within ten days before the last reading. */
function oneWrong(all: LabLogsInput, uniform: () => number): LabLogs {
  const { logs, warnings } = labLogs(all);
  const some = logs.filter(({ kind }) => kind === "readings");
  const chosen = some[Math.floor(uniform() * some.length)];
  const [days, size, side] = [10 * uniform(), 0.5 + 1.5 * uniform(), uniform() < 0.5 ? -1 : 1];
  const wrong = logs.map((log) => {
    if (log !== chosen || log.kind === "work") return log;
    const last = Date.parse(`${log.readings.at(-1)?.at ?? ""}Z`);
    const readings = log.readings.map((each) =>
      Date.parse(`${each.at}Z`) < last - days * DAY_MS
        ? each
        : { ...each, change: each.change + side * size * log.scale },
    );
    return { ...log, readings };
  });
  return { logs: wrong, warnings };
}
