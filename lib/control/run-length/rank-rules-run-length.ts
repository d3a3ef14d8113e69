import { LuDecomposition, Matrix } from "ml-matrix";
import { requireNumber } from "../../input/index.ts";
import { polynomialBasis } from "./polynomial-basis.ts";

// The solutions are combinations of exponentials and sines on [0, 1]; 18 nodes carry 15 digits.
const NODES = 18;

/**
 * In-control average run length of the rule "`points` readings in a row steadily rising, or steadily
 * falling". It does not depend on the distribution of the readings, as long as ties cannot happen;
 * densities read to 0.01 do tie, and a tie ends a run here, so the true run length is longer.
 *
 * With readings turned into uniform ranks, f_j(u) is the expected number still to come after j rising
 * points the last of which is u: f_j(u) = 1 + ∫ᵤ¹ f_{j+1} + ∫₀ᵘ f₂(1 − v) dv; solved by collocation.
 *
 * @param points readings in the run, 3 to 12; Nelson's test 3 has 6
 * @returns readings to the first signal
 * @throws InputError if `points` is out of range
 *
 * @example
 * risingRunLength(6) // => 421.598626
 *
 * Source: L. S. Nelson, Journal of Quality Technology 16 (1984) 237–239 (the rule); renewal equation
 * solved here.
 */
export function risingRunLength(points: number): number {
  requireNumber("risingRunLength", "points", points, { min: 3, max: 12, whole: true });
  const { up, down } = operators();
  return firstTwoSteps(points, (later) => up.mmul(later), down);
}

/**
 * In-control average run length of the rule "`points` readings in a row alternating up and down". It
 * does not depend on the distribution of the readings, as long as ties cannot happen.
 *
 * @param points readings in the run, 4 to 24; Nelson's test 4 has 14
 * @returns readings to the first signal
 * @throws InputError if `points` is out of range
 *
 * @example
 * alternatingRunLength(14) // => 601.007804
 *
 * Source: L. S. Nelson, Journal of Quality Technology 16 (1984) 237–239 (the rule); renewal equation
 * solved here.
 */
export function alternatingRunLength(points: number): number {
  requireNumber("alternatingRunLength", "points", points, { min: 4, max: 24, whole: true });
  const { up, down } = operators();
  return firstTwoSteps(points, (later) => down.mmul(later), up);
}

/** `up` takes f to ∫ᵤ¹ f(v) dv; `down` takes f to ∫₀ᵘ f(1 − v) dv: after a fall the picture is mirrored. */
function operators(): { readonly up: Matrix; readonly down: Matrix } {
  const basis = polynomialBasis(0, 1, NODES);
  const up = new Matrix(basis.nodes.map((u) => basis.integral(u, 1)));
  const down = new Matrix(basis.nodes.map((u) => basis.integral(1 - u, 1)));
  return { up, down };
}

/**
 * f_j = 1 + further(f_{j+1}) + restart·f₂ with f_points = 0, for j = points − 1 … 2, is linear in
 * f₂: f_j = constant + factor·f₂. The run length is 2 + ∫ of f₂ over the second reading, up or down.
 */
function firstTwoSteps(
  points: number,
  further: (later: Matrix) => Matrix,
  restart: Matrix,
): number {
  let constant = Matrix.zeros(NODES, 1);
  let factor = Matrix.zeros(NODES, NODES);
  for (let j = points - 1; j >= 2; j--) {
    constant = further(constant).add(Matrix.ones(NODES, 1));
    factor = further(factor).add(restart);
  }
  const f2 = new LuDecomposition(Matrix.eye(NODES).sub(factor)).solve(constant);
  // The second reading, given that it is above the first, is the larger of two uniform numbers.
  const weights = polynomialBasis(0, 1, NODES).integral(0, 1, (v) => 2 * v);
  return 2 + weights.reduce((sum, w, i) => sum + w * f2.get(i, 0), 0);
}
