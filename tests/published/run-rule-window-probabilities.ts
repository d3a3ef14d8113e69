import { type RunRuleId, type RunRuleOptions, runRuleFalseAlarms } from "wetside/control";
import type { Computed } from "./run.ts";

type Variant = Omit<RunRuleOptions, "rules"> & { readonly rule: RunRuleId };

const probability = ({ rule, ...options }: Variant) =>
  runRuleFalseAlarms({ ...options, rules: [rule] }).rules[0]?.windowProbability ?? Number.NaN;

export const computed: Computed = {
  "rule-1": probability,
  "nine-on-one-side": probability,
  "eight-on-one-side": probability,
  "seven-on-one-side": probability,
  "six-monotone": probability,
  "seven-monotone": probability,
  "fourteen-alternating": probability,
  "two-of-three": probability,
  "four-of-five": probability,
  "fifteen-inside": probability,
  "eight-outside-any": probability,
  "eight-outside-both": probability,
};
