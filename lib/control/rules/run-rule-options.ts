import { InputError, requireNumber, requireOneOf } from "../../input/index.ts";
import { nelsonRules, type RunRuleId, westernElectricRules } from "./run-rule-signal.ts";

/** Which run rules are applied, and which published variant of each. */
export interface RunRuleOptions {
  /** The rules that are switched on. Default: the four of Western Electric. */
  readonly rules?: readonly RunRuleId[];
  /** Readings in a row on one side (Nelson 2, Western Electric 4). Default 9 and 8; others print 7. */
  readonly oneSideLength?: number;
  /** Readings in a row rising or falling (Nelson 3). Default 6, which is five steps; others print 7. */
  readonly trendLength?: number;
  /** Readings in a row alternating up and down (Nelson 4). Default 14, which is thirteen steps. */
  readonly alternatingLength?: number;
  /** Readings in a row within 1 sigma (Nelson 7). Default 15. */
  readonly insideLength?: number;
  /** Readings in a row beyond 1 sigma (Nelson 8). Default 8. */
  readonly outsideLength?: number;
  /** Whether Nelson 8 needs readings on both sides, as he words it (default), or takes any side. */
  readonly outsideSides?: "both" | "any";
  /**
   * Whether 2 of 3 and 4 of 5 signal only on a reading that is itself beyond (default), or on every
   * reading whose last three or five qualify.
   */
  readonly zoneSignals?: "completing reading" | "every window";
  /** Positions at which all runs start afresh. */
  readonly restartAt?: readonly number[];
}

/** `RunRuleOptions` with every choice made. */
export interface RunRuleSettings {
  readonly rules: readonly RunRuleId[];
  readonly oneSideNelson: number;
  readonly oneSideWesternElectric: number;
  readonly trend: number;
  readonly alternating: number;
  readonly inside: number;
  readonly outside: number;
  readonly outsideAnySide: boolean;
  readonly everyWindow: boolean;
}

const allRules = [...nelsonRules, ...westernElectricRules];

/** Checks the options and fills in the defaults. */
export function runRuleSettings(where: string, options: RunRuleOptions): RunRuleSettings {
  const rules = options.rules ?? westernElectricRules;
  if (!Array.isArray(rules)) {
    throw new InputError(where, "rules", rules, 'write a list such as ["nelson-1", "nelson-2"]');
  }
  rules.forEach((rule, i) => {
    requireOneOf(where, `rules[${i}]`, rule, allRules);
  });
  const length = (argument: string, value: number | undefined, otherwise: number) =>
    requireNumber(where, argument, value ?? otherwise, { min: 2, max: 30, whole: true });
  return {
    rules,
    oneSideNelson: length("oneSideLength", options.oneSideLength, 9),
    oneSideWesternElectric: length("oneSideLength", options.oneSideLength, 8),
    trend: length("trendLength", options.trendLength, 6),
    alternating: length("alternatingLength", options.alternatingLength, 14),
    inside: length("insideLength", options.insideLength, 15),
    outside: length("outsideLength", options.outsideLength, 8),
    outsideAnySide:
      requireOneOf(where, "outsideSides", options.outsideSides ?? "both", ["both", "any"]) ===
      "any",
    everyWindow:
      requireOneOf(where, "zoneSignals", options.zoneSignals ?? "completing reading", [
        "completing reading",
        "every window",
      ]) === "every window",
  };
}
