import { describe, expect, it } from "vitest";
import {
  changePoint,
  limitCrossing,
  linearTrend,
  mannKendall,
  predictedAt,
  theilSen,
  trendOutlook,
} from "wetside/control";
import { seededRandom } from "wetside/numerics";
import fc from "../../properties/fast-check.ts";

const readings = fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 4, maxLength: 30 });

/** S straight from its definition. */
function sByDefinition(y: readonly number[]): number {
  return y.reduce((sum, yj, j) => {
    return sum + y.slice(0, j).reduce((inner, yi) => inner + Math.sign(yj - yi), 0);
  }, 0);
}

/** Every order of the readings. */
function orders(y: readonly number[]): readonly (readonly number[])[] {
  if (y.length < 2) return [y];
  return y.flatMap((first, i) => {
    return orders([...y.slice(0, i), ...y.slice(i + 1)]).map((rest) => [first, ...rest]);
  });
}

/** Share of simulated cases may lie this many binomial standard errors from what it should be. */
const BINOMIAL_ERRORS = 4;
const errorOf = (share: number, cases: number) => Math.sqrt((share * (1 - share)) / cases);

describe("mannKendall", () => {
  it("gives few readings with ties the share of all their orders that are as extreme", () => {
    const tied = [
      [0, 0, 1, 2, 2],
      [3, 1, 1, 1, 2, 0],
      [0, -1, -1, -2, -2, -3],
      [5, 5, 5, 5, 6],
    ];
    for (const y of tied) {
      const found = mannKendall(y);
      const all = orders(y).map((order) => Math.abs(sByDefinition(order)));
      const asExtreme = all.filter((s) => s >= Math.abs(found.s)).length;
      expect(found.method).toBe("exact");
      expect(found.pValue).toBeCloseTo(Math.min(1, asExtreme / all.length), 12);
    }
  });
  it("counts S as the definition does, ties included", () => {
    fc.assert(fc.property(readings, (y) => mannKendall(y).s === sByDefinition(y)));
  });
  it("changes sign when the series is turned round, and keeps its probability", () => {
    fc.assert(
      fc.property(readings, (y) => {
        const [there, back] = [mannKendall(y), mannKendall([...y].reverse())];
        expect(back.s).toBe(there.s === 0 ? 0 : -there.s);
        expect(back.pValue).toBeCloseTo(there.pValue, 12);
      }),
    );
  });
  it("finds nothing in readings that are all equal", () => {
    expect(mannKendall([2, 2, 2, 2, 2])).toMatchObject({ s: 0, z: 0, tau: 0 });
    expect(mannKendall([2, 2, 2, 2, 2]).pValue).toBe(1);
  });
  it("never gives a probability above 1", () => {
    fc.assert(
      fc.property(readings, (y) => mannKendall(y).pValue <= 1 && mannKendall(y).pValue > 0),
    );
  });
  it("refuses three readings", () => {
    expect(() => mannKendall([1, 2, 3])).toThrow("number of readings is 3");
  });
});

describe("theilSen", () => {
  it("finds the line of readings without noise, whatever one bad strip says", () => {
    const times = [0, 1, 3, 4, 6, 8, 9];
    const values = times.map((t) => 2 - 0.5 * t);
    expect(theilSen(times, values)).toMatchObject({ slope: -0.5, intercept: 2 });
    values[3] = 50;
    expect(theilSen(times, values).slope).toBeCloseTo(-0.5, 10);
  });
  it("holds the true slope in its interval about as often as it says", () => {
    const { normal } = seededRandom(5);
    const times = Array.from({ length: 30 }, (_, i) => i);
    let covered = 0;
    const series = 400;
    for (let k = 0; k < series; k++) {
      const [low, high] = theilSen(
        times,
        times.map((t) => 0.1 * t + normal()),
      ).slopeInterval;
      if (low <= 0.1 && high >= 0.1) covered++;
    }
    expect(Math.abs(covered / series - 0.95)).toBeLessThan(4 * Math.sqrt((0.05 * 0.95) / series));
  });
  it("refuses times that stand still or run backwards", () => {
    expect(() => theilSen([0, 1, 1, 2], [1, 2, 3, 4])).toThrow("times[2] is 1");
  });
});

