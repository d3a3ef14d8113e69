import { describe, expect, it } from "vitest";
import {
  activationEnergyModel,
  constantTemperature,
  coolingInWaterBath,
  developUntil,
  doseForProfile,
  doseUnderCourse,
  factorPerTenDegreesModel,
  loggedTemperatures,
  newtonCooling,
  publishedTableModel,
  type TemperatureCourse,
} from "wetside/development";
import { integrate } from "wetside/numerics";

const twice = factorPerTenDegreesModel({ factorPerTenDegrees: 2 });
const arrhenius = activationEnergyModel({ activationEnergyKJPerMol: 60 });
const cooling = newtonCooling({ startTemperatureC: 24, surroundingsC: 18, ratePerMin: 0.02 });

// Closed form against quadrature asked for 1e-12: the larger of the two errors.
const QUADRATURE = 1e-11;

function numeric(course: TemperatureCourse, duration: number): number {
  return integrate((t) => twice.relativeRate(course.temperatureAt(t)), 0, duration, {
    relativeTolerance: 1e-12,
  }).value;
}

describe("doseUnderCourse", () => {
  it("is the time itself at the reference temperature", () => {
    const dose = doseUnderCourse({
      model: arrhenius,
      course: constantTemperature(20),
      durationMin: 9,
    });
    expect(dose.doseMin).toBeCloseTo(9, 13);
    expect(dose.effectiveTemperatureC).toBe(20);
    expect(dose.method).toBe("closed form");
  });
  it("agrees in closed form with quadrature for Newton cooling, down and up", () => {
    for (const [start, room, rate] of [
      [24, 18, 0.02],
      [16, 26, 0.2],
      [20, 20, 0.05],
      [26, 18, 1e-9],
      [22, 18, 8],
    ] as const) {
      const course = newtonCooling({
        startTemperatureC: start,
        surroundingsC: room,
        ratePerMin: rate,
      });
      const dose = doseUnderCourse({ model: twice, course, durationMin: 11 });
      expect(dose.method).toBe("closed form");
      expect(Math.abs(dose.doseMin / numeric(course, 11) - 1)).toBeLessThan(QUADRATURE);
    }
  });
  it("agrees in closed form with quadrature for a logged profile", () => {
    const course = loggedTemperatures([
      { timeMin: 0, temperatureC: 24 },
      { timeMin: 2, temperatureC: 22 },
      { timeMin: 7, temperatureC: 22 },
      { timeMin: 9, temperatureC: 18.5 },
    ]);
    const pieces = [
      [0, 2],
      [2, 7],
      [7, 9],
    ] as const;
    const sum = pieces.reduce(
      (total, [from, to]) =>
        total +
        integrate((t) => twice.relativeRate(course.temperatureAt(t)), from, to, {
          relativeTolerance: 1e-13,
        }).value,
      0,
    );
    const dose = doseUnderCourse({ model: twice, course, durationMin: 9 });
    expect(Math.abs(dose.doseMin / sum - 1)).toBeLessThan(QUADRATURE);
  });
  it("says how exact it is where it has to integrate", () => {
    const dose = doseUnderCourse({ model: arrhenius, course: cooling, durationMin: 10 });
    expect(dose.method).toBe("adaptive quadrature");
    const fine = integrate((t) => arrhenius.relativeRate(cooling.temperatureAt(t)), 0, 10, {
      relativeTolerance: 1e-13,
    });
    expect(Math.abs(dose.doseMin - fine.value)).toBeLessThanOrEqual(dose.errorBoundMin);
    expect(dose.errorBoundMin).toBeLessThan(1e-8);
  });
  it("adds up: two stretches together give the whole", () => {
    const whole = doseUnderCourse({ model: twice, course: cooling, durationMin: 10 }).doseMin;
    const first = doseUnderCourse({ model: twice, course: cooling, durationMin: 4 }).doseMin;
    const rest = newtonCooling({
      startTemperatureC: cooling.temperatureAt(4),
      surroundingsC: 18,
      ratePerMin: 0.02,
    });
    const second = doseUnderCourse({ model: twice, course: rest, durationMin: 6 }).doseMin;
    expect(first + second).toBeCloseTo(whole, 12);
  });
  it("has an effective temperature between the coldest and the hottest that gives the same dose", () => {
    const dose = doseUnderCourse({ model: arrhenius, course: cooling, durationMin: 10 });
    expect(dose.effectiveTemperatureC).toBeGreaterThan(dose.endTemperatureC);
    expect(dose.effectiveTemperatureC).toBeLessThan(dose.startTemperatureC);
    const steady = constantTemperature(dose.effectiveTemperatureC);
    const same = doseUnderCourse({ model: arrhenius, course: steady, durationMin: 10 });
    expect(same.doseMin).toBeCloseTo(dose.doseMin, 9);
  });
  it("works with a printed table and a tank in a water bath", () => {
    const table = publishedTableModel({
      rows: [
        { temperatureC: 18, timeMin: 9 },
        { temperatureC: 21, timeMin: 7 },
        { temperatureC: 24, timeMin: 5.5 },
      ],
    });
    const course = coolingInWaterBath({
      tankVolumeMl: 600,
      startTemperatureC: 24,
      tankRatePerMin: 0.1,
      bathVolumeMl: 6000,
      bathStartTemperatureC: 20,
      bathRatePerMin: 0.003,
      roomC: 16,
    });
    const dose = doseUnderCourse({ model: table, course, durationMin: 8 });
    expect(dose.doseMin).toBeGreaterThan(8);
    expect(dose.doseMin).toBeLessThan(8 * table.relativeRate(24));
  });
  it("warns when the log ends before the development does", () => {
    const course = loggedTemperatures([
      { timeMin: 0, temperatureC: 21 },
      { timeMin: 5, temperatureC: 20 },
    ]);
    const dose = doseUnderCourse({ model: twice, course, durationMin: 8 });
    expect(dose.warnings.join()).toContain("the log ends at 5 min");
  });
  it("refuses a course that leaves the model's reach, and a duration of 0", () => {
    const cold = newtonCooling({ startTemperatureC: 20, surroundingsC: 0, ratePerMin: 0.2 });
    expect(() => doseUnderCourse({ model: twice, course: cold, durationMin: 10 })).toThrow(
      "rests on evidence",
    );
    expect(() => doseUnderCourse({ model: twice, course: cooling, durationMin: 0 })).toThrow(
      "durationMin",
    );
  });
});

