import { inverse, Matrix } from "ml-matrix";
import { InputError } from "../../input/index.ts";

/** Size of an episode by generalised least squares with the noise and scatter at that size. */
export function episodeSize(
  where: string,
  index: number,
  deviation: readonly number[],
  mean: Matrix,
  scatter: Matrix,
  noise: Matrix,
): number {
  const y = Matrix.columnVector([...deviation]);
  let size = 1;
  for (let k = 0; k < 8; k++) {
    const precision = inverse(Matrix.mul(scatter, size * size).add(noise));
    const turned = mean.transpose().mmul(precision);
    size = turned.mmul(y).get(0, 0) / turned.mmul(mean).get(0, 0);
    if (!(size > 0.05)) {
      const advice = "it does not show this fault's direction; is it labelled rightly?";
      throw new InputError(where, `fitted size of episodes[${index}]`, size, advice);
    }
  }
  return size;
}
