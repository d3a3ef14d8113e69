import { cusumRunLength, driftRunLength, ewmaRunLength } from "wetside/control";
import type { Computed } from "./run.ts";

interface Upper {
  readonly k: number;
  readonly h: number;
  readonly shift: readonly number[];
}

const upper = ({ k, h, shift }: Upper) =>
  shift.map((each) => {
    const design = { referenceValue: k, decisionInterval: h };
    return cusumRunLength(design, { sides: "upper", shift: each }).zeroState;
  });

export const computed: Computed = {
  "brook-evans": upper,
  "vance-first": upper,
  vance: upper,
  "sas-ewma": () => ewmaRunLength({ lambda: 0.25, limitWidth: 3 }, { shift: 1 }).zeroState,
  // Gan counts a first reading without drift. From a sum of 0 that reading leaves the chart at
  // rest in most cases, but not in all, so one step in control is put before the drift.
  gan: ({ drift }: { readonly drift: readonly number[] }) =>
    drift.map((each) =>
      driftRunLength({ chart: "cusum", referenceValue: 0.25, decisionInterval: 8 }, each, {
        readingsBefore: 1,
      }),
    ),
};
