import { requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { type LimitCrossing, limitCrossing } from "./limit-crossing.ts";
import { type LinearTrend, linearTrend } from "./linear-trend.ts";
import { type MannKendall, mannKendall } from "./mann-kendall.ts";
import { type TheilSenTrend, theilSen } from "./theil-sen.ts";

/** Where a series is heading. */
export interface TrendOutlook {
  readonly finding: "rising" | "falling" | "no trend to speak of";
  /** The finding in one sentence. */
  readonly reason: string;
  readonly mannKendall: MannKendall;
  readonly theilSen: TheilSenTrend;
  readonly leastSquares: LinearTrend;
  /** For each limit ahead: when the line reaches it. None where there is no trend to speak of. */
  readonly crossings: readonly (LimitCrossing & { readonly limit: number })[];
  readonly warnings: readonly string[];
}

/**
 * Whether a series rises or falls, how steeply, and when it will reach the limits ahead of it.
 *
 * The Mann–Kendall test decides whether there is a trend; Theil–Sen gives the slope that a bad strip
 * cannot pull; least squares with Fieller's interval gives the day of crossing.
 *
 * @param times in order, days since the first strip (or another unit, then named by `timeUnit`)
 * @param values as many readings (deviations), 8 to 5,000
 * @param options `limits` that matter; `significance` of the test, 0.001 to 0.5, default 0.05;
 *   `confidence` of the intervals, default 0.95; `timeUnit` of `times` as the sentence names it,
 *   default "a day"
 * @returns finding, slopes and crossings ahead of the last reading; `warnings` where neighbouring
 *   readings resemble each other, or a stray strip pulls the line
 * @throws InputError if times are not in order, there are too few readings or a limit is not finite
 *
 * @example
 * const days = [0, 1, 2, 3, 4, 5, 6, 7];
 * trendOutlook(days, [0, 2, 1, 3, 4, 4, 6, 7], { limits: [10, -10] }).finding // => "rising"
 *
 * Source: US EPA, Unified Guidance (2009), ch. 17.
 */
export function trendOutlook(
  times: readonly number[],
  values: readonly number[],
  options: {
    readonly limits?: readonly number[];
    readonly significance?: number;
    readonly confidence?: number;
    readonly timeUnit?: string;
  } = {},
): TrendOutlook {
  const where = "trendOutlook";
  requireEntries(where, "times", times, "a list of numbers");
  requireEntries(where, "values", values, "a list of numbers");
  requireObject(where, "options", options, "an object of options, or leave it out");
  if (options.limits !== undefined)
    requireEntries(where, "limits", options.limits, "a list of numbers");
  const timeUnit = options.timeUnit ?? "a day";
  requireNumber(where, "number of readings", values.length, { min: 8 });
  const significance = requireNumber(where, "significance", options.significance ?? 0.05, {
    min: 0.001,
    max: 0.5,
  });
  const confidence = options.confidence === undefined ? {} : { confidence: options.confidence };
  const line = linearTrend(times, values, confidence);
  const robust = theilSen(times, values, confidence);
  const test = mannKendall(values);
  const limits = (options.limits ?? []).map((limit, i) => {
    return requireNumber(where, `limits[${i}]`, limit);
  });
  const last = times.at(-1) ?? 0;
  const trending = test.pValue <= significance && robust.slope !== 0;
  const finding = trending ? (robust.slope > 0 ? "rising" : "falling") : "no trend to speak of";
  const ahead = (crossing: LimitCrossing) => crossing.time !== undefined && crossing.time > last;
  const crossings = trending
    ? limits
        .map((limit) => ({ limit, ...limitCrossing(line, limit) }))
        .filter(ahead)
        .sort((a, b) => (a.time ?? 0) - (b.time ?? 0))
    : [];
  const chance = `(Mann–Kendall, p ${told(test.pValue)})`;
  return {
    finding,
    reason: trending
      ? `The series is ${finding} by ${Math.abs(robust.slope).toPrecision(2)} ${timeUnit} ${chance}.`
      : `No trend to speak of ${chance}.`,
    mannKendall: test,
    theilSen: robust,
    leastSquares: line,
    crossings,
    warnings: [
      ...(Math.sign(line.slope) === Math.sign(robust.slope) || !trending
        ? []
        : ["Least squares and Theil–Sen disagree about the direction: look for stray strips."]),
      ...memoryAbout(line, times, values),
    ],
  };
}

/** A probability in words: what lies below a thousandth is no number to rely on. */
function told(probability: number): string {
  return probability < 0.001 ? "< 0.001" : `= ${probability.toPrecision(2)}`;
}

/** Above what the correlation of neighbours may be by chance (one-sided, 5 %), a warning. */
function memoryAbout(
  line: LinearTrend,
  times: readonly number[],
  values: readonly number[],
): string[] {
  const rest = values.map((v, i) => v - line.intercept - line.slope * (times[i] ?? 0));
  const squares = rest.reduce((sum, r) => sum + r * r, 0);
  const products = rest.slice(1).reduce((sum, r, i) => sum + r * (rest[i] ?? 0), 0);
  // What a straight line leaves over is rounding, and has no memory worth a word.
  if (line.residualSd <= 1e-9 * Math.max(...values.map(Math.abs))) return [];
  const memory = products / squares;
  if (memory <= 1.645 / Math.sqrt(values.length)) return [];
  return [
    `Neighbouring readings resemble each other about the line (correlation ${memory.toFixed(2)}): a trend is then found too readily, and the intervals are too narrow.`,
  ];
}
