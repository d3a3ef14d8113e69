import { describe, expect, it } from "vitest";
import {
  ar1Innovations,
  autocorrelation,
  correlatedLimits,
  ewmaChart,
  fitAr1,
  individualsChart,
  statisticalLimits,
} from "wetside/control";
import { seededRandom } from "wetside/numerics";

/** Readings of an AR(1) process of unit innovations, started in its steady state. */
function ar1(n: number, phi: number, seed: number): readonly number[] {
  const { normal } = seededRandom(seed);
  let x = normal() / Math.sqrt(1 - phi * phi);
  return Array.from({ length: n }, () => {
    const now = x;
    x = phi * x + normal();
    return now;
  });
}

const CHANCE = 0.02; // 3 standard errors of a share near 0.05 in 1,000 series
const MONTE_CARLO = 0.03; // some 3 standard errors of a standard deviation of 20,000 readings with φ 0.6

describe("autocorrelation", () => {
  it("warns falsely about as often as its level says", () => {
    let byTest = 0;
    for (let seed = 1; seed <= 1000; seed++) {
      const { ljungBox } = autocorrelation(ar1(100, 0, seed), { lags: 5 });
      if (ljungBox.probability < 0.05) byTest++;
    }
    expect(Math.abs(byTest / 1000 - 0.05)).toBeLessThan(CHANCE);
  });
  it("holds the true correlation in its interval about as often as it says", () => {
    let held = 0;
    for (let seed = 1; seed <= 1000; seed++) {
      const [first] = autocorrelation(ar1(200, 0.4, seed), { lags: 1 }).lags;
      if (first && first.lower <= 0.4 && 0.4 <= first.upper) held++;
    }
    // Approximate: short series pull r towards 0.
    expect(held / 1000).toBeGreaterThan(0.92);
  });
  it("says what correlation of either sign does to false signals", () => {
    expect(autocorrelation(ar1(200, 0.7, 1)).sentence).toContain("signal falsely more often");
    expect(autocorrelation(ar1(200, -0.7, 1)).sentence).toContain("signal less often");
    expect(autocorrelation(ar1(200, 0, 4)).correlated).toBe(false);
  });
  it("does not depend on unit or offset", () => {
    const x = ar1(60, 0.5, 2);
    const moved = autocorrelation(x.map((v) => 1000 + 0.01 * v));
    expect(moved.ljungBox.statistic).toBeCloseTo(autocorrelation(x).ljungBox.statistic, 8);
  });
  it("refuses equal readings, too few, too many lags, a missing number", () => {
    expect(() => autocorrelation(Array(20).fill(0.3))).toThrow(/all equal/);
    expect(() => autocorrelation([1, 2, 3])).toThrow(/at least 10 readings/);
    expect(() => autocorrelation(ar1(12, 0, 1), { lags: 9 })).toThrow(/a third of the readings/);
    expect(() => autocorrelation([...ar1(12, 0, 1), Number.NaN])).toThrow(/finite/);
  });
  it("warns of short series", () => {
    expect(autocorrelation(ar1(20, 0, 1)).warnings.join()).toContain("20 readings");
  });
});