describe("doseForProfile", () => {
  it("is the dose from the first reading to the last", () => {
    const profile = [
      { timeMin: 12, temperatureC: 20 },
      { timeMin: 20, temperatureC: 20 },
    ];
    expect(doseForProfile({ model: twice, profile }).doseMin).toBe(8);
  });
});

describe("a log of a reading a second over days", () => {
  it("is summed in one pass and poured out in a few", () => {
    const waves = 63;
    const readings = Array.from({ length: Math.round(2 * Math.PI * 500 * waves) + 1 }, (_, i) => ({
      timeMin: i / 60,
      temperatureC: 20 + Math.sin(i / 500),
    }));
    const dose = doseForProfile({ model: twice, profile: readings });
    // The mean of 2^(sin/10) over whole waves is the Bessel function I0(ln 2/10).
    const x = Math.LN2 / 10;
    const bessel = 1 + x ** 2 / 4 + x ** 4 / 64;
    // Straight lines between readings lie inside a wave by (1/500)²/12 of it, the last wave ends
    // up to half a second from its end.
    expect(dose.doseMin / dose.durationMin).toBeCloseTo(bessel, 6);
    const course = loggedTemperatures(readings);
    const plan = developUntil({ model: twice, targetMin: 2000, course });
    expect(plan.dose.doseMin).toBeCloseTo(2000, 6);
  });
});

