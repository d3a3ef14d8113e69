import { describe, expect, it } from "vitest";
import { faultRateChart, proportionChart, rankedReasons } from "wetside/control";
import { seededRandom } from "wetside/numerics";

/** Remakes of invented days: a share of 3 %, itself scattering from day to day by `sd`. */
function days(seed: number, sd: number, count = 200) {
  const { normal, uniform } = seededRandom(seed);
  const sizes = Array.from({ length: count }, () => 800 + Math.floor(400 * uniform()));
  const counts = sizes.map((n) => {
    const p = Math.min(1, Math.max(0, 0.03 + sd * normal()));
    let remakes = 0;
    for (let i = 0; i < n; i++) if (uniform() < p) remakes++;
    return remakes;
  });
  return { counts, sizes };
}

describe("proportionChart", () => {
  it("finds no over-dispersion where the days only count differently", () => {
    const { counts, sizes } = days(1, 0);
    const chart = proportionChart(counts, sizes);
    expect(chart.limits).toBe("binomial");
    expect(chart.dispersion).toBeGreaterThan(0.85);
    expect(chart.dispersion).toBeLessThan(1.15);
    expect(chart.beyond.length).toBeLessThan(5);
  });
  it("widens the limits where the days themselves scatter, instead of crying wolf", () => {
    const { counts, sizes } = days(2, 0.012);
    expect(proportionChart(counts, sizes, { limits: "binomial" }).beyond.length).toBeGreaterThan(
      15,
    );
    const laney = proportionChart(counts, sizes);
    expect(laney.limits).toBe("Laney");
    expect(laney.beyond.length).toBeLessThan(5);
  });
  it("wants whole prints and whole remakes, and no more remakes than prints", () => {
    expect(() => proportionChart([1.5, 2], [100, 100])).toThrow("counts[0] is 1.5");
    expect(() => proportionChart([1, 2], [100, 99.5])).toThrow("sizes[1] is 99.5");
    expect(() => proportionChart([1, 101], [100, 100])).toThrow("not more remakes than prints");
    expect(() => proportionChart([0, 1], [0, 100])).toThrow("leave out days without prints");
  });
  it("does not call a share exactly on its limit beyond", () => {
    const all = proportionChart([0, 0, 0], [10, 10, 10]);
    expect(all.beyond).toEqual([]);
    expect(all.warnings[0]).toContain("alike");
  });
  it("gives a day with more prints narrower limits", () => {
    const { upper } = proportionChart([10, 10], [200, 800], { limits: "binomial" });
    expect(upper[1]).toBeLessThan(upper[0] ?? 0);
  });
  it("refuses a day without prints and more remakes than prints", () => {
    expect(() => proportionChart([1, 0], [10, 0])).toThrow("leave out days without prints");
    expect(() => proportionChart([11, 1], [10, 10])).toThrow("not more remakes than prints");
    expect(() => proportionChart([1], [10])).toThrow("number of days is 1");
  });
});

describe("faultRateChart", () => {
  it("takes more faults than units", () => {
    const chart = faultRateChart([14, 12, 20], [10, 8, 13]);
    expect(chart.beyond).toEqual([]);
    expect(chart.mean).toBeCloseTo(46 / 31, 12);
  });
});

describe("rankedReasons", () => {
  it("refuses to rank by a cost that nobody has given", () => {
    const entries = [{ reason: "dust", count: 2 }];
    expect(() => rankedReasons(entries, "cost")).toThrow("write what one remake costs");
    expect(rankedReasons(entries)[0]?.share).toBe(1);
  });
  const entries = [
    { reason: "too dark", count: 2, costEach: 5 },
    { reason: "dust", count: 6, costEach: 1 },
    { reason: "too dark", count: 1, costEach: 5 },
  ];
  it("adds up what belongs together and ends at 1", () => {
    const ranked = rankedReasons(entries);
    expect(ranked.map((each) => each.reason)).toEqual(["dust", "too dark"]);
    expect(ranked.at(-1)?.cumulativeShare).toBe(1);
  });
  it("ranks by cost where that is asked", () => {
    expect(rankedReasons(entries, "cost")[0]).toMatchObject({ reason: "too dark", cost: 15 });
  });
  it("gives shares of 0 where nothing was remade, not a division by 0", () => {
    expect(rankedReasons([{ reason: "dust", count: 0 }])[0]?.share).toBe(0);
  });
});
