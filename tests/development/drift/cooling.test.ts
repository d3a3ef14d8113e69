import { describe, expect, it } from "vitest";
import {
  constantTemperature,
  coolingFromTwoReadings,
  coolingInWaterBath,
  coolingOfTank,
  loggedTemperatures,
  newtonCooling,
} from "wetside/development";

// Two-body cooling integrated with SciPy 1.17.1 solve_ivp, DOP853, rtol and atol 1e-12.
const TWO_BODIES = { at10: [21.53041993, 20.12444658], at60: [19.81296415, 19.70417811] } as const;
const PRINTED_8 = 5e-9;

describe("newtonCooling", () => {
  it("starts where it starts and ends at its surroundings", () => {
    const course = newtonCooling({ startTemperatureC: 38, surroundingsC: 20, ratePerMin: 0.1 });
    expect(course.temperatureAt(0)).toBe(38);
    expect(course.temperatureAt(1e4)).toBe(20);
    expect(course.temperatureAt(course.halfTimeMin)).toBeCloseTo(29, 12);
    expect([course.lowestC, course.highestC]).toEqual([20, 38]);
  });
  it("keeps its temperature at rate 0, with finite time constants", () => {
    const still = newtonCooling({ startTemperatureC: 24, surroundingsC: 18, ratePerMin: 0 });
    expect(still.temperatureAt(500)).toBe(24);
    expect(Number.isFinite(still.timeConstantMin)).toBe(true);
    expect([still.lowestC, still.highestC]).toEqual([24, 24]);
  });
  it("recognises a room in °F", () => {
    expect(() =>
      newtonCooling({ startTemperatureC: 24, surroundingsC: 68, ratePerMin: 0.01 }),
    ).toThrow("68 °F would be 20.0 °C");
  });
});

describe("coolingFromTwoReadings", () => {
  it("passes through both readings, also when the first was not at minute 0", () => {
    const course = coolingFromTwoReadings({
      first: { timeMin: 5, temperatureC: 36 },
      second: { timeMin: 20, temperatureC: 33.5 },
      surroundingsC: 21,
    });
    expect(course.temperatureAt(5)).toBeCloseTo(36, 12);
    expect(course.temperatureAt(20)).toBeCloseTo(33.5, 12);
    expect(course.startTemperatureC).toBeGreaterThan(36);
  });
  it("works for a bath that warms up", () => {
    const course = coolingFromTwoReadings({
      first: { timeMin: 0, temperatureC: 14 },
      second: { timeMin: 10, temperatureC: 16 },
      surroundingsC: 20,
    });
    expect(course.ratePerMin).toBeCloseTo(Math.log(6 / 4) / 10, 14);
  });
  it("knows a rate of 0 from two equal readings, and its uncertainty", () => {
    const course = coolingFromTwoReadings({
      first: { timeMin: 0, temperatureC: 24 },
      second: { timeMin: 10, temperatureC: 24 },
      surroundingsC: 20,
      readingUncertaintyC: 0.2,
    });
    expect(course.ratePerMin).toBe(0);
    expect(course.rateUncertaintyPerMin).toBeCloseTo(Math.hypot(0.05, 0.05) / 10, 14);
  });
  it("refuses readings that cross the room's temperature, move away from it or are out of order", () => {
    const first = { timeMin: 0, temperatureC: 24 };
    const call = (timeMin: number, temperatureC: number) => () =>
      coolingFromTwoReadings({ first, second: { timeMin, temperatureC }, surroundingsC: 20 });
    expect(call(10, 19)).toThrow("moves towards its surroundings");
    expect(call(10, 20)).toThrow("moves towards its surroundings");
    expect(call(10, 25)).toThrow("something else heated or cooled it");
    expect(call(0, 22)).toThrow("the second reading comes after the first");
  });
});

