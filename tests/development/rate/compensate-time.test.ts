import { describe, expect, it } from "vitest";
import {
  activationEnergyModel,
  compensateTime,
  factorPerTenDegreesModel,
  temperatureForTime,
} from "wetside/development";
import { InputError } from "wetside/input";

const twice = factorPerTenDegreesModel({ factorPerTenDegrees: 2 });

describe("compensateTime", () => {
  it("changes nothing at the same temperature", () => {
    const same = compensateTime({ timeMin: 8, fromTemperatureC: 20, toTemperatureC: 20 });
    expect(same.timeMin).toBe(8);
    expect(same.alternatives.map((each) => each.timeMin)).toEqual([8, 8, 8, 8, 8]);
    expect(same.warnings).toEqual([]);
  });
  it("shows what factors from 1.4 to 3.0 would have given, and their range", () => {
    const answer = compensateTime({ timeMin: 10, fromTemperatureC: 20, toTemperatureC: 22.5 });
    expect(answer.alternatives.map((each) => each.factorPerTenDegrees)).toEqual([
      1.4, 1.7, 2, 2.5, 3,
    ]);
    expect(answer.longestMin).toBeCloseTo(10 / 1.4 ** 0.25, 12);
    expect(answer.shortestMin).toBeCloseTo(10 / 3 ** 0.25, 12);
    expect(answer.timeMin).toBeCloseTo(10 / 2 ** 0.25, 12);
  });
  it("does not warn of 20 °C because the time it was given belongs to 24 °C", () => {
    const back = compensateTime({ timeMin: 6, fromTemperatureC: 24, toTemperatureC: 20 });
    expect(back.warnings.join()).not.toContain("outside the range");
  });
  it("says that the default was used, and warns when the choice matters by more than a tenth", () => {
    const far = compensateTime({ timeMin: 10, fromTemperatureC: 20, toTemperatureC: 23 });
    expect(far.assumptions[0]).toContain("no rate model was given");
    expect(far.warnings.join()).toContain("anywhere from");
    const own = compensateTime({
      timeMin: 10,
      fromTemperatureC: 20,
      toTemperatureC: 23,
      model: twice,
    });
    expect(own.warnings).toEqual([]);
  });
  it("warns outside the model's range and refuses far outside, with the reason", () => {
    const call = (toTemperatureC: number) => () =>
      compensateTime({ timeMin: 20, fromTemperatureC: 20, toTemperatureC, model: twice });
    expect(call(27)().warnings[0]).toContain("27 °C lies 1 °C outside the range 18 to 26 °C");
    expect(call(33)).toThrow("write a temperature from 12 to 32 °C");
  });
  it("recognises a Fahrenheit reading", () => {
    const call = (toTemperatureC: number) => () =>
      compensateTime({ timeMin: 8, fromTemperatureC: 20, toTemperatureC });
    expect(call(98)).toThrow("98 °F would be 36.7 °C");
    expect(call(68)).toThrow("68 °F would be 20.0 °C");
    expect(() => compensateTime({ timeMin: 8, fromTemperatureC: 68, toTemperatureC: 20 })).toThrow(
      "fromTemperatureC is 68",
    );
  });
  it("refuses a bath hotter than the emulsion stands, unless another limit is given", () => {
    const hot = activationEnergyModel({
      activationEnergyKJPerMol: 60,
      referenceTemperatureC: 40,
      range: { minC: 36, maxC: 50 },
    });
    const bath = { timeMin: 8, fromTemperatureC: 40, toTemperatureC: 48, model: hot };
    expect(() => compensateTime(bath)).toThrow("softens the emulsion");
    expect(compensateTime({ ...bath, bathLimits: { minC: 0, maxC: 50 } }).timeMin).toBeLessThan(8);
  });
  it("warns below five minutes by hand and refuses below two", () => {
    const call = (timeMin: number, handling?: "tank by hand" | "machine") =>
      compensateTime({
        timeMin,
        fromTemperatureC: 20,
        toTemperatureC: 20,
        model: twice,
        ...(handling === undefined ? {} : { handling }),
      });
    expect(call(5).warnings).toEqual([]);
    expect(call(4.9).warnings[0]).toContain("uneven");
    expect(() => call(1.9)).toThrow("at least 2 min");
    expect(call(1.9, "machine").warnings).toEqual([]);
    expect(() => call(8, "by mouth" as never)).toThrow("tank by hand");
  });
  it("takes limits of one's own for even development", () => {
    const answer = compensateTime({
      timeMin: 1,
      fromTemperatureC: 20,
      toTemperatureC: 20,
      evenDevelopment: { warnBelowMin: 1, refuseBelowMin: 0.5 },
    });
    expect(answer.warnings).toEqual([]);
  });
  it("refuses times that are no times", () => {
    for (const timeMin of [0, -3, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => compensateTime({ timeMin, fromTemperatureC: 20, toTemperatureC: 21 })).toThrow(
        InputError,
      );
    }
  });
  it("gives a result that survives JSON", () => {
    const answer = compensateTime({ timeMin: 8, fromTemperatureC: 20, toTemperatureC: 24 });
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  });
});

describe("temperatureForTime", () => {
  it("finds the temperature that compensateTime takes back to the wanted time", () => {
    const found = temperatureForTime({
      timeMin: 9,
      fromTemperatureC: 20,
      wantedTimeMin: 7,
      model: twice,
    });
    const back = compensateTime({
      timeMin: 9,
      fromTemperatureC: 20,
      toTemperatureC: found.temperatureC,
      model: twice,
    });
    expect(back.timeMin).toBeCloseTo(7, 10);
  });
  it("says which times can be had when the wanted one cannot", () => {
    expect(() =>
      temperatureForTime({ timeMin: 9, fromTemperatureC: 20, wantedTimeMin: 30, model: twice }),
    ).toThrow("write a time from 3.917 to 15.67 min");
  });
});
