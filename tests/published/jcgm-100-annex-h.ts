import {
  correlationOfReadings,
  coverageFactor,
  type Distribution,
  effectiveDegreesOfFreedom,
  type InputQuantity,
  propagateUncertainty,
  typeAEvaluation,
} from "wetside/uncertainty";

// H.1, lengths in nm. Parts of d: repetition; the comparator's certificate states 10 nm at 95 % with
// 5 degrees of freedom for random effects and 20 nm "at the three sigma level" for systematic ones.
const difference: Distribution = {
  kind: "sum",
  mean: 215,
  parts: [
    { kind: "t", mean: 0, standardUncertainty: 5.8, degreesOfFreedom: 24 },
    { kind: "t", mean: 0, standardUncertainty: 10 / coverageFactor(0.95, 5), degreesOfFreedom: 5 },
    { kind: "t", mean: 0, standardUncertainty: 20 / 3, degreesOfFreedom: 8 },
  ],
};
const gaugeInputs: readonly InputQuantity[] = [
  {
    name: "ls",
    distribution: { kind: "t", mean: 50_000_623, standardUncertainty: 25, degreesOfFreedom: 18 },
  },
  { name: "d", distribution: difference },
  {
    name: "deltaAlpha",
    distribution: { kind: "rectangular", mean: 0, halfWidth: 1e-6 },
    degreesOfFreedom: 50,
  },
  {
    name: "deltaTheta",
    distribution: { kind: "rectangular", mean: 0, halfWidth: 0.05 },
    degreesOfFreedom: 2,
  },
  { name: "alphaS", distribution: { kind: "rectangular", mean: 11.5e-6, halfWidth: 2e-6 } },
  {
    name: "theta",
    distribution: {
      kind: "sum",
      mean: -0.1,
      parts: [
        { kind: "arcsine", mean: 0, halfWidth: 0.5 },
        { kind: "normal", mean: 0, standardUncertainty: 0.2 },
      ],
    },
  },
];
const gauge = propagateUncertainty(
  ({ ls = 0, d = 0, deltaAlpha = 0, deltaTheta = 0, alphaS = 0, theta = 0 }) =>
    ls + d - ls * (deltaAlpha * theta + alphaS * deltaTheta),
  gaugeInputs,
  { coverageProbability: 0.99 },
);
const row = (name: string) => gauge.rows.find((each) => each.name === name);

type Readings = { readonly V: number[]; readonly I: number[]; readonly phi: number[] };

const models = [
  ({ V = 0, I = 1, phi = 0 }: Readonly<Record<string, number>>) => (V / I) * Math.cos(phi),
  ({ V = 0, I = 1, phi = 0 }: Readonly<Record<string, number>>) => (V / I) * Math.sin(phi),
  ({ V = 0, I = 1 }: Readonly<Record<string, number>>) => V / I,
];

function impedance(readings: Readings) {
  const inputs = (["V", "I", "phi"] as const).map((name): InputQuantity => {
    const { mean, standardUncertainty } = typeAEvaluation(readings[name]);
    return { name, distribution: { kind: "normal", mean, standardUncertainty } };
  });
  const tie = (a: keyof Readings, b: keyof Readings) => ({
    between: [a, b] as const,
    coefficient: correlationOfReadings(readings[a], readings[b]),
  });
  const correlations = [tie("V", "I"), tie("V", "phi"), tie("I", "phi")];
  return models.map((model) => propagateUncertainty(model, inputs, { correlations }));
}

export const computed = {
  "h1-length": () => gauge.value,
  "h1-u-d": () => [row("d")?.standardUncertainty ?? Number.NaN, Number(row("d")?.degreesOfFreedom)],
  "h1-u": () => gauge.combinedStandardUncertainty,
  "h1-contributions": () =>
    ["ls", "d", "deltaAlpha", "deltaTheta"].map((name) =>
      Math.abs(row(name)?.contribution ?? Number.NaN),
    ),
  "h1-degrees": () => Math.floor(Number(gauge.effectiveDegreesOfFreedom)),
  "h1-k": () => coverageFactor(0.99, 16),
  "h1-expanded": () =>
    Number(coverageFactor(0.99, 16).toFixed(2)) * Math.round(gauge.combinedStandardUncertainty),
  "h2-means": (readings: Readings) => impedance(readings).map(({ value }) => value),
  "h2-u": (readings: Readings) =>
    impedance(readings).map((budget) => budget.combinedStandardUncertainty),
  "h2-correlations": ({ V, I, phi }: Readings) => [
    correlationOfReadings(V, I),
    correlationOfReadings(V, phi),
    correlationOfReadings(I, phi),
  ],
  "t-table": () => [
    ...[1, 5, 10, 20].map((degrees) => coverageFactor(0.95, degrees)),
    coverageFactor(0.95, "infinite"),
  ],
  "welch-satterthwaite": () =>
    Number(
      effectiveDegreesOfFreedom([
        { contribution: 0.57, degreesOfFreedom: 9 },
        { contribution: 0.25, degreesOfFreedom: "infinite" },
      ]),
    ),
};
