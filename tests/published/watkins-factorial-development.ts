import { factorialDevelopment } from "wetside/development";
import type { Computed } from "./run.ts";

interface Inputs {
  readonly factor: number;
  readonly appearanceS: number;
}

const total = (inputs: Inputs) => factorialDevelopment(inputs).totalS;

export const computed: Computed = {
  "factor-15": total,
  "factor-7": total,
  "factor-5": total,
  "factor-10": total,
};
