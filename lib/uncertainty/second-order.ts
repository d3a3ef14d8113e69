import type { InputQuantity } from "./distribution.ts";
import type { MeasurementModel } from "./sensitivity.ts";
import { uncertaintyOf } from "./standard-uncertainty.ts";

/**
 * Second-order terms of the variance of a result, for independent symmetric inputs.
 *
 * Σ_i Σ_j [ ½ (∂²f/∂x_i∂x_j)² + ∂f/∂x_i · ∂³f/∂x_i∂x_j² ] u²(x_i) u²(x_j), by central differences
 * over half a standard uncertainty.
 *
 * Source: JCGM 100:2008, note to 5.1.2.
 */
export function secondOrderVariance(
  model: MeasurementModel,
  estimates: Readonly<Record<string, number>>,
  inputs: readonly InputQuantity[],
): number {
  const uncertain = inputs
    .map(({ name, distribution }) => ({ name, u: uncertaintyOf(distribution) }))
    .filter(({ u }) => u > 0);
  const h = 0.5;
  /** The model at the estimates moved by multiples of half an uncertainty in up to two inputs. */
  const at = (i: number, a: number, j: number, b: number): number => {
    const moved = { ...estimates };
    for (const [index, steps] of [
      [i, a],
      [j, b],
    ] as const) {
      const input = uncertain[index];
      if (input) moved[input.name] = (moved[input.name] ?? 0) + steps * h * input.u;
    }
    return model(moved);
  };
  const centre = model(estimates);
  let sum = 0;
  for (let i = 0; i < uncertain.length; i++) {
    const first = (at(i, 1, i, 0) - at(i, -1, i, 0)) / (2 * h);
    for (let j = 0; j < uncertain.length; j++) {
      // Derivatives are with respect to x/u, so they already carry the factors u.
      const [mixed, third] =
        i === j
          ? [
              (at(i, 1, i, 0) - 2 * centre + at(i, -1, i, 0)) / h ** 2,
              (at(i, 2, i, 0) - 2 * at(i, 1, i, 0) + 2 * at(i, -1, i, 0) - at(i, -2, i, 0)) /
                (2 * h ** 3),
            ]
          : [
              (at(i, 1, j, 1) - at(i, 1, j, -1) - at(i, -1, j, 1) + at(i, -1, j, -1)) /
                (4 * h ** 2),
              (at(i, 1, j, 1) -
                2 * at(i, 1, j, 0) +
                at(i, 1, j, -1) -
                at(i, -1, j, 1) +
                2 * at(i, -1, j, 0) -
                at(i, -1, j, -1)) /
                (2 * h ** 3),
            ];
      sum += 0.5 * mixed ** 2 + first * third;
    }
  }
  return sum;
}
