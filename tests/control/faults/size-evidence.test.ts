import { Matrix } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { normalCdf, seededRandom } from "wetside/numerics";
import { sizeEvidence, whiten } from "../../../lib/control/faults/size-evidence.ts";

// Without scatter the integral over sizes has a closed form: with A = N·s·s + 1/τ² and B = N·s·y,
// ∫ a/τ² exp(−A a²/2 + B a) da = [1/A + (B/A)·√(2π/A)·exp(B²/2A)·Φ(B/√A)]/τ².
function closedForm(s: readonly number[], y: readonly number[], strips: number, tau: number) {
  const dot = (a: readonly number[], b: readonly number[]) =>
    a.reduce((sum, v, i) => sum + v * (b[i] ?? 0), 0);
  const A = strips * dot(s, s) + 1 / tau ** 2;
  const B = strips * dot(s, y);
  const log = (B * B) / (2 * A);
  const inner =
    Math.exp(-log) / A + (B / A) * Math.sqrt((2 * Math.PI) / A) * normalCdf(B / Math.sqrt(A));
  return log + Math.log(inner) - 2 * Math.log(tau);
}

const QUADRATURE = 1e-6; // 14 Gauss–Legendre nodes on each of ten pieces around the peak

describe("the evidence of a size", () => {
  it("agrees with the closed form where the signature has no scatter", () => {
    const { normal, integer } = seededRandom(5);
    for (let k = 0; k < 200; k++) {
      const p = integer(1, 10);
      const s = Array.from({ length: p }, () => 3 * normal());
      const y = s.map((v) => 2 * normal() + integer(-1, 2) * v);
      const strips = integer(1, 20);
      const ready = whiten({ mean: s, covariance: Matrix.zeros(p, p) }, Matrix.eye(p));
      const turned = ready.into.mmul(Matrix.columnVector(y)).to1DArray();
      const { logEvidence } = sizeEvidence(ready, turned, strips, 1.5);
      expect(Math.abs(logEvidence - closedForm(s, y, strips, 1.5))).toBeLessThan(QUADRATURE);
    }
  });

  it("finds the size of a clean pattern with its uncertainty", () => {
    const s = [10, 20, 5];
    const ready = whiten({ mean: s, covariance: Matrix.zeros(3, 3) }, Matrix.eye(3));
    const turned = ready.into.mmul(Matrix.columnVector(s.map((v) => 2 * v))).to1DArray();
    const { size, sizeSd } = sizeEvidence(ready, turned, 4, 1.5);
    expect(size).toBeCloseTo(2, 2);
    expect(sizeSd).toBeCloseTo(1 / Math.sqrt(4 * 525), 4);
  });

  it("stays finite for deviations thousands of times the noise", () => {
    const ready = whiten({ mean: [1, -1], covariance: Matrix.eye(2) }, Matrix.eye(2).mul(1e-3));
    for (const y of [0, 1e-9, 6]) {
      const turned = ready.into.mmul(Matrix.columnVector([y, y])).to1DArray();
      const result = sizeEvidence(ready, turned, 60, 1.5);
      expect(Object.values(result).every(Number.isFinite)).toBe(true);
    }
  });
});
