import {
  type InputQuantity,
  monteCarloUncertainty,
  propagateUncertainty,
} from "wetside/uncertainty";

const inputs: readonly InputQuantity[] = [
  { name: "x", distribution: { kind: "rectangular", mean: 0.6, halfWidth: 0.5 } },
];
const model = ({ x = 1 }: Readonly<Record<string, number>>) => Math.log(x);
const drawn = () => monteCarloUncertainty(model, inputs, { seed: 3, trials: 1_000_000 });

export const computed = {
  guf: () => {
    const { value, combinedStandardUncertainty, interval } = propagateUncertainty(model, inputs);
    return [value, combinedStandardUncertainty, interval[1]];
  },
  "monte-carlo": () => [drawn().value, drawn().standardUncertainty],
  shortest: () => drawn().shortestInterval,
};
