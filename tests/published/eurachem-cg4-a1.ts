import { type Distribution, propagateUncertainty, standardUncertainty } from "wetside/uncertainty";

const volumeParts: readonly Distribution[] = [
  { kind: "triangular", mean: 0, halfWidth: 0.1 },
  { kind: "normal", mean: 0, standardUncertainty: 0.02 },
  { kind: "rectangular", mean: 0, halfWidth: 100 * 4 * 2.1e-4 },
];
const volume: Distribution = { kind: "sum", mean: 100, parts: volumeParts };
const purity: Distribution = { kind: "rectangular", mean: 0.9999, halfWidth: 0.0001 };
const mass: Distribution = { kind: "normal", mean: 100.28, standardUncertainty: 0.05 };

const model = ({ P = 0, m = 0, V = 0 }: Readonly<Record<string, number>>) => (1000 * m * P) / V;

const budget = propagateUncertainty(
  model,
  [
    { name: "P", distribution: purity },
    { name: "m", unit: "mg", distribution: mass },
    { name: "V", unit: "mL", distribution: volume },
  ],
  { coverageFactor: 2 },
);

// As the guide does it: from the relative uncertainties as printed in table A1.1.
const rounded = 1002.7 * Math.hypot(0.000058, 0.0005, 0.0007);

export const computed = {
  concentration: () => budget.value,
  combined: () => budget.combinedStandardUncertainty,
  "combined-rounded-parts": () => rounded,
  expanded: () => 2 * Number(rounded.toPrecision(1)),
  "u-volume": () => standardUncertainty(volume),
  "u-volume-full": () => standardUncertainty(volume),
  "u-purity": () => standardUncertainty(purity),
  "volume-parts": () => volumeParts.map((part) => standardUncertainty(part)),
  relative: () => budget.rows.map((row) => row.standardUncertainty / row.value),
  contributions: () => budget.rows.map((row) => Math.abs(row.contribution)),
};
