import { fillAndDumpFraction, formatAreaM2, washByChanges } from "wetside";
import type { Computed } from "./run.ts";

const fraction = (each: { keptMl: number; waterMl: number; changes: number }) =>
  fillAndDumpFraction(each.keptMl, each.waterMl, each.changes);

export const computed: Computed = {
  "one-change": fraction,
  "two-changes": fraction,
  "three-changes": fraction,
  "carry-over": ({ ml, format }) => ml / formatAreaM2(format),
  "long-changes": ({ carriedMl, tankKeepsMl, waterMl }) => {
    const areaM2 = formatAreaM2("135-36");
    const carriedMlPerM2 = carriedMl / areaM2;
    const wash = { areaM2, waterMl, carriedMlPerM2, tankKeepsMl };
    const [before = Number.NaN, , after = Number.NaN] = washByChanges(
      wash,
      [100, 100],
    ).residualGPerM2;
    return after / before;
  },
};
