import { requireObject } from "../../input/index.ts";
import type { RunRuleOptions } from "../rules/run-rule-options.ts";
import { runRules } from "../rules/run-rules.ts";
import type { IndividualsChart, MovingRangeChart } from "./chart-results.ts";
import { movingRanges } from "./moving-range.ts";
import { strictlyBeyond } from "./on-the-line.ts";
import { type Readings, requireReadings, restartLookup } from "./readings.ts";
import {
  type StatisticalLimits,
  type StatisticalLimitsOptions,
  statisticalLimits,
} from "./statistical-limits.ts";

/** Options of `individualsChart`. */
export interface IndividualsChartOptions extends StatisticalLimitsOptions {
  /** Limits found before; then no base period is read from `values`. */
  readonly limits?: StatisticalLimits;
  /** Run rules to apply. Default: none, the limits alone. */
  readonly runRules?: RunRuleOptions;
}

/**
 * Chart of individual readings with its moving-range chart.
 *
 * Points strictly beyond `centre ± 3σ`, and moving ranges strictly beyond `(d2 + 3 d3) σ`, are
 * listed; a point on a limit is within it. The moving range has no lower limit (0) and does not
 * reach across a restart.
 *
 * @param values readings in the order of time, in any unit; at least one if `limits` are given
 * @param options limits, or the base period to compute them from; run rules; restarts
 * @returns the chart, in the unit of the readings
 * @throws InputError as `statisticalLimits`
 *
 * @example
 * const flow = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
 * individualsChart(flow, { minimumReadings: 10 }).movingRange.centre // => 1.87777777777778
 *
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2.
 */
export function individualsChart(
  values: Readings,
  options: IndividualsChartOptions = {},
): IndividualsChart {
  const where = "individualsChart";
  requireObject(where, "options", options, "an object of options, or leave it out");
  requireReadings(where, "values", values, 1);
  const limits = options.limits ?? statisticalLimits(values, options);
  const { centre, sigma, widthSigma } = limits;
  const beyond: number[] = [];
  for (let i = 0; i < values.length; i++) {
    if (strictlyBeyond(Math.abs((values[i] ?? 0) - centre) / sigma, widthSigma)) beyond.push(i);
  }
  const rules = { ...options.runRules, restartAt: options.restartAt ?? [] };
  return {
    kind: "individuals chart",
    values: Array.from(values),
    limits,
    beyond,
    movingRange: movingRangeChart(where, values, limits, options.restartAt),
    signals: options.runRules ? runRules(values, { centre, sigma }, rules) : [],
    assumptions: [
      ...limits.assumptions,
      "read together, an individuals chart and its moving-range chart signal falsely once in about 105 readings of an in-control process (once in 370 for the individuals alone)",
    ],
    warnings: limits.warnings,
  };
}

function movingRangeChart(
  where: string,
  values: Readings,
  limits: StatisticalLimits,
  restartAt: readonly number[] | undefined,
): MovingRangeChart {
  const restart = restartLookup(where, restartAt, values.length);
  const ranges = movingRanges(values, { first: 0, last: values.length - 1, restart });
  const upper = limits.movingRangeUpperLimit / limits.sigma;
  return {
    kind: "moving range chart",
    rows: ranges.rows,
    values: ranges.values,
    centre: limits.movingRangeCentre,
    upperLimit: limits.movingRangeUpperLimit,
    lowerLimit: 0,
    beyond: ranges.rows.filter((_, i) =>
      strictlyBeyond((ranges.values[i] ?? 0) / limits.sigma, upper),
    ),
  };
}
