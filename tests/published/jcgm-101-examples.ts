import {
  type InputQuantity,
  monteCarloUncertainty,
  numericalTolerance,
  propagateUncertainty,
  validatePropagation,
} from "wetside/uncertainty";

const TRIALS = 400_000;

const additive = (x: Readonly<Record<string, number>>) =>
  (x.X1 ?? 0) + (x.X2 ?? 0) + (x.X3 ?? 0) + (x.X4 ?? 0);

function four(kind: "normal" | "rectangular", deviations: readonly number[]): InputQuantity[] {
  return deviations.map((sd, i) => ({
    name: `X${i + 1}`,
    distribution:
      kind === "normal"
        ? { kind, mean: 0, standardUncertainty: sd }
        : { kind, mean: 0, halfWidth: sd * Math.sqrt(3) },
  }));
}

const cases = {
  normal: four("normal", [1, 1, 1, 1]),
  rectangular: four("rectangular", [1, 1, 1, 1]),
  dominant: four("rectangular", [1, 1, 1, 10]),
};

const drawn = (inputs: readonly InputQuantity[]) =>
  monteCarloUncertainty(additive, inputs, { seed: 11, trials: TRIALS });

const massInputs: readonly InputQuantity[] = [
  { name: "mRc", distribution: { kind: "normal", mean: 100_000, standardUncertainty: 0.05 } },
  { name: "dmRc", distribution: { kind: "normal", mean: 1.234, standardUncertainty: 0.02 } },
  { name: "rhoA", distribution: { kind: "rectangular", mean: 1.2, halfWidth: 0.1 } },
  { name: "rhoW", distribution: { kind: "rectangular", mean: 8000, halfWidth: 1000 } },
  { name: "rhoR", distribution: { kind: "rectangular", mean: 8000, halfWidth: 50 } },
];

const mass = ({
  mRc = 0,
  dmRc = 0,
  rhoA = 0,
  rhoW = 1,
  rhoR = 1,
}: Readonly<Record<string, number>>) =>
  (mRc + dmRc) * (1 + (rhoA - 1.2) * (1 / rhoW - 1 / rhoR)) - 100_000;

const massBudget = (order: 1 | 2) => {
  const budget = propagateUncertainty(mass, massInputs, { order });
  return [budget.value, budget.combinedStandardUncertainty, ...budget.interval];
};

const massDrawn = () => monteCarloUncertainty(mass, massInputs, { seed: 5, trials: TRIALS });

export const computed = {
  "normal-u": () => drawn(cases.normal).standardUncertainty,
  "normal-interval": () => drawn(cases.normal).symmetricInterval,
  "rectangular-u": () => drawn(cases.rectangular).standardUncertainty,
  "rectangular-interval": () => drawn(cases.rectangular).symmetricInterval,
  "rectangular-guf": () => propagateUncertainty(additive, cases.rectangular).interval,
  "dominant-u": () => drawn(cases.dominant).standardUncertainty,
  "dominant-interval": () => drawn(cases.dominant).symmetricInterval,
  "dominant-guf": () => propagateUncertainty(additive, cases.dominant).interval,
  "dominant-validated": () => {
    const budget = propagateUncertainty(additive, cases.dominant);
    return validatePropagation(budget, drawn(cases.dominant), 2).validated ? "yes" : "no";
  },
  "mass-guf1": () => massBudget(1),
  "mass-guf2": () => massBudget(2),
  "mass-monte-carlo": () => [massDrawn().value, massDrawn().standardUncertainty],
  "mass-shortest": () => massDrawn().shortestInterval,
  "mass-symmetric": () => massDrawn().symmetricInterval,
  tolerances: () => [
    numericalTolerance(0.00035, 2),
    numericalTolerance(0.0004, 1),
    numericalTolerance(2, 1),
  ],
};
