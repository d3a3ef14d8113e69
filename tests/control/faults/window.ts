import type { FaultEvidence } from "wetside/control";

const colours = ["red", "green", "blue"] as const;
const limits: Readonly<Record<string, readonly [name: string, limit: number]>> = {
  dMin: ["D-min", 0.03],
  ld: ["LD (speed)", 0.06],
  hdLessLd: ["HD − LD (contrast)", 0.07],
};

/** The components of a colour-negative strip, without the retained-silver patch unless asked. */
export const components = Object.entries(limits).flatMap(([parameter, [name, limit]]) =>
  colours.map((colour) => ({ parameter, name, colour, limit })),
);

/** A window of strips written by hand; noise of `sd` in every reading, correlated `r`. */
export function window(
  deviations: readonly (readonly number[])[],
  change: Partial<FaultEvidence> = {},
  { sd = 0.008, r = 0.3 } = {},
): FaultEvidence {
  const used = change.components ?? components;
  return {
    process: "colour-negative",
    components: used,
    takenAt: deviations.map((_, i) => `2026-08-${String(i + 1).padStart(2, "0")}T07:10`),
    deviations,
    noise: used.map((_, i) => used.map((_, j) => sd * sd * (i === j ? 1 : r))),
    lagOne: 0,
    wander: 0.1,
    assumptions: [],
    warnings: [],
    ...change,
  };
}

/** One strip's deviations: a density for D-min, LD and HD − LD, the same in all colours. */
export function strip(dMin: number, ld: number, contrast: number): readonly number[] {
  return [dMin, dMin, dMin, ld, ld, ld, contrast, contrast, contrast];
}
