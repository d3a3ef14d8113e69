import type { RunRuleOptions } from "../rules/run-rule-options.ts";
import type { ParameterSeries } from "../strips/parameter-series.ts";
import type { CusumOptions } from "./cusum-chart.ts";
import type { EwmaOptions } from "./ewma-chart.ts";
import type { SigmaSource } from "./statistical-limits.ts";

/**
 * A period in which the process is known to have been in control: by local dates or times, or by
 * indices into the strips that were given. Both ends are included; a date includes its whole day.
 */
export type BasePeriod =
  | { readonly from: string; readonly to: string }
  | { readonly firstRow: number; readonly lastRow: number };

/** How the statistical charts of a process are made. */
export interface ChartChoices {
  readonly basePeriod: BasePeriod;
  /**
   * Strips of the base period left out of it because their cause is known, by local date or time as
   * far as it is written: `"2026-06-09"` is that day, `"2026-06-09T07:10"` that strip. They stay on
   * the chart.
   */
  readonly exclude?: readonly string[];
  /** Fewer readings in the base period are refused. Default 20. */
  readonly minimumReadings?: number;
  /**
   * A series whose base period holds too few readings, or none, stops the work with an error
   * (`"stop"`, default) or is left without statistical limits and says why (`"leave out"`).
   */
  readonly ifBaseTooShort?: "stop" | "leave out";
  readonly sigmaFrom?: SigmaSource;
  /** Limits of the individuals chart stand this many sigma from the centre. Default 3. */
  readonly widthSigma?: number;
  /** Centre line: the base period's mean (default) or the aim, which is 0. */
  readonly centre?: "base period" | "aim";
  /**
   * Run rules. Default: one beyond 3 sigma and eight in a row on one side (Western Electric 1 and 4).
   * A process has a dozen series, and every further rule is paid for in false signals on each.
   */
  readonly runRules?: Omit<RunRuleOptions, "restartAt">;
  readonly ewma?: Pick<EwmaOptions, "lambda" | "widthSigma" | "limitForm">;
  /**
   * CUSUM. Here its sums start again once a shift is over, so that a fault mended weeks ago does not
   * signal this morning; `afterSignal: "carry on"` lets them stand.
   */
  readonly cusum?: Pick<CusumOptions, "k" | "h" | "headStart" | "afterSignal">;
  /**
   * What runs, averages and sums do at a change of strip batch. Default: they carry on across a
   * crossover, which keeps the deviations continuous, and start afresh where there was none.
   */
  readonly atBatchChange?: "restart without crossover" | "carry on" | "restart";
  /** What they do where a strip lacks the reading. Default: they carry on as if it had not been. */
  readonly atGap?: "carry on" | "restart";
}

/** The run rules of a process's charts: those that were chosen, or the two that are the default. */
export function rulesOf(choices: Pick<ChartChoices, "runRules">): RunRuleOptions {
  return { rules: ["western-electric-1", "western-electric-4"], ...choices.runRules };
}

/** The CUSUM of a process's charts: as chosen, its sums started again once a shift is over. */
export function cusumOf(choices: Pick<ChartChoices, "cusum">): NonNullable<ChartChoices["cusum"]> {
  return { afterSignal: "start again once over", ...choices.cusum };
}

/** Positions of a series at which its charts start afresh. */
export function restartsOf(
  series: ParameterSeries,
  choices: Pick<ChartChoices, "atBatchChange" | "atGap">,
): readonly number[] {
  const policy = choices.atBatchChange ?? "restart without crossover";
  const changes = series.batchChanges.filter(
    (change) => policy === "restart" || (policy !== "carry on" && !change.crossover),
  );
  const gaps = choices.atGap === "restart" ? series.gaps : [];
  return [...new Set([...changes.map((change) => change.at), ...gaps])].sort((a, b) => a - b);
}
