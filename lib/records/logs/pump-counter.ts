import type { LogProblem, ParsedLog } from "../reading/log-problem.ts";
import type { PumpReading } from "./log-rows.ts";

const ADVICE = "correct the counter, or write yes in counter_reset if it was set back";

/**
 * Takes out readings whose counter runs backwards without a marked reset.
 *
 * Of two neighbours that contradict each other the one that also contradicts the reading on its
 * other side is left out: a single wrong figure costs one row, whether too high or too low. After a
 * lasting drop (a reset nobody marked) the first reading after it is left out, and the rest kept.
 */
export function checkCounters(log: ParsedLog<PumpReading>, header: string): ParsedLog<PumpReading> {
  const problems: LogProblem[] = [];
  const out = new Set<PumpReading>();
  for (const readings of byPump(log.rows).values()) {
    readings.forEach((reading, at) => {
      const before = readings[at - 1];
      if (before === undefined || out.has(before) || !fallsFrom(before, reading)) return;
      const wrong = tooHigh(readings, at) ? before : reading;
      out.add(wrong);
      problems.push(backwards(log.file, header, before, reading, wrong));
    });
  }
  if (problems.length === 0) return log;
  return {
    ...log,
    rows: log.rows.filter((row) => !out.has(row)),
    problems: [...log.problems, ...problems].sort((a, b) => a.line - b.line),
    rowsRefused: log.rowsRefused + out.size,
  };
}

function byPump(rows: readonly PumpReading[]): ReadonlyMap<string, PumpReading[]> {
  const pumps = new Map<string, PumpReading[]>();
  for (const row of rows) {
    const readings = pumps.get(row.pump);
    if (readings === undefined) pumps.set(row.pump, [row]);
    else readings.push(row);
  }
  return pumps;
}

function fallsFrom(before: PumpReading, reading: PumpReading): boolean {
  return reading.counterStrokes < before.counterStrokes && !reading.counterReset;
}

/** Whether it is the reading before that stands too high: its neighbours agree without it. */
function tooHigh(readings: readonly PumpReading[], at: number): boolean {
  const before = readings[at - 1];
  const reading = readings[at];
  const earlier = readings[at - 2];
  const next = readings[at + 1];
  if (before === undefined || reading === undefined || earlier === undefined) return false;
  if (before.counterReset || fallsFrom(earlier, reading)) return false;
  return next === undefined ? false : fallsFrom(before, next);
}

function backwards(
  file: string,
  column: string,
  before: PumpReading,
  reading: PumpReading,
  wrong: PumpReading,
): LogProblem {
  const line = wrong.source?.line ?? 0;
  const low = `${reading.counterStrokes} on line ${reading.source?.line}`;
  const high = `${before.counterStrokes} on line ${before.source?.line}`;
  return {
    file,
    line,
    column,
    value: String(wrong.counterStrokes),
    problem: `the counter of ${wrong.pump} runs backwards, ${high} to ${low}`,
    advice: ADVICE,
    rowUsed: false,
  };
}