describe("linearTrend and limitCrossing", () => {
  it("do not care where time begins", () => {
    const values = [1, 3, 2, 5, 4, 6];
    const early = linearTrend([0, 1, 2, 3, 4, 5], values);
    const late = linearTrend([1000, 1001, 1002, 1003, 1004, 1005], values);
    expect(late.slope).toBeCloseTo(early.slope, 10);
    const [a, b] = [limitCrossing(early, 10), limitCrossing(late, 10)];
    expect((b.time ?? 0) - 1000).toBeCloseTo(a.time ?? 0, 8);
    expect((b.interval?.[1] ?? 0) - 1000).toBeCloseTo(a.interval?.[1] ?? 0, 8);
  });
  it("find the limit where the interval of the line touches it", () => {
    const trend = linearTrend([0, 1, 2, 3, 4, 5], [1, 3, 2, 5, 4, 6]);
    const { interval = [0, 0] } = limitCrossing(trend, 10);
    expect(predictedAt(trend, interval[0], "line").interval[1]).toBeCloseTo(10, 8);
    expect(predictedAt(trend, interval[1], "line").interval[0]).toBeCloseTo(10, 8);
  });
  it("report an unbounded interval as a state, not as a number", () => {
    const noise = linearTrend([0, 1, 2, 3, 4], [1, -1, 1, -1, 1.1]);
    const crossing = limitCrossing(noise, 5);
    expect(crossing.state).toBe("unbounded");
    expect(crossing.interval).toBeUndefined();
    expect(crossing.g).toBeGreaterThanOrEqual(1);
    expect(limitCrossing(linearTrend([0, 1, 2], [1, 1, 1]), 5)).toMatchObject({
      state: "unbounded",
    });
  });
});

describe("changePoint", () => {
  it("finds a step where it is and is sure of it", () => {
    const { normal } = seededRandom(4);
    const found = changePoint(
      Array.from({ length: 60 }, (_, i) => (i < 25 ? 0 : 2) + 0.5 * normal()),
    );
    expect(found.firstAfter).toBe(25);
    expect(found.confidence).toBeGreaterThan(0.99);
    const [early, late] = found.firstAfterInterval;
    expect(early).toBeLessThanOrEqual(25);
    expect(late).toBeGreaterThanOrEqual(25);
  });
  it("holds the true moment in its interval at least as often as it says, early or late", () => {
    const { normal } = seededRandom(12);
    const series = 400;
    for (const [at, step] of [
      [20, 1.5],
      [8, 2],
      [30, 2],
    ] as const) {
      let held = 0;
      for (let k = 0; k < series; k++) {
        const values = Array.from({ length: 40 }, (_, i) => (i < at ? 0 : step) + normal());
        const { firstAfter, firstAfterInterval } = changePoint(values, { draws: 200 });
        const [early, late] = firstAfterInterval;
        expect(early).toBeLessThanOrEqual(firstAfter);
        expect(late).toBeGreaterThanOrEqual(firstAfter);
        if (early <= at && at <= late) held++;
      }
      expect(held / series).toBeGreaterThan(0.95 - BINOMIAL_ERRORS * errorOf(0.95, series));
    }
  });
  it("finds no moment in equal readings: no confidence, and any may be the first after", () => {
    expect(changePoint(Array<number>(12).fill(0.1))).toMatchObject({
      confidence: 0,
      pValue: 1,
      firstAfterInterval: [1, 11],
    });
  });
  it("names one moment only where two levels leave nothing over", () => {
    expect(changePoint([1, 1, 1, 1, 1, 5, 5, 5, 5]).firstAfterInterval).toEqual([5, 5]);
  });
  it("does not care about the unit or the level of the readings", () => {
    const values = [0.2, 0.1, 0.3, 0.2, 0.2, 0.5, 0.6, 0.4, 0.5, 0.6];
    const moved = values.map((v) => 40 + 8 * v);
    const [plain, other] = [changePoint(values), changePoint(moved)];
    expect(other.firstAfterInterval).toEqual(plain.firstAfterInterval);
    expect(other.confidence).toBe(plain.confidence);
  });
  it("is not sure where there is none, as often as it says", () => {
    const { normal } = seededRandom(6);
    let sure = 0;
    const series = 200;
    for (let k = 0; k < series; k++) {
      const values = Array.from({ length: 30 }, normal);
      if (changePoint(values, { draws: 200, seed: k }).confidence >= 0.95) sure++;
    }
    expect(Math.abs(sure / series - 0.05)).toBeLessThan(4 * Math.sqrt((0.05 * 0.95) / series));
  });
});

