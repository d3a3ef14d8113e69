import { LuDecomposition, Matrix } from "ml-matrix";
import { describe, expect, it } from "vitest";
import {
  cusumRunLength,
  driftRunLength,
  ewmaRunLength,
  nelsonZoneRules,
  westernElectricZoneRules,
  zoneRulesRunLength,
} from "wetside/control";
import { gaussLegendre, normalCdf, seededRandom } from "wetside/numerics";
import { carrier } from "../../../lib/control/run-length/carried-forward.ts";
import {
  normalDensity,
  rowFrom,
  stepMatrix,
} from "../../../lib/control/run-length/chart-kernel.ts";
import { upperCusumKernel } from "../../../lib/control/run-length/cusum-kernel.ts";
import { twoSidedEwmaKernel } from "../../../lib/control/run-length/ewma-kernel.ts";
import { sumOf, vectorTimes } from "../../../lib/control/run-length/flat-vectors.ts";
import { luFactors } from "../../../lib/control/run-length/lu.ts";
import { normalDerivatives } from "../../../lib/control/run-length/normal-derivatives.ts";
import { costInMatrixProducts } from "../../processor-time.ts";

// Two ways to the same number; both carry some eleven digits.
const SAME = 1e-10;

function farthest(a: ArrayLike<number>, b: ArrayLike<number>): number {
  return Array.from(a, (x, i) => Math.abs(x - (b[i] ?? Number.NaN))).reduce((m, x) =>
    Math.max(m, x),
  );
}

describe("luFactors", () => {
  it("solves with a matrix that needs pivoting, and with its transpose, as ml-matrix does", () => {
    const { normal } = seededRandom(3);
    const size = 12;
    const rows = Array.from({ length: size }, (_, i) =>
      Array.from({ length: size }, (_, j) => (i === j ? 0 : normal())),
    );
    const b = Array.from({ length: size }, normal);
    const own = luFactors(Float64Array.from(rows.flat()), size);
    const column = Matrix.columnVector(b);
    const expected = new LuDecomposition(new Matrix(rows)).solve(column).to1DArray();
    const transposed = new LuDecomposition(new Matrix(rows).transpose()).solve(column).to1DArray();
    expect(farthest(own.solve(b), expected)).toBeLessThan(SAME);
    expect(farthest(own.solveTransposed(b), transposed)).toBeLessThan(SAME);
  });
  it("says when a matrix is singular", () => {
    expect(luFactors(Float64Array.of(1, 2, 2, 4), 2).singular).toBe(true);
    expect(luFactors(Float64Array.of(0, 1, 1, 0), 2).singular).toBe(false);
  });
});

describe("normalDerivatives", () => {
  it("gives φ, −xφ, (x² − 1)φ and (3x − x³)φ", () => {
    const x = 1.7;
    const table = normalDerivatives([0.2, x], 4);
    const factors = [1, -x, x * x - 1, 3 * x - x ** 3];
    const atX = table.filter((_, i) => i % 2 === 1);
    expect(
      farthest(
        atX,
        factors.map((factor) => factor * normalDensity(x)),
      ),
    ).toBeLessThan(1e-14);
  });
});

describe("a chart carried forward under a moving mean", () => {
  it("is the same as with every step computed anew, also where the mean runs far away", () => {
    for (const kernel of [upperCusumKernel(0.5, 5), twoSidedEwmaKernel(0.05, 0.42)]) {
      for (const drift of [0.02, 0.7, -0.3, 9]) {
        const carry = carrier(kernel);
        let expected = rowFrom(kernel, 0, drift);
        carry(drift);
        for (let t = 2; t < 12; t++) {
          expected = vectorTimes(expected, stepMatrix(kernel, t * drift));
          expect(Math.abs(sumOf(carry(t * drift)) - sumOf(expected))).toBeLessThan(SAME);
        }
      }
    }
  });
});

/** The widening limits without any shortcut: 90 nodes for every reading, forwards. */
function exactLimitsAtLength(lambda: number, limitWidth: number, shift: number, start: number) {
  const rule = gaussLegendre(90);
  const half = (limitWidth * Math.sqrt(lambda / (2 - lambda))) / lambda;
  let places = [start * half];
  let mass = [1];
  let readings = 1;
  for (let t = 1; t < 4000; t++) {
    const reach = half * Math.sqrt(1 - (1 - lambda) ** (2 * t));
    const next = rule.nodes.map((x) => reach * x);
    const later = next.map((to, j) => {
      const weight = reach * (rule.weights[j] ?? 0);
      return mass.reduce(
        (sum, m, i) =>
          sum + m * weight * normalDensity(to - (1 - lambda) * (places[i] ?? 0) - shift),
        0,
      );
    });
    const left = later.reduce((sum, each) => sum + each, 0);
    readings += left;
    if (left < 1e-12) return readings;
    [places, mass] = [next, later];
  }
  throw new Error("too long for this check");
}

describe("limits that widen from the first reading", () => {
  it("agree with a forward recursion that takes no shortcut", () => {
    const cases = [
      [0.1, 2.7, 1, 0],
      [0.05, 2.2, -0.7, 0.5],
      [0.4, 3.2, 1.5, -0.5],
      [0.03, 2, 2, 0],
      [0.8, 2, 0, 0.2],
    ] as const;
    for (const [lambda, limitWidth, shift, headStart] of cases) {
      const options = { shift, headStart, limits: "exact" } as const;
      const computed = ewmaRunLength({ lambda, limitWidth }, options).zeroState;
      const expected = exactLimitsAtLength(lambda, limitWidth, shift, headStart);
      expect(Math.abs(computed / expected - 1)).toBeLessThan(SAME);
    }
  });
  it("are those of the individuals chart where λ is 1", () => {
    const { zeroState } = ewmaRunLength({ lambda: 1, limitWidth: 3 }, { limits: "exact" });
    expect(zeroState).toBeCloseTo(1 / (2 * normalCdf(-3)), 7);
  });
});

describe("speed", () => {
  // Measured: 0.1 to 2.3 matrix products. The bound shows only a real loss: with general matrices and
  // no reuse of steps these cost up to sixty.
  const BOUND = 8;
  const work: readonly [string, () => unknown][] = [
    ["CUSUM", () => cusumRunLength({ referenceValue: 0.5, decisionInterval: 5 }, { shift: 1 })],
    ["EWMA", () => ewmaRunLength({ lambda: 0.1, limitWidth: 2.7 }, { shift: 1 })],
    [
      "EWMA with widening limits",
      () => ewmaRunLength({ lambda: 0.1, limitWidth: 2.7 }, { limits: "exact" }),
    ],
    ["four zone rules", () => zoneRulesRunLength(westernElectricZoneRules, { shift: 1 })],
    ["six zone rules", () => zoneRulesRunLength(nelsonZoneRules, { shift: 1 })],
    ["drift", () => driftRunLength({ chart: "ewma", lambda: 0.1, limitWidth: 2.7 }, 0.02)],
  ];
  it.each(work)("a run length of the %s costs few matrix products", (_, compute) => {
    expect(costInMatrixProducts(compute)).toBeLessThan(BOUND);
  });
});
