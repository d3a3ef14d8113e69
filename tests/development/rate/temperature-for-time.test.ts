import { describe, expect, it } from "vitest";
import { factorPerTenDegreesModel, InputError, temperatureForTime } from "wetside";

describe("temperatureForTime", () => {
  const wanted = { timeMin: 9, fromTemperatureC: 20, wantedTimeMin: 7 };

  it("shows what other published coefficients would give, the assumed one among them", () => {
    const answer = temperatureForTime(wanted);
    // 10·ln(9/7)/ln Q degrees warmer, for Q of 3 and of 1.4.
    expect(answer.coldestC).toBeCloseTo(20 + (10 * Math.log(9 / 7)) / Math.log(3), 9);
    expect(answer.warmestC).toBeCloseTo(20 + (10 * Math.log(9 / 7)) / Math.log(1.4), 9);
    const assumed = answer.alternatives.find((each) => each.factorPerTenDegrees === 2);
    expect(assumed?.temperatureC).toBeCloseTo(answer.temperatureC, 8);
    expect(answer.warnings.join()).toContain("anywhere from 22.29 to 27.47 °C");
  });

  it("does not warn of the spread with a model of one's own, or of none to speak of", () => {
    const model = factorPerTenDegreesModel({ factorPerTenDegrees: 2.2 });
    expect(temperatureForTime({ ...wanted, model }).warnings.join()).not.toContain("anywhere");
    const near = temperatureForTime({ ...wanted, wantedTimeMin: 8.9 });
    expect(near.warnings).toEqual([]);
  });

  it("gives back the given temperature for the given time, whatever the coefficient", () => {
    const same = temperatureForTime({ ...wanted, wantedTimeMin: 9 });
    for (const each of same.alternatives) expect(each.temperatureC).toBe(20);
  });

  it("says the number to a time written as on a clock", () => {
    const clock = () => temperatureForTime({ ...wanted, wantedTimeMin: "7:30" as never });
    expect(clock).toThrow(InputError);
    expect(clock).toThrow("7:30 is 7.5, without quotation marks");
  });
});
