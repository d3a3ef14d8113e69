import { describe, expect, it } from "vitest";
import {
  bathCapacity,
  freshTankSheet,
  publishedCapacities,
  reuseRules,
  reuseTime,
  stockForecast,
  stockLevels,
  weekLoad,
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
      usePerWeekMl: 5000,
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

describe("stockLevels", () => {
  const shelf = { onShelfMl: 2500, weekUseMl: [1000, 500, 0, 0, 0, 0, 0], from: "2026-03-02" };
  it("falls by the use of each weekday and never below nothing", () => {
    const levels = stockLevels({ ...shelf, days: 9 });
    expect(levels.map(({ onShelfMl }) => onShelfMl)).toEqual([
      2500, 1500, 1000, 1000, 1000, 1000, 1000, 1000, 0, 0,
    ]);
    expect(levels.at(-1)?.date).toBe("2026-03-11");
  });
  it("agrees with the forecast about the first day that cannot be served", () => {
    const empty = stockForecast({ ...shelf, leadDays: 0 }).emptyOn;
    const levels = stockLevels({ ...shelf, days: 30 });
    const day = levels.findIndex(({ date }) => date === empty);
    expect(empty).toBe("2026-03-10");
    expect(levels[day]?.onShelfMl).toBeLessThan(500);
    expect(levels[day - 1]?.onShelfMl).toBeGreaterThanOrEqual(1000);
  });
  it("gives this morning alone for no days, and refuses half a day", () => {
    expect(stockLevels({ ...shelf, days: 0 })).toEqual([{ date: "2026-03-02", onShelfMl: 2500 }]);
    expect(() => stockLevels({ ...shelf, days: 0.5 })).toThrow("whole");
  });
});

describe("weekLoad", () => {
  const rows = [
    { date: "2026-03-01", format: "120", count: 99 },
    { date: "2026-03-02", format: "120", count: 4 },
    { date: "2026-03-06", format: "120", count: 2 },
    { date: "2026-03-06", format: "135-36", count: 10 },
    { date: "2026-03-09", format: "120", count: 99 },
  ];
  it("takes the seven days up to the date, by weekday and by format", () => {
    const week = weekLoad(rows, { to: "2026-03-08" });
    expect(week.from).toBe("2026-03-02");
    expect(week.areaM2).toBeCloseTo(6 * 0.0507375 + 0.567, 12);
    expect(week.areaM2ByWeekday[0]).toBeCloseTo(4 * 0.0507375, 12);
    expect(week.areaM2ByWeekday[4]).toBeCloseTo(2 * 0.0507375 + 0.567, 12);
    expect(week.byFormat.map(({ format, count }) => [format, count])).toEqual([
      ["120", 6],
      ["135-36", 10],
    ]);
  });
  it("sums the same by weekday as in all", () => {
    const week = weekLoad(rows, { to: "2026-03-06", reading: "trade" });
    const sum = week.areaM2ByWeekday.reduce((total, area) => total + area, 0);
    expect(sum).toBeCloseTo(week.areaM2, 12);
  });
  it("names the days without rows", () => {
    expect(weekLoad(rows, { to: "2026-03-08" }).daysWithout).toHaveLength(5);
    expect(weekLoad([], { to: "2026-03-08" })).toMatchObject({ areaM2: 0, byFormat: [] });
  });
  it("refuses a date that does not exist and an unknown format", () => {
    expect(() => weekLoad(rows, { to: "8.3.2026" })).toThrow('"2026-03-02"');
    const wrong = [{ date: "2026-03-02", format: "121", count: 1 }];
    expect(() => weekLoad(wrong, { to: "2026-03-08" })).toThrow('did you mean "120"');
    expect(() => weekLoad({} as [], { to: "2026-03-08" })).toThrow("write a list");
  });
});
