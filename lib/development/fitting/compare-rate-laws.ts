import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import {
  checkedTimeTable,
  publishedTableModel,
  type TimeTemperatureRow,
} from "../rate/published-table-model.ts";
import { shown } from "../rate/shown.ts";
import { fitTimeTemperature } from "./fit-time-temperature.ts";
import { printedStepMin } from "./print-rounding.ts";

/** What is compared: the three kinds of model and, as a yardstick, no temperature effect at all. */
export type ComparedLaw =
  | "activation-energy"
  | "factor-per-10-degrees"
  | "published-table"
  | "no temperature effect";

/** How well each law foretells a row that it has not seen. */
export interface RateLawComparison {
  /** From the best to the worst. */
  readonly ranking: readonly {
    readonly law: ComparedLaw;
    /** Root mean square of ln(printed/foretold), per cent. */
    readonly leaveOneOutPercent: number;
  }[];
  /** What rounding alone makes of a perfect table, per cent. */
  readonly roundingPercent: number;
  /** Laws that are as good as the best, given the rounding. */
  readonly asGood: readonly ComparedLaw[];
  readonly verdict: string;
}

/**
 * Compares the rate laws by their leave-one-out error: each row in turn is foretold from the others.
 *
 * error = √( Σ ln²(t_printed/t_foretold)/n )
 *
 * Two laws are called equally good when they differ by less than the rounding of the printed times
 * (step/√12, in per cent of the geometric mean time).
 *
 * @param input.rows at least four rows of different temperature: °C and minutes
 * @param input.roundingMin step to which the times are printed, minutes; default as fitTimeTemperature
 * @returns the ranking, the laws that cannot be told apart from the best, and a verdict in words
 * @throws InputError for fewer than four rows
 *
 * @example
 * const rows = [
 *   { temperatureC: 20, timeMin: 8.75 },
 *   { temperatureC: 21.11, timeMin: 8 },
 *   { temperatureC: 22.22, timeMin: 7.25 },
 *   { temperatureC: 23.89, timeMin: 6.25 },
 * ]
 * compareRateLaws({ rows }).ranking.at(-1).law // => "no temperature effect"
 *
 * Source: cross-validation; M. Stone, J. R. Statist. Soc. B 36 (1974) 111 (from memory).
 */
export function compareRateLaws(input: {
  readonly rows: readonly TimeTemperatureRow[];
  readonly roundingMin?: number;
}): RateLawComparison {
  const where = "compareRateLaws";
  requireObject(where, "input", input, "an object with rows");
  const rows = checkedTimeTable(where, input.rows);
  if (rows.length < 4) {
    const advice = "write at least four rows: with three, a row left out leaves two";
    throw new InputError(where, "rows", `${rows.length} rows`, advice);
  }
  const times = rows.map((each) => each.timeMin);
  const step = requireNumber(where, "roundingMin", input.roundingMin ?? printedStepMin(times), {
    min: 0,
    unit: "min",
  });
  const ranking = [
    ...(["activation-energy", "factor-per-10-degrees"] as const).map((law) => ({
      law,
      leaveOneOutPercent: fitTimeTemperature({ rows, law }).leaveOneOutPercent,
    })),
    { law: "published-table" as const, leaveOneOutPercent: rms(rows.map(missByTable)) },
    { law: "no temperature effect" as const, leaveOneOutPercent: rms(rows.map(missByMean)) },
  ].sort((a, b) => a.leaveOneOutPercent - b.leaveOneOutPercent);
  const mean = Math.exp(times.reduce((sum, each) => sum + Math.log(each), 0) / times.length);
  const roundingPercent = (100 * step) / Math.sqrt(12) / mean;
  const best = ranking[0]?.leaveOneOutPercent ?? 0;
  const asGood = ranking
    // The hair of slack is for times that follow two laws exactly.
    .filter((each) => each.leaveOneOutPercent - best <= roundingPercent + 1e-9)
    .map((each) => each.law);
  const verdict =
    asGood.length === 1
      ? `${asGood[0]} foretells unseen rows best, by more than the rounding of the times`
      : `${asGood.join(", ")} cannot be told apart by this table: they differ by less than its rounding (${shown(roundingPercent)} %)`;
  return { ranking, roundingPercent, asGood, verdict };
}

type Miss = (row: TimeTemperatureRow, i: number, rows: readonly TimeTemperatureRow[]) => number;

const missByMean: Miss = (row, i, rows) => {
  const others = rows.filter((_, j) => j !== i).map((each) => Math.log(each.timeMin));
  return Math.log(row.timeMin) - others.reduce((sum, each) => sum + each, 0) / others.length;
};

const missByTable: Miss = (row, i, rows) => {
  const others = rows.filter((_, j) => j !== i);
  const known = others[0];
  if (known === undefined) return Number.NaN;
  const table = publishedTableModel({ rows: others, refuseBeyondC: 40 });
  const foretold =
    (known.timeMin * table.relativeRate(known.temperatureC)) / table.relativeRate(row.temperatureC);
  return Math.log(row.timeMin / foretold);
};

function rms(values: readonly number[]): number {
  return 100 * Math.sqrt(values.reduce((sum, each) => sum + each * each, 0) / values.length);
}
