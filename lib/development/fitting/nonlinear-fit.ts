import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { InputError } from "../../input/index.ts";
import { leastSquares } from "../../numerics/index.ts";

/** A curve with its parameters and the derivatives of its value with respect to them. */
export interface FittableCurve {
  readonly value: (parameters: readonly number[], x: number) => number;
  readonly gradient: (parameters: readonly number[], x: number) => readonly number[];
}

/** A curve fitted by least squares. */
export interface NonlinearFit {
  readonly parameters: readonly number[];
  readonly standardErrors: readonly number[];
  readonly residuals: readonly number[];
  readonly residualSd: number;
  readonly degreesOfFreedom: number;
}

const MAX_STEPS = 50;
const CONVERGED = 1e-13;

/**
 * Least-squares fit of a curve: Levenberg–Marquardt from the starting values, then Gauss–Newton
 * steps until the parameters stand still; standard errors from the Jacobian at the minimum. More
 * points than parameters are needed.
 */
export function nonlinearFit(
  where: string,
  curve: FittableCurve,
  points: { readonly x: readonly number[]; readonly y: readonly number[] },
  start: readonly number[],
): NonlinearFit {
  const near = levenbergMarquardt(
    { x: [...points.x], y: [...points.y] },
    (p) => (x) => curve.value(p, x),
    {
      initialValues: [...start],
      jacobianFunction: (p) => (x) => [...curve.gradient(p, x)],
      maxIterations: 500,
      errorTolerance: 0,
    },
  );
  let parameters: readonly number[] = near.parameterValues;
  for (let step = 0; step < MAX_STEPS; step++) {
    const residuals = points.x.map((x, i) => (points.y[i] ?? 0) - curve.value(parameters, x));
    const jacobian = points.x.map((x) => curve.gradient(parameters, x));
    const linear = leastSquares({ rows: jacobian, y: residuals });
    const before = parameters;
    parameters = before.map((each, i) => each + (linear.coefficients[i] ?? 0));
    const moved = Math.max(
      ...linear.coefficients.map((each, i) => Math.abs(each / (before[i] || 1))),
    );
    if (moved > CONVERGED && step < MAX_STEPS - 1) continue;
    if (moved > 1e-6) break;
    const { standardErrors, residualSd, degreesOfFreedom } = linear;
    return { parameters, standardErrors, residuals, residualSd, degreesOfFreedom };
  }
  const advice = "write points that the curve can follow: the fit does not settle";
  throw new InputError(where, "rows", `${points.x.length} points`, advice);
}