describe("the AR(1) model", () => {
  it("finds φ and the innovations without the bias of short series", () => {
    let corrected = 0;
    let plain = 0;
    for (let seed = 1; seed <= 800; seed++) {
      const fit = fitAr1(ar1(40, 0.5, seed));
      corrected += fit.phi / 800;
      plain += fit.phiUncorrected / 800;
    }
    expect(plain).toBeLessThan(0.46);
    expect(Math.abs(corrected - 0.5)).toBeLessThan(0.02); // 3 standard errors: 3 · 0.14/√800
  });
  it("leaves innovations that are independent and of their stated size", () => {
    const x = ar1(5000, 0.6, 9);
    const fit = fitAr1(x);
    const e = ar1Innovations(x, fit);
    expect(autocorrelation(e, { lags: 5 }).correlated).toBe(false);
    const sd = Math.sqrt(e.reduce((s, v) => s + v * v, 0) / e.length);
    expect(Math.abs(sd - fit.innovationSd)).toBeLessThan(MONTE_CARLO);
    expect(e).toHaveLength(x.length);
  });
  it("shows a lasting shift once in full and then by 1 − φ", () => {
    const e = ar1Innovations([0, 0, 5, 5, 5], { mean: 0, phi: 0.6 });
    expect(e.map((v) => Number(v.toFixed(9)))).toEqual([0, 0, 5, 2, 2]);
  });
  it("with φ of 0 gives the readings back", () => {
    expect(ar1Innovations([3, 1, 2], { mean: 1, phi: 0 })).toEqual([2, 0, 1]);
  });
  it("refuses equal or few readings and a φ of 1", () => {
    expect(() => fitAr1(Array(30).fill(1))).toThrow(/all equal/);
    expect(() => fitAr1([1, 2, 3])).toThrow(/at least 20/);
    expect(() => ar1Innovations([1], { mean: 0, phi: 1 })).toThrow(/phi/);
  });
});

describe("limits for correlated readings", () => {
  const phi = 0.6;
  const long = ar1(20_000, phi, 21);
  const limits = correlatedLimits({ mean: 0, phi, innovationSd: 1 });
  it("hold the share of readings beyond that moving ranges would let through too often", () => {
    const beyond = (upper: number) => long.filter((v) => Math.abs(v) > upper).length / long.length;
    // 0.27 % of normal readings; clusters make the share scatter by about a third of it.
    expect(beyond(limits.individuals.upperLimit)).toBeLessThan(0.004);
    const short = statisticalLimits(long, { centre: 0 });
    expect(beyond(short.upperLimit)).toBeGreaterThan(0.03);
    const understates = short.sigma / limits.individuals.sigma;
    expect(Math.abs(understates - limits.movingRangeUnderstates)).toBeLessThan(MONTE_CARLO);
  });
  it("give the EWMA the standard deviation it has", () => {
    const sigma = limits.ewmaSigma;
    const chart = ewmaChart(long, { centre: 0, sigma, lambda: 0.2, widthSigma: 3 });
    const sd = Math.sqrt(chart.values.reduce((s, v) => s + v * v, 0) / chart.values.length);
    const said = sigma * Math.sqrt(0.2 / 1.8);
    expect(Math.abs(sd / said - 1)).toBeLessThan(0.05); // averages of 20,000 hang together over some 20
  });
  it("are those of independent readings where φ is 0", () => {
    const plain = correlatedLimits({ mean: 0, phi: 0, innovationSd: 2 });
    expect(plain.individuals.sigma).toBe(2);
    expect(plain.ewmaSigma).toBe(2);
    expect(plain.movingRangeUnderstates).toBe(1);
  });
  it("say when wide limits see little", () => {
    expect(limits.warnings.join()).toContain("innovations");
    expect(correlatedLimits({ mean: 0, phi: 0.2, innovationSd: 1 }).warnings).toEqual([]);
    expect(() => correlatedLimits({ mean: 0, phi: 0.2, innovationSd: 0 })).toThrow(
      /greater than 0/,
    );
  });
  it("signal more rarely than once in 370 readings, as they say", () => {
    const runs = Array.from({ length: 300 }, (_, i) => {
      const x = ar1(4000, 0.8, 100 + i);
      const upper = 3 / Math.sqrt(1 - 0.64);
      const first = x.findIndex((v) => Math.abs(v) > upper);
      return first < 0 ? 4000 : first + 1;
    });
    expect(runs.reduce((s, r) => s + r, 0) / runs.length).toBeGreaterThan(400);
  });
  it("serve charts of innovations at their usual rate of false signals", () => {
    const fit = { mean: 0, phi };
    const chart = individualsChart(ar1Innovations(long, fit), { centre: 0 });
    expect(chart.beyond.length / long.length).toBeLessThan(0.0042); // 0.0027 + 4 standard errors
  });
});
