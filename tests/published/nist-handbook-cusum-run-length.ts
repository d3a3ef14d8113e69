import { cusumRunLength } from "wetside/control";
import type { Computed } from "./run.ts";

const upper = ({ h, shift }: { readonly h: number; readonly shift: number }) =>
  cusumRunLength({ referenceValue: 0.5, decisionInterval: h }, { sides: "upper", shift }).zeroState;

export const computed: Computed = { "h4-0": upper, "h4-1": upper, "h5-0": upper, "h5-1": upper };
