import { describe, expect, it } from "vitest";
import {
  activationEnergyModel,
  compensateTime,
  coolingInWaterBath,
  developUntil,
  doseForProfile,
  doseUnderCourse,
  exponentialApproach,
  factorPerTenDegreesModel,
  fitTimeTemperature,
  iceToCool,
  mixedTemperature,
  newtonCooling,
  publishedTableModel,
  type RateModel,
  temperatureForTime,
  temperWater,
  timeForContrast,
  waterTemperatureFor,
} from "wetside/development";
import { integrate } from "wetside/numerics";
import fc from "./fast-check.ts";

// Times are compared relatively: a few roundings of exponentials and quotients.
const DOUBLE = 1e-12;
const ROOT = 1e-9;

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const wide = { range: { minC: 10, maxC: 34 }, refuseBeyondC: 6 };

const laws: fc.Arbitrary<RateModel> = fc.oneof(
  number(5, 120).map((activationEnergyKJPerMol) =>
    activationEnergyModel({ activationEnergyKJPerMol, ...wide }),
  ),
  number(1.05, 4).map((factorPerTenDegrees) =>
    factorPerTenDegreesModel({ factorPerTenDegrees, ...wide }),
  ),
  fc
    .array(number(0.5, 20), { minLength: 3, maxLength: 8 })
    .map((steps) => {
      const times = steps.map((_, i) => steps.slice(i).reduce((sum, each) => sum + each, 0));
      return times.map((timeMin, i) => ({ temperatureC: 12 + 2.5 * i, timeMin }));
    })
    .map((rows) => publishedTableModel({ rows, ...wide })),
);
const warmth = number(10, 34);
const anyTime = { evenDevelopment: { warnBelowMin: 0, refuseBelowMin: 0 } };
const off = (a: number, b: number) => Math.abs(a / b - 1);

describe("correcting a time for temperature", () => {
  it("there and back is the identity", () => {
    fc.assert(
      fc.property(laws, warmth, warmth, number(1, 60), (model, from, to, timeMin) => {
        const there = compensateTime({
          timeMin,
          fromTemperatureC: from,
          toTemperatureC: to,
          model,
          ...anyTime,
        });
        const back = compensateTime({
          timeMin: there.timeMin,
          fromTemperatureC: to,
          toTemperatureC: from,
          model,
          ...anyTime,
        });
        expect(off(back.timeMin, timeMin)).toBeLessThan(DOUBLE);
      }),
    );
  });
  it("by way of a third temperature gives the same as directly", () => {
    fc.assert(
      fc.property(laws, warmth, warmth, warmth, (model, a, b, c) => {
        const step = (timeMin: number, fromTemperatureC: number, toTemperatureC: number) =>
          compensateTime({ timeMin, fromTemperatureC, toTemperatureC, model, ...anyTime }).timeMin;
        expect(off(step(step(9, a, b), b, c), step(9, a, c))).toBeLessThan(DOUBLE);
      }),
    );
  });
  it("never makes a hotter bath take longer", () => {
    fc.assert(
      fc.property(laws, warmth, warmth, warmth, (model, from, one, other) => {
        const time = (toTemperatureC: number) =>
          compensateTime({
            timeMin: 9,
            fromTemperatureC: from,
            toTemperatureC,
            model,
            ...anyTime,
          }).timeMin;
        const [cold, hot] = [Math.min(one, other), Math.max(one, other)];
        expect(time(hot)).toBeLessThanOrEqual(time(cold) * (1 + DOUBLE));
      }),
    );
  });
  it("is undone by asking for the temperature of a time", () => {
    fc.assert(
      fc.property(number(5, 120), warmth, warmth, (activationEnergyKJPerMol, from, to) => {
        const model = activationEnergyModel({ activationEnergyKJPerMol, ...wide });
        const there = compensateTime({
          timeMin: 9,
          fromTemperatureC: from,
          toTemperatureC: to,
          model,
          ...anyTime,
        });
        const found = temperatureForTime({
          timeMin: 9,
          fromTemperatureC: from,
          wantedTimeMin: there.timeMin,
          model,
          ...anyTime,
        });
        expect(found.temperatureC).toBeCloseTo(to, 7);
      }),
    );
  });
});

