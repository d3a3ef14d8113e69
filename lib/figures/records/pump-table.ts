import { requireObject } from "../../input/index.ts";
import {
  type ParsedLog,
  type PumpInterval,
  type PumpReading,
  pumpIntervals,
} from "../../records/index.ts";
import { type Table, table } from "../parts/table.ts";
import { clock, counts, type DayTableOptions, nothing, problems } from "./day-table.ts";

const NO_INTERVALS = { intervals: [], warnings: [] };
/** A step of reading that is more than this share of what was set is worth a note. */
const COARSE = 0.05;
/** Fewer measured volumes do not tell the step in which they are read. */
const FEWEST = 5;

/**
 * What the replenisher pumps were set to deliver and what was measured, over the intervals that end on
 * some days.
 *
 * @param log what `parsePumpLog` gave; `undefined` for a log that is not kept
 * @param options the days, and the time up to which readings count
 * @returns table in mL and per cent; intervals that cannot be formed (a counter set back), volumes that
 * are read too coarsely for a day, and what is wrong with the log stand below; a sentence if there is nothing to show
 *
 * @example
 * pumpTable(undefined, { days: ["2026-08-14"] }).caption // => "Replenisher pumps: set and measured volumes"
 */
export function pumpTable(
  log: ParsedLog<PumpReading> | undefined,
  options: DayTableOptions,
): Table {
  if (log !== undefined)
    requireObject("pumpTable", "log", log, "an object with file, rows, problems, …");
  const { intervals, warnings } = log === undefined ? NO_INTERVALS : pumpIntervals(log);
  const rows = intervals
    .filter(({ to }) => counts(to, options))
    .map((one) => {
      const { setMl, deliveredMl } = one;
      const off =
        deliveredMl === undefined || setMl === 0 ? null : (100 * (deliveredMl - setMl)) / setMl;
      return { ...one, from: clock(one.from), to: clock(one.to), off };
    });
  const measured = rows.some((row) => row.deliveredMl !== undefined);
  const delivered = [
    { field: "deliveredMl", heading: "Measured", unit: "mL", digits: 0 },
    { field: "off", heading: "Measured less set", unit: "%", digits: 0, signed: true },
  ];
  return table(rows, {
    caption: "Replenisher pumps: set and measured volumes",
    ifEmpty: nothing("pump readings", log),
    notes: [
      ...warnings.filter((words) => options.days.some((day) => words.includes(` to ${day}`))),
      ...coarseReadings(rows, intervals),
      ...problems(log),
    ],
    columns: [
      { field: "pump", heading: "Pump" },
      { field: "from", heading: "From" },
      { field: "to", heading: "To" },
      { field: "setMl", heading: "Set", unit: "mL", digits: 0 },
      ...(measured ? delivered : []),
    ],
  });
}

/** Pumps whose volumes are read in steps that are large beside what a day's work asks of them. */
function coarseReadings(
  shown: readonly PumpInterval[],
  all: readonly PumpInterval[],
): readonly string[] {
  return [...new Set(shown.map(({ pump }) => pump))].flatMap((pump) => {
    const volumes = all.filter((one) => one.pump === pump).flatMap((one) => one.deliveredMl ?? []);
    const step = volumes.length < FEWEST ? 0 : volumes.reduce(commonDivisor, 0);
    const sets = shown.filter((one) => one.pump === pump).map(({ setMl }) => setMl);
    const share = step / Math.min(...sets.filter((set) => set > 0));
    if (!(share > COARSE) || !Number.isFinite(share)) return [];
    return [
      `${pump}: volumes are read in steps of ${step} mL, up to ${Math.round(100 * share)} % of what was set; one day says little`,
    ];
  });
}

/** Of whole millilitres; 1 or less if they are none. */
function commonDivisor(a: number, b: number): number {
  return Number.isInteger(b) ? (b === 0 ? a : commonDivisor(b, a % b)) : 1;
}
