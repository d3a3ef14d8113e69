import {
  alternatingRunLength,
  individualsMovingRangeRunLength,
  risingRunLength,
  type ZoneRule,
  zoneRulesRunLength,
} from "wetside/control";
import type { Computed } from "./run.ts";

interface ZoneInputs {
  readonly rules: readonly ZoneRule[];
  readonly shift: readonly number[];
}

const zones = ({ rules, shift }: ZoneInputs) =>
  shift.map((each) => zoneRulesRunLength(rules, { shift: each }).zeroState);

export const computed: Computed = {
  ...Object.fromEntries(Array.from({ length: 16 }, (_, i) => [`set-${i + 1}`, zones])),
  ...Object.fromEntries(
    [5, 6, 7, 8].map((points) => [`monotone-${points}`, () => risingRunLength(points)]),
  ),
  ...Object.fromEntries(
    [12, 14].map((points) => [`alternating-${points}`, () => alternatingRunLength(points)]),
  ),
  "individuals-and-range": () => individualsMovingRangeRunLength(),
  "individuals-and-range-shift": ({ shift }: { readonly shift: readonly number[] }) =>
    shift.map((each) => individualsMovingRangeRunLength({ rangeLimit: 3.686 }, { shift: each })),
};
