import { describe, expect, it } from "vitest";
import { gaussLegendre, integrate } from "../../lib/numerics/index.ts";

describe("integrate", () => {
  it("is within its own error bound for smooth, kinked and peaked functions", () => {
    const cases: readonly [(x: number) => number, number, number, number][] = [
      [(x) => Math.exp(x), 0, 1, Math.E - 1],
      [(x) => Math.abs(x - 0.3), 0, 1, (0.3 ** 2 + 0.7 ** 2) / 2],
      [(x) => 1 / (1e-4 + x * x), -1, 1, 200 * Math.atan(100)],
      [(x) => Math.sqrt(x), 0, 1, 2 / 3],
    ];
    for (const [f, a, b, exact] of cases) {
      const { value, errorBound } = integrate(f, a, b);
      expect(Math.abs(value - exact)).toBeLessThanOrEqual(errorBound);
      expect(Math.abs(value / exact - 1)).toBeLessThan(1e-9);
    }
  });
  it("is zero over no interval and changes sign with the ends", () => {
    expect(integrate(Math.cos, 2, 2).value).toBe(0);
    expect(integrate(Math.cos, 1, 0).value).toBeCloseTo(-Math.sin(1), 14);
  });
  it("refuses a pole instead of returning a large number", () => {
    expect(() => integrate((x) => 1 / x, -1, 1)).toThrow("integrate");
  });
});

describe("gaussLegendre", () => {
  it("integrates polynomials up to degree 2n − 1 exactly", () => {
    for (const n of [1, 2, 5, 16, 64]) {
      const { nodes, weights } = gaussLegendre(n);
      for (let k = 0; k < 2 * n; k++) {
        const sum = nodes.reduce((s, x, i) => s + (weights[i] ?? 0) * x ** k, 0);
        expect(sum).toBeCloseTo(k % 2 ? 0 : 2 / (k + 1), 13);
      }
    }
  });
  it("gives nodes in ascending order, symmetric about 0", () => {
    const { nodes } = gaussLegendre(21);
    expect(nodes).toEqual([...nodes].sort((a, b) => a - b));
    expect(nodes[10]).toBe(0);
    nodes.forEach((x, i) => {
      expect(x + (nodes[20 - i] ?? Number.NaN)).toBe(0);
    });
  });
});

describe("integrate at the door", () => {
  it("refuses a tolerance that is no number, and a result too large for one", () => {
    const f = (x: number) => x;
    expect(() => integrate(f, 0, 1, { relativeTolerance: Number.NaN })).toThrow(
      "relativeTolerance",
    );
    expect(() => integrate(f, 0, 1, { absoluteTolerance: -1 })).toThrow("absoluteTolerance");
    expect(() => integrate(() => 1e308, 0, 1e10)).toThrow("the integral from 0 to 10000000000");
    expect(() => integrate(null as never, 0, 1)).toThrow("a function of x");
  });
});
