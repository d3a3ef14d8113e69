import { inverse, Matrix } from "ml-matrix";
import type { CourseShape } from "./fault-courses.ts";
import type { FaultCourse } from "./fault-table.ts";
import type { Signature } from "./pattern-signature.ts";
import { type SizeEvidence, sizeEvidence, whiten } from "./size-evidence.ts";

/** A window of strips made ready: weighted means for every course. */
export interface Window {
  /** Lower triangle of the noise covariance of one strip. */
  readonly noiseRoot: Matrix;
  readonly courses: readonly CourseMean[];
  readonly sizeScale: number;
}

/** The best estimate of a full-size deviation under one course. */
export interface CourseMean {
  readonly shape: CourseShape;
  /** gᵀK⁻¹y / gᵀK⁻¹g. */
  readonly mean: readonly number[];
  /** gᵀK⁻¹g: how many strips the estimate is worth. */
  readonly strips: number;
}

/** Evidence of a pattern under one course. */
export interface CourseEvidence extends SizeEvidence {
  readonly course: CourseMean;
}

/**
 * The best estimate of a full-size deviation for every course, by generalised least squares:
 * `gᵀK⁻¹y / gᵀK⁻¹g` with `K_ij = ρ^|i−j| + w`: strips remember the one before (ρ), and the mean of
 * an orderly process wanders (w), so that no number of strips is worth more than 1/w.
 */
export function courseMeans(
  deviations: readonly (readonly number[])[],
  shapes: readonly CourseShape[],
  { lagOne, wander }: { readonly lagOne: number; readonly wander: number },
): readonly CourseMean[] {
  const n = deviations.length;
  const K = Matrix.zeros(n, n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) K.set(i, j, lagOne ** Math.abs(i - j) + wander);
  }
  const precision = inverse(K);
  const Y = new Matrix(deviations.map((row) => [...row]));
  return shapes.map((shape) => {
    const turned = Matrix.rowVector([...shape.weights]).mmul(precision);
    const strips = turned.mmul(Matrix.columnVector([...shape.weights])).get(0, 0);
    return { shape, mean: turned.mmul(Y).div(strips).to1DArray(), strips };
  });
}

/** Evidence of a signature under every course of the kinds that are asked for. */
export function evidenceByCourse(
  window: Window,
  signature: Signature,
  kinds: ReadonlySet<string>,
): readonly CourseEvidence[] {
  const ready = whiten(signature, window.noiseRoot);
  const wanted = window.courses.filter(({ shape }) => kinds.has(shape.kind));
  return wanted.map((course) => {
    const turned = ready.into.mmul(Matrix.columnVector([...course.mean])).to1DArray();
    return { course, ...sizeEvidence(ready, turned, course.strips, window.sizeScale) };
  });
}

/** ln Σ exp, with weights; −∞ for no weight at all. */
export function logSum(
  terms: readonly { readonly log: number; readonly weight: number }[],
): number {
  const live = terms.filter(({ weight }) => weight > 0);
  const top = Math.max(...live.map(({ log }) => log));
  return (
    top + Math.log(live.reduce((sum, { log, weight }) => sum + weight * Math.exp(log - top), 0))
  );
}

/** Evidence of a fault: its pattern's evidence averaged over the ways it may come, with what the
 * logs say of each way. */
export function faultLogEvidence(
  byCourse: readonly CourseEvidence[],
  course: FaultCourse,
  logs: (course: CourseShape) => number = () => 0,
): { readonly logEvidence: number; readonly best: CourseEvidence | undefined } {
  const terms = byCourse.map((each) => ({
    log: each.logEvidence + logs(each.course.shape),
    weight: course[each.course.shape.kind] * each.course.shape.share,
  }));
  const weighed = terms.map(({ log, weight }) => (weight > 0 ? log + Math.log(weight) : -Infinity));
  const best = byCourse[weighed.indexOf(Math.max(...weighed))];
  return { logEvidence: logSum(terms), best };
}
