import { describe, expect, it } from "vitest";
import { batchesToMix, shelfForecast } from "wetside/solutions";

const kits = [
  { name: "developer", rateMlPerM2: 600, parts: [{ what: "A", mlPerL: 100 }] },
  { name: "fixer", rateMlPerM2: 800, parts: [{ what: "B", mlPerL: 200 }] },
];
const week = { replenishers: kits, areaM2: 25, batchMl: 5000 };

describe("batchesToMix", () => {
  it("covers the need with whole batches, and never with one too many", () => {
    for (const areaM2 of [0, 0.001, 6.25, 24.68, 1000]) {
      for (const { needL, mixL } of batchesToMix({ ...week, areaM2 })) {
        expect(mixL).toBeGreaterThanOrEqual(needL * (1 - 1e-12));
        expect(mixL - needL).toBeLessThan(5);
      }
    }
  });
  it("counts a need of exactly two batches as two", () => {
    expect(batchesToMix({ ...week, areaM2: 12.5 })[1]).toMatchObject({ needL: 10, batches: 2 });
  });
  it("adds what fresh tanks take of the replenisher named", () => {
    const [developer, fixer] = batchesToMix({ ...week, forTanksMl: { developer: 16200 } });
    expect(developer).toMatchObject({ weekL: 15, tankL: 16.2, mixL: 35 });
    expect(fixer).toMatchObject({ tankL: 0, mixL: 20 });
    expect(() => batchesToMix({ ...week, forTanksMl: { bleach: 1 } })).toThrow("developer, fixer");
  });
  it.each([
    [{ areaM2: -1 }, "areaM2"],
    [{ areaM2: Number.NaN }, "areaM2"],
    [{ batchMl: 0 }, "batchMl"],
  ])("refuses %o", (wrong, message) => {
    expect(() => batchesToMix({ ...week, ...wrong })).toThrow(message);
  });
});

describe("shelfForecast", () => {
  const mixes = batchesToMix({ ...week, forTanksMl: { developer: 10000 } });
  const day = { kits, mixes, areaM2ByWeekday: [5, 5, 5, 5, 5, 0, 0], leadDays: 5 };
  const shelf = [
    { what: "A", onShelfMl: 3000 },
    { what: "B", onShelfMl: 3999 },
  ];

  it("takes what fills a tank off the shelf, and leaves the week's mix on it", () => {
    const [a] = shelfForecast({ ...day, shelf, from: "2026-03-02" });
    expect(a).toMatchObject({ shelfL: 3, todayL: 2.5, onShelfMl: 2000, enoughToday: true });
    // 300 mL a working day: six days of 2000 mL, so short on the Tuesday after next.
    expect(a).toMatchObject({ usePerWeekMl: 1500, emptyOn: "2026-03-10", orderNow: false });
  });
  it("says when the shelf does not reach for today", () => {
    expect(shelfForecast({ ...day, shelf, from: "2026-03-02" })[1]?.enoughToday).toBe(false);
  });
  it("orders now what does not reach for today, however slow the week", () => {
    const slow = { ...day, areaM2ByWeekday: [0.1, 0, 0, 0, 0, 0, 0], leadDays: 0 };
    const b = shelfForecast({ ...slow, shelf, from: "2026-03-02" })[1];
    expect(b?.daysLeft).toBeGreaterThan(30);
    expect(b).toMatchObject({ orderNow: true, warnings: ["does not reach for today's mixes"] });
  });
  it("counts a part that is not on the shelf as none, says so, and asks about a near name", () => {
    const [a] = shelfForecast({ ...day, shelf: [], from: "2026-03-02" });
    expect(a).toMatchObject({ shelfL: 0, daysLeft: 0, orderNow: true });
    expect(a?.warnings[0]).toBe("not counted on the shelf, taken as none");
    const kit = { name: "developer", rateMlPerM2: 600, parts: [{ what: "part A", mlPerL: 100 }] };
    const typed = [{ what: "Part A.", onShelfMl: 3000 }];
    const [row] = shelfForecast({ ...day, kits: [kit], shelf: typed, from: "2026-03-02" });
    expect(row?.warnings[0]).toContain('is "Part A." the same?');
  });
  it("adds up what two kits take of one bottle", () => {
    const shared = kits.map((kit) => ({ ...kit, parts: [{ what: "C", mlPerL: 100 }] }));
    const bottle = [{ what: "C", onShelfMl: 6000 }];
    const rows = shelfForecast({ ...day, kits: shared, shelf: bottle, from: "2026-03-02" });
    expect(rows).toHaveLength(1);
    // 25 L of developer and 20 L of fixer today, 100 mL in each litre; 10 L fill a tank.
    expect(rows[0]).toMatchObject({ todayL: 4.5, onShelfMl: 5000, enoughToday: true });
    expect(rows[0]?.usePerWeekMl).toBeCloseTo(25 * 1400 * 0.1, 9);
  });
  it("refuses a bottle counted twice", () => {
    const twice = [...shelf, { what: "A", onShelfMl: 1 }];
    expect(() => shelfForecast({ ...day, shelf: twice, from: "2026-03-02" })).toThrow("once");
  });
  it("refuses a kit without its mix, a negative bottle and a day that does not exist", () => {
    const from = "2026-03-02";
    expect(() => shelfForecast({ ...day, mixes: [], shelf, from })).toThrow("batchesToMix");
    const minus = [{ what: "A", onShelfMl: -1 }];
    expect(() => shelfForecast({ ...day, shelf: minus, from })).toThrow("onShelfMl of A");
    expect(() => shelfForecast({ ...day, shelf, from: "2026-02-30" })).toThrow("2026-02-30");
  });
});
