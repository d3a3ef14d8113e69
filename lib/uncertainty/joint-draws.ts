import { InputError } from "../input/index.ts";
import type { RandomStream } from "../numerics/index.ts";
import { correlationMatrix, type InputCorrelation, squareRootOf } from "./correlation.ts";
import type { InputQuantity } from "./distribution.ts";
import { drawFrom } from "./sample-distribution.ts";

/** A function that draws all inputs at once, correlated as asked; it re-uses one object. */
export function jointDraws(
  where: string,
  inputs: readonly InputQuantity[],
  correlations: readonly InputCorrelation[],
  random: RandomStream,
): () => Readonly<Record<string, number>> {
  const tied = inputs.filter(({ name }) =>
    correlations.some(({ between, coefficient }) => between.includes(name) && coefficient !== 0),
  );
  const matrix = correlationMatrix(where, inputs, correlations);
  const free = inputs.filter((input) => !tied.includes(input));
  const normals = tied.map(({ name, distribution }) => {
    if (distribution.kind === "normal") return { name, ...distribution };
    const advice = "only normal inputs can be drawn correlated; write kind normal for this one";
    throw new InputError(where, `${name}.kind`, distribution.kind, advice);
  });
  const indices = tied.map((input) => inputs.indexOf(input));
  const root = tied.length > 0 ? squareRootOf(matrix.selection(indices, indices)).to2DArray() : [];
  const values: Record<string, number> = {};
  const standard = new Float64Array(tied.length);
  return () => {
    for (const { name, distribution } of free) values[name] = drawFrom(distribution, random);
    for (let i = 0; i < standard.length; i++) standard[i] = random.normal();
    normals.forEach(({ name, mean, standardUncertainty }, i) => {
      const row = root[i] ?? [];
      let z = 0;
      for (let j = 0; j < standard.length; j++) z += (row[j] ?? 0) * (standard[j] ?? 0);
      values[name] = mean + standardUncertainty * z;
    });
    return values;
  };
}