describe("developUntil", () => {
  it("pours out at the printed time when the bath keeps the printed temperature", () => {
    const plan = developUntil({ model: arrhenius, targetMin: 9, course: constantTemperature(20) });
    expect(plan.timeMin).toBeCloseTo(9, 9);
    expect(plan.errorIfUncorrectedPercent).toBeCloseTo(0, 9);
    expect(plan.errorIfStartTemperatureOnlyPercent).toBeCloseTo(0, 9);
  });
  it("reaches exactly the target dose", () => {
    const plan = developUntil({ model: arrhenius, targetMin: 9, course: cooling });
    expect(plan.dose.doseMin).toBeCloseTo(9, 8);
  });
  it("takes a target time that belongs to another temperature than the model's", () => {
    const at24 = developUntil({
      model: twice,
      targetMin: 6,
      targetTemperatureC: 24,
      course: constantTemperature(24),
    });
    expect(at24.timeMin).toBeCloseTo(6, 10);
  });
  it("says what correcting for the start temperature alone would have missed", () => {
    const plan = developUntil({ model: arrhenius, targetMin: 9, course: cooling });
    expect(plan.timeForStartTemperatureMin).toBeLessThan(plan.timeMin);
    expect(plan.errorIfStartTemperatureOnlyPercent).toBeLessThan(0);
    const missed = doseUnderCourse({
      model: arrhenius,
      course: cooling,
      durationMin: plan.timeForStartTemperatureMin,
    });
    expect(plan.errorIfStartTemperatureOnlyPercent).toBeCloseTo(100 * (missed.doseMin / 9 - 1), 10);
  });
  it("says when to begin pouring", () => {
    const plan = developUntil({ model: twice, targetMin: 9, course: cooling, drainMin: 0.25 });
    expect(plan.startPouringMin).toBeCloseTo(plan.timeMin - 0.25, 12);
  });
  it("follows a log with many breaks and goes on at its last temperature", () => {
    const course = loggedTemperatures(
      Array.from({ length: 9 }, (_, i) => ({ timeMin: i, temperatureC: 22 - 0.2 * i })),
    );
    const plan = developUntil({ model: twice, targetMin: 12, course });
    expect(plan.timeMin).toBeGreaterThan(8);
    expect(plan.dose.doseMin).toBeCloseTo(12, 8);
    expect(plan.warnings.join()).toContain("the log ends at 8 min");
  });
  it("says how far it got when the bath cools out of reach first", () => {
    const cold = newtonCooling({ startTemperatureC: 20, surroundingsC: 4, ratePerMin: 0.2 });
    expect(() => developUntil({ model: twice, targetMin: 20, course: cold })).toThrow(
      /it passes 12 °C with \d+(\.\d+)? % of the development done/,
    );
  });
  it("finishes in a room out of reach when the development is done before", () => {
    const cold = newtonCooling({ startTemperatureC: 22, surroundingsC: 4, ratePerMin: 0.02 });
    const plan = developUntil({ model: twice, targetMin: 8, course: cold });
    expect(plan.dose.doseMin).toBeCloseTo(8, 8);
    expect(plan.dose.endTemperatureC).toBeGreaterThan(12);
  });
  it("warns of a short time and refuses a far too short one", () => {
    const hot = constantTemperature(26);
    expect(developUntil({ model: twice, targetMin: 7, course: hot }).warnings.join()).toContain(
      "uneven",
    );
    expect(() => developUntil({ model: twice, targetMin: 2.5, course: hot })).toThrow("not even");
  });
});

describe("the stated error of a dose", () => {
  it("holds for a bath that warms so far that the terms of its series cancel", () => {
    const range = { minC: 0, maxC: 45 };
    for (const factorPerTenDegrees of [2, 3, 6]) {
      const model = factorPerTenDegreesModel({ factorPerTenDegrees, range, refuseBeyondC: 20 });
      for (const [startTemperatureC, surroundingsC] of [
        [0, 45],
        [10, 38],
        [45, 0],
      ] as const) {
        for (const ratePerMin of [1e-3, 0.02, 0.5]) {
          const course = newtonCooling({ startTemperatureC, surroundingsC, ratePerMin });
          const dose = doseUnderCourse({ model, course, durationMin: 60 });
          const rate = (t: number) => model.relativeRate(course.temperatureAt(t));
          const summed = integrate(rate, 0, 60, { relativeTolerance: 1e-14 });
          // Both sums round in their last digits.
          const rounding = 8 * Number.EPSILON * summed.value;
          expect(Math.abs(dose.doseMin - summed.value)).toBeLessThanOrEqual(
            dose.errorBoundMin + summed.errorBound + rounding,
          );
          expect(dose.errorBoundMin / dose.doseMin).toBeLessThan(1e-9);
        }
      }
    }
  });
});
