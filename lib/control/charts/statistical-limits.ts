/**
 * Limits computed from the lab's own readings in a stated base period: what the process does when
 * left alone. They know nothing of what pictures can bear: that is what `ProcessLimits` are for.
 */
export interface StatisticalLimits {
  readonly kind: "statistical limits";
  /** Centre line of the individuals chart. */
  readonly centre: number;
  /** Short-term standard deviation of one reading. */
  readonly sigma: number;
  /** Centre + width · sigma. */
  readonly upperLimit: number;
  /** Centre − width · sigma. */
  readonly lowerLimit: number;
  /** Mean of the moving ranges of two. */
  readonly movingRangeCentre: number;
  /** Upper limit of the moving range. */
  readonly movingRangeUpperLimit: number;
  /** Limits stand this many sigma from the centre. */
  readonly widthSigma: number;
  /** Positions of the base period's first and last reading in the series. */
  readonly baseFirst: number;
  readonly baseLast: number;
  /** Number of readings used. */
  readonly baseReadings: number;
  readonly sigmaFrom: "mean moving range" | "median moving range" | "standard deviation";
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}
