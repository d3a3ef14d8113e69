import { InputError, requireObject } from "../../input/index.ts";
import type { ParameterSeries } from "../strips/parameter-series.ts";
import { seriesOfStrips } from "../strips/series-of-strips.ts";
import type { StripHistory } from "../strips/strip-history.ts";
import { basePositions, excludedPositions, noBase } from "./base-positions.ts";
import { type ChartChoices, cusumOf, restartsOf, rulesOf } from "./chart-choices.ts";
import type { CusumChart, EwmaChart, IndividualsChart } from "./chart-results.ts";
import { cusumChart } from "./cusum-chart.ts";
import { ewmaChart } from "./ewma-chart.ts";
import { individualsChart } from "./individuals-chart.ts";
import { type StatisticalLimits, statisticalLimits } from "./statistical-limits.ts";

/** The statistical charts of one parameter in one colour. */
export interface SeriesCharts {
  readonly series: ParameterSeries;
  readonly limits: StatisticalLimits | null;
  readonly individuals: IndividualsChart | null;
  readonly ewma: EwmaChart | null;
  readonly cusum: CusumChart | null;
  /** Why there is no chart, or `null`. */
  readonly notCharted: string | null;
}

/**
 * Individuals (with moving range and run rules), EWMA and CUSUM charts of every parameter and colour
 * of one process, from a stated base period.
 *
 * Positions in the charts count the readings of the series; `series.rows` leads from there to the
 * strips. Colour spread is a range, not symmetric about a centre, and is judged by its process
 * limits only; a series whose base readings are all equal, or that is empty, has no charts and says
 * why. So does one whose base period is too short, if `ifBaseTooShort` is `"leave out"`.
 *
 * @param history strips, batches, crossovers, specification
 * @param choices base period, rules, chart constants
 * @returns one entry for each parameter and colour
 * @throws InputError if the base period is too short or holds no strips, unless such series are left out
 *
 * @example
 * const grey = (d: number) => ({ red: d, green: d, blue: d });
 * const reference = { dMin: grey(0.1), ld: grey(0.8), hd: grey(1.6), dMax: grey(2.4) };
 * const batches = [{ id: "77", process: "colour-paper", reference, correction: {} }];
 * const strips = Array.from({ length: 28 }, (_, day) => ({
 *   takenAt: `2026-08-${String(day + 1).padStart(2, "0")}T07:10`, process: "colour-paper",
 *   stripBatch: "77", operator: "A", patches: { ...reference, ld: grey(0.8 + 0.01 * (day % 3)) },
 * }));
 * const charts = controlCharts({ strips, batches, specification: colourPaperProcess },
 *   { basePeriod: { from: "2026-08-01", to: "2026-08-24" } });
 * charts[3]?.limits?.centre // => 0.01
 */
export function controlCharts(
  history: StripHistory,
  choices: ChartChoices,
): readonly SeriesCharts[] {
  requireObject(
    "controlCharts",
    "history",
    history,
    "an object with strips, batches and specification",
  );
  requireObject("controlCharts", "choices", choices, "an object with basePeriod");
  requireObject("controlCharts", "basePeriod", choices.basePeriod, "an object");
  return seriesOfStrips(history).map((series) => chartSeries(series, choices));
}

function chartSeries(series: ParameterSeries, choices: ChartChoices): SeriesCharts {
  const found = seriesLimits("controlCharts", series, choices);
  if (found.limits === null) {
    const { notCharted } = found;
    return { series, limits: null, individuals: null, ewma: null, cusum: null, notCharted };
  }
  const { limits } = found;
  const { centre, sigma } = limits;
  const restartAt = restartsOf(series, choices);
  const values = series.deviations;
  const individuals = individualsChart(values, {
    limits,
    restartAt,
    runRules: rulesOf(choices),
  });
  const ewma = ewmaChart(values, { ...choices.ewma, centre, sigma, restartAt });
  const cusum = cusumChart(values, { ...cusumOf(choices), target: centre, sigma, restartAt });
  return { series, limits, individuals, ewma, cusum, notCharted: null };
}

/** Statistical limits of a series, or the reason why it has none. */
export function seriesLimits(
  where: string,
  series: ParameterSeries,
  choices: ChartChoices,
):
  | { readonly limits: StatisticalLimits; readonly notCharted: null }
  | { readonly limits: null; readonly notCharted: string } {
  const without = (notCharted: string) => ({ limits: null, notCharted });
  if (series.colour === null) {
    return without(
      "a spread is a range, not symmetric about a centre; its process limits judge it",
    );
  }
  if (series.deviations.length === 0) return without("there are no readings");
  const leaveOut = choices.ifBaseTooShort === "leave out";
  const base = basePositions(where, series, choices.basePeriod);
  if (base === undefined) {
    if (leaveOut) return without("no strip was run in the base period");
    throw noBase(where, series, choices.basePeriod);
  }
  const least = choices.minimumReadings ?? 20;
  const excluded = excludedPositions(where, series, choices.exclude);
  const inBase = excluded.filter((at) => at >= base.first && at <= base.last).length;
  const readings = base.last - base.first + 1 - inBase;
  if (leaveOut && readings < least) {
    return without(`${readings} readings in the base period, at least ${least} are needed`);
  }
  if (new Set(series.deviations.slice(base.first, base.last + 1)).size === 1) {
    // Too short is told first: one reading always equals itself.
    if (base.last - base.first + 1 >= least) {
      return without(
        "all readings of the base period are equal; choose another period, or read to three decimals",
      );
    }
  }
  try {
    const limits = statisticalLimits(series.deviations, {
      base,
      exclude: excluded,
      restartAt: restartsOf(series, choices),
      minimumReadings: least,
      sigmaFrom: choices.sigmaFrom ?? "mean moving range",
      widthSigma: choices.widthSigma ?? 3,
      ...(choices.centre === "aim" ? { centre: 0 } : {}),
    });
    return { limits, notCharted: null };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    if (error.argument === "sigma of the base period") {
      return without(error.message.slice(error.message.indexOf("; ") + 2));
    }
    const label = `${series.name} ${series.colour}, ${error.argument}`;
    const advice = error.message.slice(error.message.indexOf("; ") + 2);
    throw new InputError(where, label, error.value, advice);
  }
}
