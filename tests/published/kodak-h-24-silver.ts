import { silverByTitration } from "wetside/replenishment";
import type { Computed } from "./run.ts";

export const computed: Computed = {
  titre: (inputs) => silverByTitration(inputs).silverGPerL,
  factor: (inputs) => silverByTitration(inputs).mgPerMl,
};
