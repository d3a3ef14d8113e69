import { requireNumber } from "../input/index.ts";
import { checkedEvents } from "./check-event.ts";
import { checkedFaults } from "./check-faults.ts";
import { checkedLines } from "./check-lines.ts";
import { checkedNoise } from "./check-noise.ts";
import { consecutiveDays } from "./days.ts";
import { faultsOfLine } from "./faults-of-line.ts";
import { requireKnownKeys } from "./known-keys.ts";
import { batchesOf } from "./line-parts.ts";
import { prints } from "./random-fault.ts";
import { seal } from "./seal.ts";
import { type LineRun, type SimulatedLineLogs, simulateLine } from "./simulate-line.ts";
import { simulateRemakes, USUAL_DOUBLING_DENSITY } from "./simulate-remakes.ts";
import { registeredBatches } from "./simulated-batch.ts";
import type { CheckedFault } from "./simulated-fault.ts";
import type { SimulatedLab, SimulateLabOptions } from "./simulated-lab.ts";
import { type SimulatedLine, simulatedLines } from "./simulated-line.ts";
import { partStream } from "./streams.ts";

const OPTIONS: Readonly<Record<keyof SimulateLabOptions, true>> = {
  seed: true,
  days: true,
  from: true,
  lines: true,
  faults: true,
  noise: true,
  mixSd: true,
  mixEveryDays: true,
  events: true,
  repeatStrips: true,
  endsInTheMorning: true,
  doublingDensity: true,
};

/**
 * Simulates a lab from the library's own rooms: work day by day, pumps with counters and calibration,
 * heaters whose controllers may be wrong, developers as exactly solved replenished tanks, and strips
 * whose densities answer to all of it, read on a densitometer that is not perfect.
 *
 * density = reference + Σ answer · cause + noise; the answers are illustrative (data/simulate).
 *
 * @param options seed, days (1 to 3,660), first day, lines, faults, events, noise; see
 *   {@link SimulateLabOptions}
 * @returns logs in the types of the records room, and the answer, sealed: see `revealFaults`
 * @throws InputError for a fault, an event, a line or a day that does not exist, or a number out of range
 *
 * @example
 * const lab = simulateLab({ seed: 1, days: 30, faults: "random" });
 * lab.strips.length // => 128
 * JSON.stringify(simulateLab({ seed: 1, days: 30, faults: "random" })) === JSON.stringify(lab) // => true
 *
 * Source: tanks as in `tankOverDays`; directions of the answers as printed in data/simulate, sizes illustrative.
 */
export function simulateLab(options: SimulateLabOptions): SimulatedLab {
  const where = "simulateLab";
  requireKnownKeys(where, "options", options, Object.keys(OPTIONS));
  const seed = requireNumber(where, "seed", options.seed, { whole: true });
  const count = requireNumber(where, "days", options.days ?? 90, {
    min: 1,
    max: 3660,
    whole: true,
  });
  const from = options.from ?? "2026-05-17";
  const lines = checkedLines(where, options.lines ?? simulatedLines);
  const faults = checkedFaults(where, options, lines, count);
  const run: LineRun = {
    where,
    seed,
    days: consecutiveDays(where, from, count),
    noise: checkedNoise(where, options.noise ?? {}),
    mixSd: requireNumber(where, "mixSd", options.mixSd ?? 0.01, { min: 0, max: 0.2 }),
    mixEveryDays: requireNumber(where, "mixEveryDays", options.mixEveryDays ?? 14, {
      min: 1,
      whole: true,
    }),
    events: checkedEvents(where, options.events ?? [], lines, count),
    repeatStrips: options.repeatStrips ?? false,
    endsInTheMorning: options.endsInTheMorning ?? false,
  };
  const doublingDensity = requireNumber(
    where,
    "doublingDensity",
    options.doublingDensity ?? USUAL_DOUBLING_DENSITY,
    { min: 0.01, max: 1, hint: "a density" },
  );
  const logs = lines.map((line) => simulateLine(run, line, faults));
  return {
    seed,
    from,
    days: count,
    lines,
    strips: logs.flatMap(({ strips }) => strips),
    batches: lines.flatMap((line) => registeredBatches(batchesOf(line))),
    production: logs.flatMap(({ production }) => production.rows),
    pumps: byTime(logs.flatMap(({ pumps }) => pumps)),
    temperatures: byTime(logs.flatMap(({ temperatures }) => temperatures)),
    remakes: remakesOf(run, lines, logs, faults, doublingDensity),
    checks: byTime(logs.flatMap(({ checks }) => checks)),
    work: byMoment(
      logs.flatMap(({ work }) => work),
      ({ doneAt }) => doneAt,
    ),
    sealedAnswer: seal({ from, faults }),
    assumptions: [
      "How far densities answer to a cause is illustrative; only directions are published.",
      "The developer is followed by an exact balance; bleach, fixer and wash only by their strength.",
      "A day's work goes evenly from eight to six.",
    ],
  };
}

function byTime<T extends { readonly readAt: string }>(rows: readonly T[]): readonly T[] {
  return byMoment(rows, ({ readAt }) => readAt);
}

function byMoment<T>(rows: readonly T[], of: (row: T) => string): readonly T[] {
  return [...rows].sort((a, b) => (of(a) < of(b) ? -1 : of(a) > of(b) ? 1 : 0));
}

function remakesOf(
  { seed, days }: LineRun,
  lines: readonly SimulatedLine[],
  logs: readonly SimulatedLineLogs[],
  faults: readonly CheckedFault[],
  doublingDensity: number,
) {
  const at = lines.findIndex(({ process }) => prints(process));
  const [line, log] = [lines[at], logs[at]];
  if (line === undefined || log === undefined) return [];
  const made = new Map<string, number>();
  for (const { date, count } of log.production.rows) made.set(date, (made.get(date) ?? 0) + count);
  const { printerDensity } = faultsOfLine(line.id, faults);
  const densityOff = (day: number) => {
    const ld = log.effectOn(day).ld ?? [0, 0, 0];
    const mean = (ld[0] + ld[1] + ld[2]) / 3;
    return { density: mean + printerDensity(day), spread: Math.max(...ld) - Math.min(...ld) };
  };
  const worked = days.filter((day) => made.has(day));
  const printsMade = worked.map((day) => made.get(day) ?? 0);
  const random = partStream(seed, "remakes");
  return simulateRemakes(worked, printsMade, densityOff, random, doublingDensity);
}
