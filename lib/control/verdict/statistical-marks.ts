import { type ChartChoices, cusumOf, restartsOf, rulesOf } from "../charts/chart-choices.ts";
import { seriesLimits } from "../charts/control-charts.ts";
import { cusumChart } from "../charts/cusum-chart.ts";
import { ewmaChart } from "../charts/ewma-chart.ts";
import { strictlyBeyond } from "../charts/on-the-line.ts";
import { restartLookup } from "../charts/readings.ts";
import { describeSignal } from "../rules/describe-signal.ts";
import { markRunRules, runRuleBits } from "../rules/mark-run-rules.ts";
import { runRuleSettings } from "../rules/run-rule-options.ts";
import type { ParameterSeries } from "../strips/parameter-series.ts";
import { lastRunStart, standingSince } from "./standing-since.ts";
import type { StatisticalSignal, StatisticalSignalKind } from "./verdict.ts";

/** What the statistical charts say of one series. */
export interface StatisticalMarks {
  /** For each reading of the series, 1 if a signal that acts stands on it. */
  readonly acting: Uint8Array;
  /** All signals on the last reading. */
  readonly latest: readonly StatisticalSignal[];
  readonly notCharted: string | null;
  readonly warnings: readonly string[];
}

/** Runs every chart over a series and keeps only what the verdict needs. */
export function statisticalMarks(
  where: string,
  series: ParameterSeries,
  choices: ChartChoices,
  actOn: readonly StatisticalSignalKind[],
): StatisticalMarks {
  const values = series.deviations;
  const acting = new Uint8Array(values.length);
  const { limits, notCharted } = seriesLimits(where, series, choices);
  if (limits === null) return { acting, latest: [], notCharted, warnings: [] };
  const { centre, sigma } = limits;
  const restartAt = restartsOf(series, choices);
  const restart = restartLookup(where, restartAt, values.length);
  const latest: StatisticalSignal[] = [];
  const end = values.length - 1;
  const tell = (
    kind: StatisticalSignalKind,
    rule: string | null,
    sentence: string,
    at: readonly number[],
    first: number,
  ) =>
    latest.push({
      kind,
      rule,
      acts: actOn.includes(kind),
      sentence,
      rows: at.map((i) => series.rows[i] ?? 0),
      since: series.rows[first] ?? 0,
      strips: end - first + 1,
    });
  const mark = (kind: StatisticalSignalKind, beyond: readonly number[]) => {
    if (actOn.includes(kind)) for (const at of beyond) acting[at] = 1;
    return beyond.at(-1) === end;
  };

  const settings = runRuleSettings(where, rulesOf(choices));
  const masks = markRunRules(values, limits, settings, restart);
  if (actOn.includes("run rules")) {
    for (let i = 0; i < masks.length; i++) if (masks[i] !== 0) acting[i] = 1;
  }
  const runStart = restartAt.filter((at) => at <= end).at(-1) ?? 0;
  for (const rule of new Set(settings.rules)) {
    const stands = (at: number) => ((masks[at] ?? 0) & (runRuleBits.get(rule) ?? 0)) !== 0;
    if (!stands(end)) continue;
    const signal = describeSignal(rule, end, values, limits, settings, runStart);
    tell("run rules", rule, signal.sentence, signal.rows, standingSince(end, stands));
  }

  const wide: number[] = [];
  const widest = limits.movingRangeUpperLimit / sigma;
  for (let i = 1; i <= end; i++) {
    if (restart !== undefined && restart[i] === 1) continue;
    const range = Math.abs((values[i] ?? 0) - (values[i - 1] ?? 0));
    if (strictlyBeyond(range / sigma, widest)) wide.push(i);
  }
  if (mark("moving range", wide)) {
    tell(
      "moving range",
      null,
      "the step from the reading before is larger than the moving-range limit",
      [end - 1, end],
      lastRunStart(wide),
    );
  }

  const ewma = ewmaChart(values, { ...choices.ewma, centre, sigma, restartAt });
  if (mark("EWMA", ewma.beyond)) {
    const side = (ewma.values[end] ?? 0) > centre ? "above" : "below";
    const sentence = `the weighted average stands ${side} its limits`;
    tell("EWMA", null, sentence, [end], lastRunStart(ewma.beyond));
  }
  const cusum = cusumChart(values, { ...cusumOf(choices), target: centre, sigma, restartAt });
  if (mark("CUSUM", cusum.beyond)) {
    const side = (cusum.upperSums[end] ?? 0) > (cusum.lowerSums[end] ?? 0) ? "above" : "below";
    const sentence = `the sum of what lies ${side} target stands beyond its decision interval`;
    tell("CUSUM", null, sentence, [end], lastRunStart(cusum.beyond));
  }
  return { acting, latest, notCharted: null, warnings: limits.warnings };
}
