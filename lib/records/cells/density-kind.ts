import type { NumberKind } from "./number-fault.ts";

/** Highest density a transmission densitometer is expected to show. */
const HIGHEST = 4.5;

/** A density as read. */
export const DENSITY: NumberKind = { what: "density", min: 0, max: HIGHEST, hint: pointLeftOut };

/** A correction printed for a batch of strips: small, of either sign. */
export const CORRECTION: NumberKind = { what: "batch correction", min: -0.5, max: 0.5 };

function pointLeftOut(value: number): string | undefined {
  if (!Number.isInteger(value) || value < 0) return undefined;
  const meant = [value / 10, value / 100].filter((each) => each <= HIGHEST);
  return meant.length === 0 ? undefined : `is it ${meant.join(" or ")} without its point?`;
}
