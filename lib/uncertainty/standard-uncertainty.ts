import { type DegreesOfFreedom, type Distribution, requireDistribution } from "./distribution.ts";
import { effectiveDegreesOfFreedom } from "./effective-degrees-of-freedom.ts";

/**
 * Standard uncertainty of a quantity from its distribution.
 *
 * Rectangular a/√3, triangular a/√6, arcsine a/√2, trapezoidal √((a² + b²)/6) with half-widths a
 * (foot) and b (top); normal and t the stated one; a sum the root of the sum of squares.
 *
 * @param distribution numbers in the quantity's own unit; widths and uncertainties at least 0
 * @returns standard uncertainty in the quantity's unit. For `t` it is the scale s/√n that JCGM 100
 *   propagates, not the larger standard deviation of the distribution.
 * @throws InputError for a distribution with a number that is missing, negative or not finite
 *
 * @example
 * standardUncertainty({ kind: "rectangular", mean: 20, halfWidth: 0.5 }) // => 0.288675
 *
 * Source: JCGM 100:2008, 4.3.7–4.3.9; JCGM 101:2008, 6.4.2–6.4.9.
 */
export function standardUncertainty(distribution: Distribution): number {
  requireDistribution("standardUncertainty", "distribution", distribution);
  return uncertaintyOf(distribution);
}

export function uncertaintyOf(d: Distribution): number {
  switch (d.kind) {
    case "constant":
      return 0;
    case "normal":
    case "t":
      return d.standardUncertainty;
    case "rectangular":
      return d.halfWidth / Math.sqrt(3);
    case "triangular":
      return d.halfWidth / Math.sqrt(6);
    case "arcsine":
      return d.halfWidth / Math.SQRT2;
    case "trapezoidal":
      return Math.sqrt((d.halfWidth ** 2 + d.topHalfWidth ** 2) / 6);
    case "sum":
      return Math.hypot(...d.parts.map(uncertaintyOf));
  }
}

/** Degrees of freedom of a distribution's own standard uncertainty. */
export function degreesOfFreedomOf(d: Distribution): DegreesOfFreedom {
  if (d.kind === "t") return d.degreesOfFreedom;
  if (d.kind !== "sum") return "infinite";
  const parts = d.parts.map((part) => ({
    contribution: uncertaintyOf(part),
    degreesOfFreedom: degreesOfFreedomOf(part),
  }));
  return effectiveDegreesOfFreedom(parts);
}

/** Best estimate: the mean of a quantity, with the means of the effects added to it. */
export function bestEstimateOf(d: Distribution): number {
  return d.kind === "sum"
    ? d.parts.reduce((sum, part) => sum + bestEstimateOf(part), d.mean)
    : d.mean;
}
