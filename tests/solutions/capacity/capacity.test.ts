import { describe, expect, it } from "vitest";
import {
  bathCapacity,
  freshTankSheet,
  publishedCapacities,
  reuseRules,
  reuseTime,
  stockForecast,
} from "wetside/solutions";

describe("the capacity data", () => {
  it("have names of their own, positive figures and a source", () => {
    const ids = [...publishedCapacities, ...reuseRules].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { id, areaM2PerL, reading, source, howObtained } of publishedCapacities) {
      expect(areaM2PerL, id).toBeGreaterThan(0);
      expect(["trade", "dimensions"], id).toContain(reading);
      expect(source.length * howObtained.length, id).toBeGreaterThan(0);
    }
    for (const { id, mostFilmsPerL, filmsPerLPerStep } of reuseRules) {
      expect(mostFilmsPerL, id).toBeGreaterThanOrEqual(filmsPerLPerStep);
    }
  });
});

describe("bathCapacity", () => {
  const fixer = { volumeMl: 1000, capacity: "acid fixer, film or paper" };
  it("starts with all of it", () => {
    const fresh = bathCapacity({ ...fixer, next: [{ format: "135-36", count: 4 }] });
    expect(fresh).toMatchObject({ usedM2: 0, usedFraction: 0, exhausted: false, warnings: [] });
    expect(fresh.leftByFormat).toEqual([{ format: "135-36", count: 20 }]);
    expect(fresh.mixesLeft).toBeCloseTo(5, 12);
  });
  it("counts a mix of formats, and what is left for each alone", () => {
    const used = [
      { format: "135-36", count: 10 },
      { format: "8x10in", count: 5 },
    ];
    const left = bathCapacity({ ...fixer, used });
    expect(left.usedFraction).toBeCloseTo(0.75, 12);
    expect(left.leftByFormat).toEqual([
      { format: "135-36", count: 5 },
      { format: "8x10in", count: 5 },
    ]);
    expect(left.mixesLeft).toBeNull();
  });
  it("is exhausted when all is used, and says by how much it is overworked", () => {
    const done = bathCapacity({ ...fixer, used: [{ format: "120", count: 20 }] });
    expect(done).toMatchObject({ exhausted: true, warnings: [] });
    const over = bathCapacity({ ...fixer, used: [{ format: "120", count: 22 }] });
    expect(over.leftM2).toBe(0);
    expect(over.warnings[0]).toContain("overworked by 0.103 m²");
  });
  it("takes a capacity of your own, by dimensions unless said otherwise", () => {
    const own = { volumeMl: 500, capacityM2PerL: 1, used: [{ format: "135-36", count: 1 }] };
    expect(bathCapacity(own).usedM2).toBeCloseTo(0.0567, 12);
    expect(bathCapacity({ ...own, reading: "trade" }).usedM2).toBeCloseTo(0.0516128, 12);
  });
  it("wants one capacity, known by name", () => {
    expect(() => bathCapacity({ volumeMl: 1 })).toThrow("either capacity");
    expect(() => bathCapacity({ ...fixer, capacityM2PerL: 1 })).toThrow("either capacity");
    const near = { volumeMl: 1, capacity: "acid fixer, film and paper" };
    expect(() => bathCapacity(near)).toThrow('did you mean "acid fixer, film or paper"');
    expect(() => bathCapacity({ ...fixer, volumeMl: 0 })).toThrow("volumeMl");
  });
});

describe("reuseTime", () => {
  const rule = "10 % a film";
  it("keeps the first time for the first film", () => {
    expect(reuseTime({ timeMin: 8, filmsDone: 0, volumeMl: 1000, rule }).timeMin).toBe(8);
  });
  it("adds the same to each film, of the first time", () => {
    const at = (filmsDone: number) => reuseTime({ timeMin: 10, filmsDone, volumeMl: 1000, rule });
    expect(at(1).timeMin).toBeCloseTo(11, 12);
    expect(at(9).timeMin).toBeCloseTo(19, 12);
    expect(at(9).warnings[0]).toContain("last one");
    expect(() => at(10)).toThrow("allows 10 films");
  });
  it("counts films by the litre", () => {
    const half = reuseTime({ timeMin: 10, filmsDone: 1, volumeMl: 500, rule });
    expect(half).toMatchObject({ filmsDonePerL: 2, filmsLeft: 4 });
    expect(half.timeMin).toBeCloseTo(12, 12);
  });
  it("steps only after a full step", () => {
    const four = "15 % for four films";
    const at = (filmsDone: number) =>
      reuseTime({ timeMin: 10, filmsDone, volumeMl: 1000, rule: four });
    expect([0, 3, 4, 7, 8].map((n) => at(n).factor)).toEqual([1, 1, 1.15, 1.15, 1.3]);
  });
  it("takes a rule of your own, and refuses one that is not known", () => {
    const own = { ...reuseRules[0], percentPerStep: 5 } as (typeof reuseRules)[number];
    const given = { timeMin: 10, filmsDone: 2, volumeMl: 1000 };
    expect(reuseTime({ ...given, rule: own }).timeMin).toBeCloseTo(11, 12);
    expect(() => reuseTime({ ...given, rule: "five" })).toThrow('"10 % a film"');
    expect(() => reuseTime({ ...given, rule: { ...own, filmsPerLPerStep: 0 } })).toThrow("Step");
  });
});

