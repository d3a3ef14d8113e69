import { basePeriodInControl } from "../charts/base-period-in-control.ts";
import type { BasePeriod, ChartChoices } from "../charts/chart-choices.ts";
import type { StripHistory } from "../strips/strip-history.ts";

/** Chart choices of a morning call; without a base period each process gets one of its own. */
export interface MorningChartChoices extends Omit<ChartChoices, "basePeriod"> {
  /** Default: the first `baseDays` days in control, found by `basePeriodInControl`. */
  readonly basePeriod?: BasePeriod;
  /** Days in control that a base period found by default holds. Default 21. */
  readonly baseDays?: number;
  /** Day from which it is looked for, `"2026-05-17"`. Default: the day of the first strip. */
  readonly baseFrom?: string;
}

/** The chart choices of one process, or why it has none. */
export interface ChartsOfProcess {
  readonly charts: ChartChoices | undefined;
  /** How the base period was found, or why there is none; `null` where it was stated. */
  readonly reason: string | null;
}

/** The base period that was stated for the process or for all, else its first days in control. */
export function chartsOfProcess(
  history: StripHistory,
  choices: MorningChartChoices | undefined,
  own: BasePeriod | undefined,
): ChartsOfProcess {
  if (choices === undefined && own === undefined) return { charts: undefined, reason: null };
  const { basePeriod, baseDays, baseFrom, ...rest } = choices ?? {};
  const stated = own ?? basePeriod;
  const charts = { ifBaseTooShort: "leave out" as const, ...rest };
  if (stated !== undefined) return { charts: { ...charts, basePeriod: stated }, reason: null };
  const found = basePeriodInControl(history, {
    ...(baseDays === undefined ? {} : { days: baseDays }),
    ...(baseFrom === undefined ? {} : { from: baseFrom }),
    ...(rest.exclude === undefined ? {} : { exclude: rest.exclude }),
    ...(rest.minimumReadings === undefined ? {} : { minimumReadings: rest.minimumReadings }),
  });
  const { basePeriod: period, exclude, reason } = found;
  return period === null
    ? { charts: undefined, reason }
    : { charts: { ...charts, basePeriod: period, exclude }, reason };
}
