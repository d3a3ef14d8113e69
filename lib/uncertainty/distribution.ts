import { InputError, requireNumber, requireOneOf } from "../input/index.ts";

/**
 * What is known of an input quantity, as a probability distribution. `mean` is the best estimate.
 *
 * - `constant`: known exactly.
 * - `normal`: a certificate with a standard uncertainty, or many small effects together.
 * - `t`: the mean of a few readings; `standardUncertainty` is s/√n, `degreesOfFreedom` n − 1.
 * - `rectangular`: only limits `mean ± halfWidth` are known (a maker's tolerance, a display's step).
 * - `triangular`: limits, and the middle is likelier than the edges (a volumetric flask).
 * - `trapezoidal`: limits; flat on `mean ± topHalfWidth`, then falling to zero at `± halfWidth`.
 * - `arcsine`: a value that swings between limits (a thermostat).
 * - `sum`: `mean` plus several independent effects, each given as a distribution about its own mean.
 *
 * Source: JCGM 101:2008, 6.4 and table 1; JCGM 100:2008, 4.3.
 */
export type Distribution =
  | { readonly kind: "constant"; readonly mean: number }
  | { readonly kind: "normal"; readonly mean: number; readonly standardUncertainty: number }
  | {
      readonly kind: "t";
      readonly mean: number;
      readonly standardUncertainty: number;
      readonly degreesOfFreedom: number;
    }
  | {
      readonly kind: "rectangular" | "triangular" | "arcsine";
      readonly mean: number;
      readonly halfWidth: number;
    }
  | {
      readonly kind: "trapezoidal";
      readonly mean: number;
      readonly halfWidth: number;
      readonly topHalfWidth: number;
    }
  | { readonly kind: "sum"; readonly mean: number; readonly parts: readonly Distribution[] };

/** Degrees of freedom of an uncertainty; `"infinite"` where it is taken as exactly known. */
export type DegreesOfFreedom = number | "infinite";

/** One input quantity of a measurement model. */
export interface InputQuantity {
  /** The name under which the model reads it. */
  readonly name: string;
  /** Unit of the value, for the budget; none for a pure number. */
  readonly unit?: string;
  readonly distribution: Distribution;
  /**
   * Degrees of freedom of the stated uncertainty, where they are not those of the distribution
   * (JCGM 100, G.4.2: a limit that is itself only known to a part).
   */
  readonly degreesOfFreedom?: number;
}

const KINDS = [
  "constant",
  "normal",
  "t",
  "rectangular",
  "triangular",
  "trapezoidal",
  "arcsine",
  "sum",
] as const;

/** Lets a distribution in if every number in it is finite and allowed. */
export function requireDistribution(where: string, name: string, distribution: Distribution): void {
  if (typeof distribution !== "object" || distribution === null) {
    throw new InputError(where, name, distribution, "write a distribution such as { kind, mean }");
  }
  const d = distribution;
  requireOneOf(where, `${name}.kind`, d.kind, KINDS);
  requireNumber(where, `${name}.mean`, d.mean);
  switch (d.kind) {
    case "normal":
    case "t":
      requireNumber(where, `${name}.standardUncertainty`, d.standardUncertainty, { min: 0 });
      if (d.kind === "t") {
        requireNumber(where, `${name}.degreesOfFreedom`, d.degreesOfFreedom, { above: 0 });
      }
      return;
    case "rectangular":
    case "triangular":
    case "arcsine":
    case "trapezoidal":
      requireNumber(where, `${name}.halfWidth`, d.halfWidth, { min: 0 });
      if (d.kind === "trapezoidal") {
        const bounds = { min: 0, max: d.halfWidth };
        requireNumber(where, `${name}.topHalfWidth`, d.topHalfWidth, bounds);
      }
      return;
    case "sum":
      if (!Array.isArray(d.parts) || d.parts.length === 0) {
        throw new InputError(where, `${name}.parts`, d.parts, "write at least one distribution");
      }
      d.parts.forEach((part, i) => {
        requireDistribution(where, `${name}.parts[${i}]`, part);
      });
  }
}
