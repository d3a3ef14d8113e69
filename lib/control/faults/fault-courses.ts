import type { FaultCourse } from "./fault-table.ts";

/** How a fault's size runs over the strips of the window, 0 to 1, and how likely that is. */
export interface CourseShape {
  readonly kind: keyof FaultCourse;
  /** Position of the first strip of the window it touches. */
  readonly from: number;
  readonly weights: readonly number[];
  /** Share of its kind. */
  readonly share: number;
}

/**
 * The courses a fault may take over n strips. A step stands from some strip to the last; a gradual
 * fault grows evenly from some strip, or from before the window, to the last; a single-strip fault
 * touches one strip. Every start is equally likely.
 */
export function courseShapes(n: number): readonly CourseShape[] {
  const over = (weight: (i: number) => number) => Array.from({ length: n }, (_, i) => weight(i));
  const inside = Array.from({ length: n }, (_, from) => from);
  // Growth that began before the window shows as a rise on top of a level.
  const before = n > 2 ? [-2 * n, -n, -Math.ceil(n / 2)] : [];
  const grows = [...before, ...inside];
  return [
    ...inside.map((from) => ({
      kind: "step" as const,
      from,
      weights: over((i) => (i < from ? 0 : 1)),
      share: 1 / n,
    })),
    ...grows.map((from) => ({
      kind: "gradual" as const,
      from: Math.max(0, from),
      weights: over((i) => (i < from ? 0 : (i - from + 1) / (n - from))),
      share: 1 / grows.length,
    })),
    ...inside.map((from) => ({
      kind: "singleStrip" as const,
      from,
      weights: over((i) => (i === from ? 1 : 0)),
      share: 1 / n,
    })),
  ];
}
