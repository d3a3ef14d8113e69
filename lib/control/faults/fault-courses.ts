import type { FaultCourse } from "./fault-table.ts";

/** How a fault's size runs over the strips of the window, 0 to 1, and how likely that is. */
export interface CourseShape {
  readonly kind: keyof FaultCourse;
  /** Position of the first strip it touches. */
  readonly from: number;
  readonly weights: readonly number[];
  /** Share of its kind. */
  readonly share: number;
}

/**
 * The courses a fault may take over n strips. A step stands from some strip to the last; a gradual
 * fault grows evenly from some strip to the last; a single-strip fault touches one strip. Every start
 * is equally likely.
 */
export function courseShapes(n: number): readonly CourseShape[] {
  const shapes: CourseShape[] = [];
  for (let from = 0; from < n; from++) {
    const over = (weight: (i: number) => number) => Array.from({ length: n }, (_, i) => weight(i));
    shapes.push({ kind: "step", from, weights: over((i) => (i < from ? 0 : 1)), share: 1 / n });
    shapes.push({
      kind: "gradual",
      from,
      weights: over((i) => (i < from ? 0 : (i - from + 1) / (n - from))),
      share: 1 / n,
    });
    shapes.push({
      kind: "singleStrip",
      from,
      weights: over((i) => (i === from ? 1 : 0)),
      share: 1 / n,
    });
  }
  return shapes;
}
