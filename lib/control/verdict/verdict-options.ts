import { requireNumber, requireOneOf } from "../../input/index.ts";
import type { ChartChoices } from "../charts/chart-choices.ts";
import type { StatisticalSignalKind } from "./verdict.ts";

/** Options of the verdict. */
export interface VerdictOptions {
  /** Statistical charts, with their base period. Left out, only the process's limits are judged. */
  readonly charts?: ChartChoices;
  /** Statistical signals that turn "run" into "act". Default: the run rules. */
  readonly actOn?: readonly StatisticalSignalKind[];
  /**
   * The next strip within this many hours of one beyond a control limit counts as its repeat.
   * Default 36: up to the next working morning.
   */
  readonly repeatWindowHours?: number;
  /** A latest strip older than this cannot say "run". Default 12. */
  readonly staleAfterHours?: number;
}

/** `VerdictOptions` with every choice made. */
export interface VerdictSettings {
  readonly charts: ChartChoices | undefined;
  readonly actOn: readonly StatisticalSignalKind[];
  readonly repeatWindowHours: number;
  readonly staleAfterHours: number;
}

/** Checks the options and fills in the defaults. */
export function verdictSettings(where: string, options: VerdictOptions): VerdictSettings {
  const hours = (argument: string, value: number) =>
    requireNumber(where, argument, value, { above: 0, unit: "hours" });
  const kinds = ["run rules", "moving range", "EWMA", "CUSUM"] as const;
  const actOn = options.actOn ?? ["run rules"];
  return {
    charts: options.charts,
    actOn: actOn.map((kind, i) => requireOneOf(where, `actOn[${i}]`, kind, kinds)),
    repeatWindowHours: hours("repeatWindowHours", options.repeatWindowHours ?? 36),
    staleAfterHours: hours("staleAfterHours", options.staleAfterHours ?? 12),
  };
}
