import { type DriftChart, driftRunLength } from "wetside/control";
import type { Computed } from "./run.ts";

function under(chart: DriftChart) {
  return ({ drift }: { readonly drift: readonly number[] }) =>
    drift.map((each) => driftRunLength(chart, each));
}

export const computed: Computed = {
  shewhart3: under({ chart: "individuals", limitWidth: 3 }),
  "ewma_l0.1_L2.7": under({ chart: "ewma", lambda: 0.1, limitWidth: 2.7 }),
  "ewma_l0.2_L3": under({ chart: "ewma", lambda: 0.2, limitWidth: 3 }),
  "cusum1_k.5_h5": under({ chart: "cusum", referenceValue: 0.5, decisionInterval: 5 }),
  "cusum1_k.25_h8": under({ chart: "cusum", referenceValue: 0.25, decisionInterval: 8 }),
};
