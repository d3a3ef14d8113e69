import type { TimeTemperatureRow } from "../rate/published-table-model.ts";
import type { FittedValue } from "./fitted-value.ts";

/** The two laws that a table of times can be fitted to. */
export type RateLaw = "activation-energy" | "factor-per-10-degrees";

/** One row of the table beside what the fit makes of it. */
export interface FittedRow extends TimeTemperatureRow {
  readonly fittedMin: number;
  /** Printed minus fitted, minutes. */
  readonly residualMin: number;
  /** Of ln(time), in per cent. */
  readonly residualPercent: number;
  /** Time that the fit to the other rows foretells, minutes. */
  readonly leftOutMin: number;
  /** Printed minus foretold, of ln(time), in per cent. */
  readonly leftOutPercent: number;
  /** Whether the fitted time, rounded as printed, is the printed one. */
  readonly withinRounding: boolean;
}

/** A rate law fitted to a table of times. */
export interface TimeTemperatureFit {
  readonly law: RateLaw;
  /** The law's own coefficient: kJ/mol, or the factor per 10 °C. */
  readonly coefficient: FittedValue;
  readonly coefficientUnit: "kJ/mol" | "per 10 °C";
  readonly activationEnergyKJPerMol: FittedValue;
  /** Over ten degrees around the middle of the table. */
  readonly factorPerTenDegrees: FittedValue;
  readonly timeAtReferenceMin: FittedValue;
  readonly referenceTemperatureC: number;
  readonly confidence: number;
  readonly degreesOfFreedom: number;
  readonly residualSdPercent: number;
  readonly rSquared: number;
  readonly rows: readonly FittedRow[];
  readonly range: { readonly minC: number; readonly maxC: number };
  /** Root mean square of what rows left out are missed by, per cent. */
  readonly leaveOneOutPercent: number;
  /** What the rounding of the printed times alone leaves open. */
  readonly rounding: {
    readonly stepMin: number;
    /** Whether one law passes through every printed time within its rounding. */
    readonly consistent: boolean;
    /** Lowest and highest coefficient that do, or the best guess for both if none does. */
    readonly lowest: number;
    readonly highest: number;
  };
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}