describe("stockForecast", () => {
  const week = [1000, 1000, 1000, 1000, 1000, 0, 0];
  const shelf = { onShelfMl: 5000, weekUseMl: week, from: "2026-03-02", leadDays: 3 };
  it("serves a week exactly and is short on the next Monday", () => {
    expect(stockForecast(shelf)).toMatchObject({
      daysLeft: 7,
      emptyOn: "2026-03-09",
      orderBy: "2026-03-06",
      orderNow: false,
      weekUseMl: 5000,
    });
  });
  it("starts on whatever weekday the date is", () => {
    // 2026-03-06 is a Friday: one day's use, then the weekend, then four more.
    expect(stockForecast({ ...shelf, from: "2026-03-06" }).emptyOn).toBe("2026-03-13");
  });
  it("keeps the reserve and says when the order is late", () => {
    const late = stockForecast({ ...shelf, reserveMl: 4000, leadDays: 3 });
    expect(late).toMatchObject({ emptyOn: "2026-03-03", orderNow: true });
    expect(late.warnings[0]).toBe("the delivery comes 2 days late");
    expect(stockForecast({ ...shelf, onShelfMl: 0 }).daysLeft).toBe(0);
  });
  it("lasts for ever when nothing is used, and says when it lasts a century", () => {
    const none = stockForecast({ ...shelf, weekUseMl: [0, 0, 0, 0, 0, 0, 0] });
    expect(none).toMatchObject({ daysLeft: null, emptyOn: null, orderBy: null, orderNow: false });
    expect(stockForecast({ ...shelf, onShelfMl: 1e11 }).warnings[0]).toContain("hundred years");
  });
  it("agrees with counting day by day over years, leap day and all", () => {
    let [left, day] = [780_500, Date.UTC(2026, 2, 4) / 86_400_000];
    for (;;) {
      const use = week[(new Date(day * 86_400_000).getUTCDay() + 6) % 7] ?? 0;
      if (use > left) break;
      left -= use;
      day += 1;
    }
    const long = stockForecast({ ...shelf, onShelfMl: 780_500, from: "2026-03-04" });
    expect(long.emptyOn).toBe(new Date(day * 86_400_000).toISOString().slice(0, 10));
  });
  it("refuses days that do not exist and weeks that are not seven", () => {
    for (const from of ["2026-02-30", "2.3.2026", "2026-3-2", ""]) {
      expect(() => stockForecast({ ...shelf, from })).toThrow('"2026-03-02"');
    }
    expect(() => stockForecast({ ...shelf, weekUseMl: [1] })).toThrow("seven");
    const negative = [...week.slice(0, 6), -1];
    expect(() => stockForecast({ ...shelf, weekUseMl: negative })).toThrow("weekUseMl[6]");
  });
});

describe("freshTankSheet", () => {
  const tank = { title: "Developer", tankMl: 12_000, replenisherMlPerL: 800, starterMlPerL: 40 };
  it("fills the tank exactly, starter last but for the water", () => {
    const sheet = freshTankSheet(tank);
    expect(sheet.steps.reduce((sum, { amount }) => sum + amount, 0)).toBeCloseTo(12_000, 9);
    expect(sheet.steps.map(({ what }) => what)).toEqual([
      "water",
      "replenisher",
      "starter",
      "water to the working level",
    ]);
  });
  it("blends what the replenisher and the starter contain", () => {
    const components = [
      { name: "bromide", replenisherGPerL: 0, starterGPerL: 25 },
      { name: "developing agent", replenisherGPerL: 6 },
    ];
    expect(freshTankSheet({ ...tank, components }).concentrations).toEqual([
      { name: "bromide", gPerL: 1 },
      { name: "developing agent", gPerL: 4.8 },
    ]);
  });
  it("works without water or without starter, with a warning for the latter", () => {
    const full = freshTankSheet({ ...tank, replenisherMlPerL: 960 });
    expect(full.steps).toHaveLength(2);
    const none = freshTankSheet({ ...tank, starterMlPerL: 0 });
    expect(none.warnings[0]).toContain("no starter");
  });
  it("refuses more than a litre in a litre", () => {
    expect(() => freshTankSheet({ ...tank, starterMlPerL: 201 })).toThrow("at most 200");
    expect(() => freshTankSheet({ ...tank, replenisherMlPerL: 0 })).toThrow("replenisherMlPerL");
    const components = [{ name: "x", replenisherGPerL: -1 }];
    expect(() => freshTankSheet({ ...tank, components })).toThrow("replenisherGPerL of x");
  });
});