describe("linearTrend of equal readings", () => {
  it("is exactly level and crosses nothing", () => {
    const level = linearTrend([0, 1, 2, 3, 4], [0.3, 0.3, 0.3, 0.3, 0.3]);
    expect([level.slope, level.pValue, level.intercept]).toEqual([0, 1, 0.3]);
    expect(limitCrossing(level, 0.4).state).toBe("unbounded");
  });
});

describe("trendOutlook", () => {
  it("names the unit of time: a day, or the one it is told", () => {
    const [times, values] = [
      [0, 1, 2, 3, 4, 5, 6, 7],
      [0, 2, 1, 3, 4, 4, 6, 7],
    ];
    const mild = [0, 2, 1, 3, 2, 4, 3, 2];
    expect(trendOutlook(times, mild).reason).toContain("Mann–Kendall, p = 0.16)");
    expect(trendOutlook(times, values).reason).toContain(
      "rising by 1.0 a day (Mann–Kendall, p < 0.001)",
    );
    expect(trendOutlook(times, values, { timeUnit: "a week" }).reason).toContain("1.0 a week");
  });
  const days = Array.from({ length: 20 }, (_, i) => i);

  it("names the day on which the nearest limit is crossed, with its interval", () => {
    const { normal } = seededRandom(9);
    const outlook = trendOutlook(
      days,
      days.map((t) => 0.004 * t + 0.01 * normal()),
      { limits: [0.08, 0.1, -0.08] },
    );
    expect(outlook.finding).toBe("rising");
    expect(outlook.crossings.map((each) => each.limit)).toEqual([0.08, 0.1]);
    const [low, high] = outlook.crossings[0]?.interval ?? [0, 0];
    expect(low).toBeLessThan(20);
    expect(high).toBeGreaterThan(20);
  });
  it("holds the true day in its interval as often as it says, readings being independent", () => {
    const { normal } = seededRandom(3);
    const [series, slope] = [600, 0.004];
    let held = 0;
    for (let k = 0; k < series; k++) {
      const values = days.map((t) => slope * t + 0.01 * normal());
      const [crossing] = trendOutlook(days, values, { limits: [0.12] }).crossings;
      const [low, high] = crossing?.interval ?? [0, 0];
      if (low <= 0.12 / slope && 0.12 / slope <= high) held++;
    }
    const off = Math.abs(held / series - 0.95);
    expect(off).toBeLessThan(BINOMIAL_ERRORS * errorOf(0.95, series));
  });
  it("warns where neighbouring readings resemble each other, and hardly ever where they do not", () => {
    const { normal } = seededRandom(8);
    const times = Array.from({ length: 40 }, (_, i) => i);
    const warned = (phi: number) => {
      let found = 0;
      for (let k = 0; k < 200; k++) {
        let noise = normal();
        const values = times.map((t) => {
          noise = phi * noise + Math.sqrt(1 - phi ** 2) * normal();
          return 0.02 * t + noise;
        });
        const { warnings } = trendOutlook(times, values);
        if (warnings.some((words) => words.includes("resemble each other"))) found++;
      }
      return found / 200;
    };
    expect(warned(0)).toBeLessThan(0.05 + BINOMIAL_ERRORS * errorOf(0.05, 200));
    expect(warned(0.7)).toBeGreaterThan(0.9);
    const straight = times.map((t) => 0.1 * t);
    expect(trendOutlook(times, straight).warnings).toEqual([]);
  });
  it("refuses a limit that is no number, trend or not", () => {
    const level = days.map((t) => t % 2);
    expect(() => trendOutlook(days, level, { limits: [0.08, Number.NaN] })).toThrow(
      "limits[1] is NaN",
    );
  });
  it("says that there is no trend to speak of, and then forecasts nothing", () => {
    const outlook = trendOutlook(
      days,
      days.map((t) => Math.sin(12.9898 * t)),
      { limits: [2] },
    );
    expect(outlook.finding).toBe("no trend to speak of");
    expect(outlook.crossings).toEqual([]);
  });
});