describe("coolingOfTank", () => {
  const tank = { volumeMl: 600, diameterMm: 90, heightMm: 110 };
  const base = { tank, startTemperatureC: 24, surroundingsC: 18 };
  it("cools a bigger tank of the same shape more slowly", () => {
    const big = { volumeMl: 600 * 8, diameterMm: 180, heightMm: 220 };
    const small = coolingOfTank(base).ratePerMin;
    expect(coolingOfTank({ ...base, tank: big }).ratePerMin).toBeCloseTo(small / 2, 12);
  });
  it("takes a given surface in place of a cylinder", () => {
    const surfaceCm2 = coolingOfTank(base).surfaceCm2;
    const same = coolingOfTank({ ...base, tank: { volumeMl: 600, surfaceCm2 } });
    expect(same.ratePerMin).toBe(coolingOfTank(base).ratePerMin);
  });
  it("exchanges faster in water than in air, and slower through a thick plastic wall", () => {
    const water = coolingOfTank({ ...base, medium: "still water" }).ratePerMin;
    expect(water).toBeGreaterThan(coolingOfTank(base).ratePerMin);
    const walled = { ...tank, wall: { material: "polypropylene", thicknessMm: 4 } };
    const thick = coolingOfTank({ ...base, tank: walled, medium: "still water" }).ratePerMin;
    expect(thick).toBeLessThan(water);
  });
  it("counts steel and spirals as heat to be moved", () => {
    const steel = { ...tank, vessels: [{ massG: 400, material: "stainless steel" }] };
    expect(coolingOfTank({ ...base, tank: steel }).ratePerMin).toBeLessThan(
      coolingOfTank(base).ratePerMin,
    );
  });
  it("marks the coefficient as an assumption and brackets the rate by the published range", () => {
    const course = coolingOfTank(base);
    expect(course.assumptions.join()).toContain("published values run from 2 to 25");
    expect(course.slowestRatePerMin).toBeLessThan(course.ratePerMin);
    expect(course.fastestRatePerMin).toBeGreaterThan(course.ratePerMin);
  });
  it("refuses more liquid than the cylinder holds", () => {
    const tank = { volumeMl: 5000, diameterMm: 90, heightMm: 180 };
    expect(() => coolingOfTank({ ...base, tank })).toThrow("90 × 180 mm holds 1145 mL");
  });
  it("asks for a surface, and names the media and materials it knows", () => {
    expect(() => coolingOfTank({ ...base, tank: { volumeMl: 600 } })).toThrow("surfaceCm2");
    expect(() => coolingOfTank({ ...base, medium: "stil air" })).toThrow(
      'did you mean "still air"?',
    );
  });
});

