import { describe, expect, it } from "vitest";
import { prespecifiedLimits, statisticalLimits } from "wetside/control";
import { frozen } from "../example-strips.ts";

const saw = Array.from({ length: 30 }, (_, i) => [0, 2, 1, 3, 1][i % 5] ?? 0);
const d2 = 2 / Math.sqrt(Math.PI);

describe("statistical limits", () => {
  it("rest on the base period alone", () => {
    const values = frozen([...saw, 100, -100]);
    const limits = statisticalLimits(values, { base: { first: 0, last: 29 } });
    expect(limits).toEqual(statisticalLimits(saw));
    expect(limits.baseReadings).toBe(30);
  });
  it("say which kind they are, so that they cannot pass for process limits", () => {
    expect(statisticalLimits(saw).kind).toBe("statistical limits");
  });
  it("take sigma from the mean moving range over 2/√π exactly", () => {
    const limits = statisticalLimits([0, 1, 0, 1], { minimumReadings: 4 });
    expect(limits.sigma).toBe(1 / d2);
    expect(limits.upperLimit).toBe(0.5 + 3 / d2);
  });
  it("take sigma from the median range or the standard deviation if asked", () => {
    const x = [0, 1, 0, 1, 0, 9];
    const median = statisticalLimits(x, { minimumReadings: 6, sigmaFrom: "median moving range" });
    expect(median.sigma).toBeCloseTo(1 / 0.9538725524089409, 12);
    const sd = statisticalLimits(x, { minimumReadings: 6, sigmaFrom: "standard deviation" });
    expect(sd.sigma).toBeGreaterThan(median.sigma);
  });
  it("use an even number of ranges' middle for the median", () => {
    const x = [0, 1, 3, 6, 10];
    const { sigma } = statisticalLimits(x, {
      minimumReadings: 5,
      sigmaFrom: "median moving range",
    });
    expect(sigma).toBeCloseTo(2.5 / 0.9538725524089409, 12);
  });
  it("join smoothly where c4 passes from the gamma function to its expansion", () => {
    const noise = (n: number) => Array.from({ length: n }, (_, i) => Math.sin(i * 12.9898) * 1.5);
    const sd = (n: number) =>
      statisticalLimits(noise(n), { sigmaFrom: "standard deviation" }).sigma;
    expect(Math.abs(sd(101) / sd(100) - 1)).toBeLessThan(0.01);
  });
  it("refuse a base period that is too short, and say how many are needed", () => {
    expect(() => statisticalLimits([1, 2, 3])).toThrow(
      "number of readings in the base period is 3; choose a base period of at least 20 readings",
    );
    expect(() => statisticalLimits([1, 2, 3], { minimumReadings: 3 })).not.toThrow();
    expect(() => statisticalLimits([])).toThrow(/at least 1 reading/);
    expect(() => statisticalLimits(saw, { minimumReadings: 1 })).toThrow(/at least 2/);
  });
  it("refuse readings that are all equal", () => {
    const flat = new Array(25).fill(0.1);
    for (const sigmaFrom of ["mean moving range", "standard deviation"] as const) {
      expect(() => statisticalLimits(flat, { sigmaFrom })).toThrow(/its readings are all equal/);
    }
    expect(() => statisticalLimits(new Array(25).fill(0))).toThrow(/all equal/);
  });
  it("say that the median moving range is zero where half the readings repeat", () => {
    const mostly = Array.from({ length: 25 }, (_, i) => (i === 12 ? 1 : 0));
    expect(() => statisticalLimits(mostly, { sigmaFrom: "median moving range" })).toThrow(
      /more than half the moving ranges are zero/,
    );
  });
  it("refuse a reading that is not a number, and name its place", () => {
    expect(() => statisticalLimits([...saw, Number.NaN])).toThrow(/values\[30\] is NaN/);
    expect(() => statisticalLimits([...saw, Number.POSITIVE_INFINITY])).toThrow(/values\[30\]/);
  });
  it("refuse a base period outside the series or the wrong way round", () => {
    expect(() => statisticalLimits(saw, { base: { first: 0, last: 30 } })).toThrow(/at most 29/);
    expect(() => statisticalLimits(saw, { base: { first: 9, last: 3 } })).toThrow(
      /base\.last is 3/,
    );
  });
  it("leave excluded readings and the ranges that touch them out", () => {
    const spoiled = [...saw];
    spoiled[10] = 50;
    const limits = statisticalLimits(spoiled, { exclude: [10] });
    expect(limits.baseReadings).toBe(29);
    expect(limits.upperLimit).toBeLessThan(10);
    expect(() => statisticalLimits(spoiled, { exclude: [99] })).toThrow(/exclude is 99/);
  });
  it("do not let a moving range reach across a restart", () => {
    const stepped = Array.from({ length: 24 }, (_, i) => (i % 2) + (i < 12 ? 0 : 100));
    const across = statisticalLimits(stepped).sigma;
    const apart = statisticalLimits(stepped, { restartAt: [12] }).sigma;
    expect(apart).toBeCloseTo(1 / d2, 12);
    expect(across).toBeGreaterThan(4);
  });
  it("warn of base readings beyond their own limits", () => {
    const spoiled = [...saw];
    spoiled[10] = 50;
    expect(statisticalLimits(spoiled).warnings.join()).toMatch(/1 of 30 readings.*positions 10/);
  });
  it("warn of readings too coarse for their variation", () => {
    const coarse = Array.from({ length: 40 }, (_, i) => (i % 8 === 0 ? 0.01 : 0));
    expect(statisticalLimits(coarse).warnings.join()).toMatch(/steps of 0\.01, coarser than sigma/);
  });
  it("warn of correlated readings", () => {
    const wave = Array.from({ length: 60 }, (_, i) => Math.sin(i / 8));
    expect(statisticalLimits(wave).warnings.join()).toMatch(/correlated \(lag 1: 0\.9/);
  });
  it("can be centred on the aim", () => {
    const limits = statisticalLimits(saw, { centre: 0 });
    expect(limits.centre).toBe(0);
    expect(limits.sigma).toBe(statisticalLimits(saw).sigma);
  });
  it("accept a typed array", () => {
    expect(statisticalLimits(Float64Array.from(saw))).toEqual(statisticalLimits(saw));
  });
  it("can be prespecified", () => {
    const limits = prespecifiedLimits({ centre: 1, sigma: 2, widthSigma: 2 });
    expect([limits.lowerLimit, limits.upperLimit]).toEqual([-3, 5]);
    expect(() => prespecifiedLimits({ centre: 1, sigma: 0 })).toThrow(/sigma is 0/);
  });
});
