import { ewmaLimitWidthFor, ewmaRunLength } from "wetside/control";
import type { Computed } from "./run.ts";

const shifts = [
  "0.0",
  "0.25",
  "0.5",
  "0.75",
  "1.0",
  "1.5",
  "2.0",
  "2.5",
  "3.0",
  "3.5",
  "4.0",
  "5.0",
];
const lambdas = ["1.0", "0.75", "0.5", "0.4", "0.3", "0.25", "0.2", "0.1", "0.05", "0.03"];

interface Inputs {
  readonly lambda: number;
  readonly limitWidth: number;
  readonly shift: number;
}

export const computed: Computed = Object.fromEntries([
  ...["0.5", "0.03"].flatMap((lambda) =>
    shifts.map((shift) => [
      `${lambda}-${shift}`,
      (inputs: Inputs) => ewmaRunLength(inputs, { shift: inputs.shift }).zeroState,
    ]),
  ),
  ...lambdas.map((lambda) => [
    `L-${lambda}`,
    (inputs: Inputs) => ewmaLimitWidthFor(inputs.lambda, 500),
  ]),
]);