describe("coolingInWaterBath", () => {
  const given = {
    tankVolumeMl: 600,
    startTemperatureC: 24,
    tankRatePerMin: 0.1,
    bathVolumeMl: 6000,
    bathStartTemperatureC: 20,
    bathRatePerMin: 0.003,
    roomC: 16,
  };
  it("agrees with a numerical solution of the two equations", () => {
    const course = coolingInWaterBath(given);
    const at = (t: number) => [course.temperatureAt(t), course.bathTemperatureAt(t)];
    for (const [i, expected] of TWO_BODIES.at10.entries()) {
      expect(Math.abs((at(10)[i] ?? 0) - expected)).toBeLessThan(PRINTED_8);
    }
    for (const [i, expected] of TWO_BODIES.at60.entries()) {
      expect(Math.abs((at(60)[i] ?? 0) - expected)).toBeLessThan(PRINTED_8);
    }
  });
  it("keeps the heat of tank and bath together when nothing goes to the room", () => {
    const course = coolingInWaterBath({ ...given, bathRatePerMin: 0 });
    for (const t of [0, 1, 30, 1000]) {
      const heat = 600 * course.temperatureAt(t) + 6000 * course.bathTemperatureAt(t);
      expect(heat).toBeCloseTo(600 * 24 + 6000 * 20, 6);
    }
  });
  it("becomes Newton cooling when the bath is endless", () => {
    const course = coolingInWaterBath({ ...given, bathVolumeMl: 6e12, bathRatePerMin: 0 });
    const law = newtonCooling({ startTemperatureC: 24, surroundingsC: 20, ratePerMin: 0.1 });
    expect(course.temperatureAt(7)).toBeCloseTo(law.temperatureAt(7), 8);
  });
  it("stands still without exchange, and ends in the room with it", () => {
    const still = coolingInWaterBath({ ...given, tankRatePerMin: 0, bathRatePerMin: 0 });
    expect([still.temperatureAt(99), still.bathTemperatureAt(99)]).toEqual([24, 20]);
    expect(coolingInWaterBath(given).temperatureAt(1e5)).toBeCloseTo(16, 9);
  });
  it("keeps its digits where one body is tiny, and refuses one that is next to nothing", () => {
    const drop = { tankVolumeMl: 1e7, tankRatePerMin: 1, bathVolumeMl: 1, bathRatePerMin: 0.1 };
    const course = coolingInWaterBath({ ...given, ...drop });
    // The drop passes on k1·k2/(k1 + k1·V1/V2 + k2) of the difference a minute: 1 % in a million.
    const slow = 0.1 / (1 + 1e7 + 0.1);
    expect(course.temperatureAt(1e6)).toBeCloseTo(16 + 8 * Math.exp(-slow * 1e6), 5);
    expect(() => coolingInWaterBath({ ...given, bathVolumeMl: 1e-200 })).toThrow(
      "at least 0.001 mL",
    );
  });
});

describe("loggedTemperatures", () => {
  it("is straight between readings, held after the last, and counts from the first", () => {
    const course = loggedTemperatures([
      { timeMin: 100, temperatureC: 22 },
      { timeMin: 104, temperatureC: 20 },
      { timeMin: 110, temperatureC: 20.6 },
    ]);
    expect(course.temperatureAt(0)).toBe(22);
    expect(course.temperatureAt(2)).toBe(21);
    expect(course.temperatureAt(4)).toBe(20);
    expect(course.temperatureAt(7)).toBeCloseTo(20.3, 12);
    expect(course.temperatureAt(50)).toBe(20.6);
    expect(course.knownUntilMin).toBe(10);
    expect(course.breakpointsMin).toEqual([4, 10]);
  });
  it("refuses no, one, repeated and unordered readings, each by name", () => {
    expect(() => loggedTemperatures([])).toThrow("at least two readings");
    expect(() => loggedTemperatures([{ timeMin: 0, temperatureC: 20 }])).toThrow(
      "use constantTemperature",
    );
    const log = (second: number) => () =>
      loggedTemperatures([
        { timeMin: 3, temperatureC: 20 },
        { timeMin: second, temperatureC: 21 },
      ]);
    expect(log(3)).toThrow("reading 2 must be later than 3 min");
    expect(log(1)).toThrow("in order of time");
    expect(log(Number.NaN)).toThrow("readings[1].timeMin");
  });
  it("recognises a log in °F", () => {
    expect(() =>
      loggedTemperatures([
        { timeMin: 0, temperatureC: 20 },
        { timeMin: 1, temperatureC: 70 },
      ]),
    ).toThrow("70 °F would be 21.1 °C");
  });
  it("finds its place in a long log without walking it", () => {
    const long = loggedTemperatures(
      Array.from({ length: 100_000 }, (_, i) => ({ timeMin: i / 60, temperatureC: 20 + (i % 2) })),
    );
    expect(long.temperatureAt(50_000.5 / 60)).toBeCloseTo(20.5, 6);
    expect([long.lowestC, long.highestC]).toEqual([20, 21]);
  });
});

describe("constantTemperature", () => {
  it("keeps it", () => {
    expect(constantTemperature(21.5).temperatureAt(1e6)).toBe(21.5);
    expect(() => constantTemperature(212)).toThrow("212");
  });
});
