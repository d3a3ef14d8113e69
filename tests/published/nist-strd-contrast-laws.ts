import { contrastLaws } from "../../lib/development/contrast/contrast-laws.ts";
import { type NonlinearFit, nonlinearFit } from "../../lib/development/fitting/nonlinear-fit.ts";
import type { ContrastLaw } from "../../lib/development/index.ts";
import type { CheckValue, Computed } from "./run.ts";

interface Inputs {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly law: ContrastLaw;
  readonly start?: readonly number[];
}

// The path that every fit of contrast against time goes through.
const of =
  (part: (fit: NonlinearFit) => CheckValue) =>
  ({ x, y, law, start }: Inputs) => {
    const rows = x.map((timeMin, i) => ({ timeMin, contrastIndex: y[i] ?? Number.NaN }));
    const fitted = contrastLaws[law];
    return part(nonlinearFit(law, fitted, { x, y }, start ?? fitted.start(rows)));
  };

export const computed: Computed = {
  "parameters-start-1": of((fit) => fit.parameters),
  "parameters-start-2": of((fit) => fit.parameters),
  "parameters-own-start": of((fit) => fit.parameters),
  "standard-errors": of((fit) => fit.standardErrors),
  "residual-sd": of((fit) => fit.residualSd),
};
