import { counterCurrentRatio } from "wetside/replenishment";
import type { Computed } from "./run.ts";

const oneToFour = ({ dilution }: { readonly dilution: number }) =>
  [1, 2, 3, 4].map((stages) => counterCurrentRatio({ dilution, stages }));

export const computed: Computed = {
  "dilution-100": oneToFour,
  "dilution-1000": oneToFour,
  "dilution-10000": oneToFour,
  "printed-approximation": counterCurrentRatio,
};
