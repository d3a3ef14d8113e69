import { InputError } from "../../input/index.ts";
import { leastSquares } from "../../numerics/index.ts";

/** A straight line through points by least squares. */
export interface StraightLine {
  readonly intercept: number;
  readonly slope: number;
  readonly interceptError: number;
  readonly slopeError: number;
  readonly meanX: number;
  /** Value at `meanX`, whose error is independent of the slope's. */
  readonly valueAtMean: number;
  readonly valueAtMeanError: number;
  readonly residuals: readonly number[];
  /** Residual that each point would have with respect to the line through the others. */
  readonly leftOutResiduals: readonly number[];
  readonly residualSd: number;
  readonly degreesOfFreedom: number;
  readonly rSquared: number;
}

/**
 * y = intercept + slope·x by least squares on centred x, for at least three points.
 *
 * The residual of a point left out is e/(1 − h) with leverage h = 1/n + (x − x̄)²/Σ(x − x̄)²: the
 * same as fitting again without it (R. H. Myers, PRESS residuals).
 */
export function straightLine(
  where: string,
  x: readonly number[],
  y: readonly number[],
): StraightLine {
  if (x.length < 3 || x.length !== y.length) {
    const advice = "write at least three points: two give a line, but no error";
    throw new InputError(where, "rows", `${x.length} points`, advice);
  }
  const meanX = x.reduce((sum, each) => sum + each, 0) / x.length;
  const centred = x.map((each) => each - meanX);
  const fit = leastSquares({ rows: centred.map((each) => [1, each]), y });
  const [valueAtMean = Number.NaN, slope = Number.NaN] = fit.coefficients;
  const [valueAtMeanError = Number.NaN, slopeError = Number.NaN] = fit.standardErrors;
  const spread = centred.reduce((sum, each) => sum + each * each, 0);
  const meanY = y.reduce((sum, each) => sum + each, 0) / y.length;
  const total = y.reduce((sum, each) => sum + (each - meanY) ** 2, 0);
  const left = fit.residuals.reduce((sum, each) => sum + each * each, 0);
  return {
    intercept: valueAtMean - slope * meanX,
    slope,
    interceptError: Math.hypot(valueAtMeanError, meanX * slopeError),
    slopeError,
    meanX,
    valueAtMean,
    valueAtMeanError,
    residuals: fit.residuals,
    leftOutResiduals: fit.residuals.map((each, i) => {
      const leverage = 1 / x.length + (centred[i] ?? 0) ** 2 / spread;
      return each / (1 - leverage);
    }),
    residualSd: fit.residualSd,
    degreesOfFreedom: fit.degreesOfFreedom,
    rSquared: total === 0 ? 1 : 1 - left / total,
  };
}
