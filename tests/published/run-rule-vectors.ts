import { type RunRuleOptions, runRules, statisticalLimits } from "wetside/control";
import type { Computed } from "./run.ts";

interface Sequence {
  readonly values: readonly number[];
  readonly centre: number;
  readonly sigma: number;
}

const variants: readonly (readonly [string, RunRuleOptions])[] = [
  ["Nelson 1", { rules: ["nelson-1"] }],
  ["Western Electric 4", { rules: ["western-electric-4"] }],
  ["Nelson 2", { rules: ["nelson-2"] }],
  ["7 on one side", { rules: ["nelson-2"], oneSideLength: 7 }],
  ["Nelson 3", { rules: ["nelson-3"] }],
  ["7 rising or falling", { rules: ["nelson-3"], trendLength: 7 }],
  ["Nelson 4", { rules: ["nelson-4"] }],
  ["Nelson 5 / Western Electric 2", { rules: ["nelson-5"] }],
  ["2 of 3, every window", { rules: ["western-electric-2"], zoneSignals: "every window" }],
  ["Nelson 6 / Western Electric 3", { rules: ["western-electric-3"] }],
  ["4 of 5, every window", { rules: ["nelson-6"], zoneSignals: "every window" }],
  ["Nelson 7", { rules: ["nelson-7"] }],
  ["Nelson 8, any side", { rules: ["nelson-8"], outsideSides: "any" }],
  ["Nelson 8, both sides", { rules: ["nelson-8"] }],
];

const signals = ({ values, centre, sigma }: Sequence) => {
  const told = variants.flatMap(([label, options]) => {
    const at = runRules(values, { centre, sigma }, options).map((signal) => signal.at + 1);
    return at.length === 0 ? [] : [`${label}: ${at.join(" ")}`];
  });
  return told.length === 0 ? "no signal" : told.join("; ");
};

export const computed: Computed = {
  "r1-strict": signals,
  "r2-zero-breaks": signals,
  "r3-six-up": signals,
  "r3-six-down": signals,
  "r4-alternating": signals,
  "r5-2of3-upper": signals,
  "r5-opposite-sides": signals,
  "r6-4of5-lower": signals,
  "r6-3of5": signals,
  "r8-eight-outside-both": signals,
  "r8-eight-outside-one-side": signals,
  "start-boundary-4of5": signals,
  "sas-engines": signals,
  "engines-limits": ({ values }: Sequence) => {
    const { centre, upperLimit, lowerLimit } = statisticalLimits(values);
    return [centre, upperLimit, lowerLimit];
  },
};