describe("a bath that drifts", () => {
  const courses = fc
    .tuple(number(14, 30), number(10, 34), number(0, 1))
    .map(([startTemperatureC, surroundingsC, ratePerMin]) =>
      newtonCooling({ startTemperatureC, surroundingsC, ratePerMin }),
    );
  it("gives in closed form what quadrature gives", () => {
    fc.assert(
      fc.property(courses, number(1.05, 4), number(0.1, 60), (course, factor, durationMin) => {
        const model = factorPerTenDegreesModel({ factorPerTenDegrees: factor, ...wide });
        const exact = doseUnderCourse({ model, course, durationMin });
        const rate = (t: number) => model.relativeRate(course.temperatureAt(t));
        const numeric = integrate(rate, 0, durationMin, { relativeTolerance: 1e-12 });
        expect(exact.method).toBe("closed form");
        expect(off(exact.doseMin, numeric.value)).toBeLessThan(1e-10);
      }),
    );
  });
  it("gives a dose between those of its coldest and its hottest moment", () => {
    fc.assert(
      fc.property(laws, courses, number(0.1, 60), (model, course, durationMin) => {
        const { doseMin } = doseUnderCourse({ model, course, durationMin });
        const rates = [0, durationMin].map((t) => model.relativeRate(course.temperatureAt(t)));
        expect(doseMin).toBeGreaterThanOrEqual(Math.min(...rates) * durationMin * (1 - ROOT));
        expect(doseMin).toBeLessThanOrEqual(Math.max(...rates) * durationMin * (1 + ROOT));
      }),
    );
  });
  it("is poured out exactly when the dose is the target", () => {
    fc.assert(
      fc.property(laws, courses, number(3, 30), (model, course, targetMin) => {
        const plan = developUntil({ model, course, targetMin, ...anyTime });
        const target = targetMin * model.relativeRate(model.referenceTemperatureC);
        expect(off(plan.dose.doseMin, target)).toBeLessThan(ROOT);
      }),
      { numRuns: 60 },
    );
  });
  it("gives the same dose however finely a straight stretch is logged", () => {
    fc.assert(
      fc.property(laws, warmth, warmth, fc.integer({ min: 1, max: 40 }), (model, a, b, n) => {
        const log = (pieces: number) =>
          Array.from({ length: pieces + 1 }, (_, i) => ({
            timeMin: (10 * i) / pieces,
            temperatureC: a + ((b - a) * i) / pieces,
          }));
        const coarse = doseForProfile({ model, profile: log(1) }).doseMin;
        expect(off(doseForProfile({ model, profile: log(n) }).doseMin, coarse)).toBeLessThan(ROOT);
      }),
    );
  });
  it("keeps the heat of tank and water bath together when none goes to the room", () => {
    fc.assert(
      fc.property(
        warmth,
        warmth,
        number(0, 2),
        number(50, 2000),
        number(0, 500),
        (a, b, k, v, t) => {
          const course = coolingInWaterBath({
            tankVolumeMl: v,
            startTemperatureC: a,
            tankRatePerMin: k,
            bathVolumeMl: 3000,
            bathStartTemperatureC: b,
            bathRatePerMin: 0,
            roomC: 20,
          });
          const heat = v * course.temperatureAt(t) + 3000 * course.bathTemperatureAt(t);
          expect(off(heat, v * a + 3000 * b)).toBeLessThan(DOUBLE);
        },
      ),
    );
  });
});

describe("tempering", () => {
  const vessel = fc.record({
    massG: number(0, 800),
    temperatureC: number(5, 35),
    material: fc.constantFrom("stainless steel", "ABS", "glass"),
  });
  it("conserves energy: hot and cold water and tank come to the target", () => {
    fc.assert(
      fc.property(number(50, 5000), number(40, 60), number(5, 18), vessel, (v, hot, cold, tank) => {
        const input = { totalMl: v, targetC: 24, hotC: hot, coldC: cold, vessels: [tank] };
        const reach = (t: number) =>
          mixedTemperature({ liquids: [{ volumeMl: v, temperatureC: t }], vessels: [tank] });
        fc.pre(reach(cold).temperatureC < 24 && reach(hot).temperatureC > 24);
        const mix = temperWater(input);
        expect(off(mix.hotMl + mix.coldMl, v)).toBeLessThan(DOUBLE);
        const liquids = [
          { volumeMl: mix.hotMl, temperatureC: hot },
          { volumeMl: mix.coldMl, temperatureC: cold },
        ];
        expect(mixedTemperature({ liquids, vessels: [tank] }).temperatureC).toBeCloseTo(24, 9);
      }),
    );
  });
  it("answers with a pouring temperature that comes to rest at the target", () => {
    fc.assert(
      fc.property(number(200, 2000), vessel, (waterMl, tank) => {
        const { waterC } = waterTemperatureFor({ waterMl, targetC: 20, vessels: [tank] });
        const liquids = [{ volumeMl: waterMl, temperatureC: waterC }];
        expect(mixedTemperature({ liquids, vessels: [tank] }).temperatureC).toBeCloseTo(20, 9);
      }),
    );
  });
  it("balances ice: mixing in the meltwater at 0 °C, less its latent heat, gives the target", () => {
    fc.assert(
      fc.property(number(100, 5000), number(21, 40), (volumeMl, temperatureC) => {
        const { iceG } = iceToCool({ volumeMl, temperatureC, targetC: 20 });
        const heat = volumeMl * 4.18 * temperatureC - iceG * 334;
        expect(heat / ((volumeMl + iceG) * 4.18)).toBeCloseTo(20, 9);
      }),
    );
  });
});

describe("fitting", () => {
  it("finds the energy of any table that follows the law", () => {
    fc.assert(
      fc.property(number(5, 120), number(2, 40), (activationEnergyKJPerMol, timeMin) => {
        const law = activationEnergyModel({ activationEnergyKJPerMol, ...wide });
        const rows = [16, 18, 20, 22, 26].map((temperatureC) => ({
          temperatureC,
          timeMin: timeMin / law.relativeRate(temperatureC),
        }));
        const fit = fitTimeTemperature({ rows });
        expect(off(fit.coefficient.value, activationEnergyKJPerMol)).toBeLessThan(1e-8);
      }),
    );
  });
  it("finds the time of any contrast that a curve reaches", () => {
    fc.assert(
      fc.property(number(0.4, 2), number(0.05, 0.5), number(4, 14), (ceiling, ratePerMin, t) => {
        const range = { minMin: 4, maxMin: 14 };
        const curve = exponentialApproach({ ceiling, ratePerMin, range });
        const contrastIndex = curve.contrastAt(t);
        expect(timeForContrast({ curve, contrastIndex }).timeMin).toBeCloseTo(t, 7);
      }),
    );
  });
});
