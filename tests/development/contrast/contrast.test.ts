import { describe, expect, it } from "vitest";
import {
  contrastCurveFromFit,
  contrastExample,
  contrastFromTwoTimes,
  developmentChange,
  developmentForRange,
  exponentialApproach,
  factorialDevelopment,
  fitContrastTime,
  powerOfTime,
  pushDevelopment,
  timeForContrast,
} from "wetside/development";
import { InputError } from "wetside/input";

const range = { minMin: 4, maxMin: 14 };
const curve = exponentialApproach({ ceiling: 0.9, ratePerMin: 0.14, range });
const delayed = exponentialApproach({ ceiling: 0.9, ratePerMin: 0.14, delayMin: 0.8, range });
const readings = (of: typeof curve) =>
  [4, 6, 8, 11, 14].map((timeMin) => ({ timeMin, contrastIndex: of.contrastAt(timeMin) }));

describe("contrast curves", () => {
  it("start at zero, rise and stay below their ceiling", () => {
    let before = 0;
    for (let t = 0; t <= 60; t += 0.5) {
      const now = delayed.contrastAt(t);
      expect(now).toBeGreaterThanOrEqual(before);
      expect(now).toBeLessThan(0.9);
      before = now;
    }
    expect(delayed.contrastAt(0.8)).toBe(0);
    expect(curve.law).toBe("exponential-approach");
    expect(delayed.law).toBe("delayed-approach");
  });
  it("know no ceiling as a power of time", () => {
    const power = powerOfTime({ atOneMinute: 0.2, exponent: 0.5, range });
    expect("highestContrast" in power).toBe(false);
    expect(power.contrastAt(1)).toBe(0.2);
  });
  it("refuse a delay longer than the shortest reading and a range upside down", () => {
    expect(() => exponentialApproach({ ceiling: 1, ratePerMin: 0.1, delayMin: 5, range })).toThrow(
      "shorter than the shortest time",
    );
    expect(() =>
      powerOfTime({ atOneMinute: 0.2, exponent: 0.5, range: { minMin: 9, maxMin: 9 } }),
    ).toThrow(InputError);
  });
});

describe("fitContrastTime", () => {
  it("finds the parameters of readings that follow the law exactly", () => {
    const fit = fitContrastTime({ rows: readings(curve) });
    expect(fit.parameters.map((each) => each.name)).toEqual(["ceiling", "rate per minute"]);
    expect(fit.parameters[0]?.value).toBeCloseTo(0.9, 10);
    expect(fit.parameters[1]?.value).toBeCloseTo(0.14, 10);
    const late = fitContrastTime({ rows: readings(delayed), law: "delayed-approach" });
    expect(late.parameters[2]?.value).toBeCloseTo(0.8, 8);
  });
  it("is the curve that its fit stands for", () => {
    for (const law of ["exponential-approach", "delayed-approach", "power"] as const) {
      const fit = fitContrastTime({ rows: contrastExample.rows, law });
      const made = contrastCurveFromFit(fit);
      expect(made.law).toBe(law);
      for (const row of fit.rows) expect(made.contrastAt(row.timeMin)).toBeCloseTo(row.fitted, 12);
    }
  });
  it("foretells each reading of the example from the others within 0.02", () => {
    const fit = fitContrastTime({ rows: contrastExample.rows });
    expect(fit.leaveOneOut).toBeLessThan(0.02);
    for (const row of fit.rows) {
      expect(Math.abs(row.contrastIndex - (row.leftOut ?? 0))).toBeLessThan(0.02);
    }
  });
  it("leaves the leave-one-out error away where too few readings are left", () => {
    const fit = fitContrastTime({ rows: readings(curve).slice(0, 3) });
    expect("leaveOneOut" in fit).toBe(false);
    expect(JSON.parse(JSON.stringify(fit))).toEqual(fit);
  });
  it("warns when the readings are far from the ceiling they are fitted to", () => {
    const slow = exponentialApproach({ ceiling: 2, ratePerMin: 0.02, range });
    expect(fitContrastTime({ rows: readings(slow) }).warnings[0]).toContain("longer times");
    expect(fitContrastTime({ rows: readings(curve) }).warnings).toEqual([]);
  });
  it("warns of a power law that it has no ceiling", () => {
    const fit = fitContrastTime({ rows: contrastExample.rows, law: "power" });
    expect(fit.warnings[0]).toContain("no ceiling");
  });
  it("refuses too few readings, too few different times and contrasts that are none", () => {
    expect(() => fitContrastTime({ rows: readings(curve).slice(0, 2) })).toThrow(
      "contrastFromTwoTimes",
    );
    const same = [0.5, 0.51, 0.52].map((contrastIndex) => ({ timeMin: 8, contrastIndex }));
    expect(() => fitContrastTime({ rows: same })).toThrow("different times");
    expect(() =>
      fitContrastTime({ rows: [...readings(curve), { timeMin: 16, contrastIndex: -1 }] }),
    ).toThrow("rows[5].contrastIndex");
  });
  it("refuses contrast that falls or stays the same: rows may be mixed up", () => {
    const falling = [4, 8, 12].map((timeMin) => ({ timeMin, contrastIndex: 1 - timeMin / 20 }));
    const flat = [4, 8, 12].map((timeMin) => ({ timeMin, contrastIndex: 0.5 }));
    for (const rows of [falling, flat]) {
      expect(() => fitContrastTime({ rows })).toThrow("whose contrast grows with time");
    }
  });
  it("names its laws when it does not know the one asked for", () => {
    expect(() =>
      fitContrastTime({ rows: readings(curve), law: "exponential approach" as never }),
    ).toThrow('did you mean "exponential-approach"?');
  });
});

describe("contrastFromTwoTimes", () => {
  it("passes through both readings, whatever the ratio of their times", () => {
    for (const longer of [5, 9, 14]) {
      const { curve: made } = contrastFromTwoTimes({
        first: { timeMin: 4, contrastIndex: curve.contrastAt(4) },
        second: { timeMin: longer, contrastIndex: curve.contrastAt(longer) },
      });
      expect(made.contrastAt(10)).toBeCloseTo(curve.contrastAt(10), 9);
    }
  });
  it("refuses contrast that does not grow or grows too fast", () => {
    const call = (contrastIndex: number) => () =>
      contrastFromTwoTimes({
        first: { timeMin: 4, contrastIndex: 0.4 },
        second: { timeMin: 8, contrastIndex },
      });
    expect(call(0.4)).toThrow("above 0.4 and below 0.8");
    expect(call(0.8)).toThrow("less than in proportion");
  });
});

describe("timeForContrast", () => {
  it("is the inverse of the curve", () => {
    for (const t of [4, 7.3, 14, 20]) {
      const answer = timeForContrast({ curve, contrastIndex: curve.contrastAt(t) });
      expect(answer.timeMin).toBeCloseTo(t, 10);
    }
  });
  it("warns outside the readings, of short times, and refuses what the material cannot reach", () => {
    expect(timeForContrast({ curve, contrastIndex: 0.8 }).warnings[0]).toContain("extrapolated");
    const short = timeForContrast({ curve, contrastIndex: curve.contrastAt(4.5) });
    expect(short.warnings[0]).toContain("uneven");
    expect(() => timeForContrast({ curve, contrastIndex: 0.95 })).toThrow(
      "no time at all gives more than 0.9",
    );
    expect(() => timeForContrast({ curve, contrastIndex: 0.88 })).toThrow(
      "between 2.667 and 21 min",
    );
  });
});

describe("developmentForRange", () => {
  it("gives normal time to a normal subject and the same density range to all", () => {
    const set = developmentForRange({ curve, normalTimeMin: 8 });
    expect(set.developments.map((each) => each.name)).toEqual(["N−2", "N−1", "N", "N+1", "N+2"]);
    expect(set.developments[2]?.timeMin).toBeCloseTo(8, 10);
    for (const each of set.developments) {
      expect(each.contrastIndex * each.subjectStops).toBeCloseTo(set.normalContrast * 7, 12);
    }
  });
  it("keeps the developments that can be had and says why the others cannot", () => {
    const set = developmentForRange({ curve, normalTimeMin: 11 });
    const last = set.developments.at(-1);
    expect(last?.timeMin).toBeUndefined();
    expect(last?.reason).toContain("no time at all");
    expect(set.developments[0]?.timeMin).toBeGreaterThan(5);
  });
  it("takes the normal contrast in place of the time, but not both", () => {
    const byContrast = developmentForRange({ curve, normalContrast: curve.contrastAt(8) });
    const byTime = developmentForRange({ curve, normalTimeMin: 8 });
    expect(byContrast.developments[1]?.timeMin).toBeCloseTo(
      byTime.developments[1]?.timeMin ?? 0,
      10,
    );
    expect(() => developmentForRange({ curve })).toThrow("either normalTimeMin or normalContrast");
    expect(() => developmentForRange({ curve, normalTimeMin: 8, normalContrast: 0.6 })).toThrow(
      "either",
    );
  });
});

describe("pushDevelopment", () => {
  it("changes nothing at 0 stops", () => {
    const same = pushDevelopment({ curve, normalTimeMin: 7, stops: 0 });
    expect(same.timeMin).toBeCloseTo(7, 10);
    expect(same.shadowLossStops).toBeCloseTo(0, 12);
  });
  it("puts the tone back to its density: contrast times what is left of its exposure", () => {
    const push = pushDevelopment({ curve, normalTimeMin: 7, stops: 1, keep: "highlight" });
    expect(push.contrastIndex * (2.1 - Math.log10(2))).toBeCloseTo(push.normalContrast * 2.1, 12);
  });
  it("asks for less to save a highlight than a midtone, and shortens for a pull", () => {
    const time = (stops: number, keep: "midtone" | "highlight") =>
      pushDevelopment({ curve, normalTimeMin: 7, stops, keep }).timeMin;
    expect(time(1, "highlight")).toBeLessThan(time(1, "midtone"));
    expect(time(-1, "highlight")).toBeLessThan(7);
  });
  it("says that shadows stay lost", () => {
    const push = pushDevelopment({ curve, normalTimeMin: 7, stops: 1, keep: "highlight" });
    expect(push.shadowLossStops).toBeGreaterThan(0.8);
    expect(push.shadowLossStops).toBeLessThan(1);
    expect(push.warnings.join()).toContain("what was not exposed");
  });
  it("refuses a push that no contrast can save", () => {
    expect(() => pushDevelopment({ curve, normalTimeMin: 7, stops: 3 })).toThrow(InputError);
    expect(() => pushDevelopment({ curve, normalTimeMin: 7, stops: 4 })).toThrow("at most 3 stops");
    expect(() =>
      pushDevelopment({ curve, normalTimeMin: 7, stops: 2, logExposureAboveThreshold: 0.5 }),
    ).toThrow("below the threshold");
  });
});

describe("developmentChange", () => {
  it("is nothing for no error, and has the sign of the error", () => {
    const none = developmentChange({ curve, timeMin: 8, timeErrorMin: 0 });
    expect([none.contrastChange, none.speedChangeStops, none.densityChange]).toEqual([0, 0, 0]);
    const long = developmentChange({ curve, timeMin: 8, timeErrorMin: 0.5 });
    expect(long.contrastChange).toBeGreaterThan(0);
    expect(long.speedChangeStops).toBeGreaterThan(0);
    const short = developmentChange({ curve, timeMin: 8, timeErrorMin: -0.5 });
    expect(short.contrastChange).toBeLessThan(0);
  });
  it("moves a straight curve about its foot: the speed point lies 0.10/CI above it", () => {
    const change = developmentChange({ curve, timeMin: 8, timeErrorMin: 2 });
    const point = (contrast: number) => 0.1 / contrast;
    const gained = (point(change.contrastBefore) - point(change.contrastAfter)) / Math.log10(2);
    expect(change.speedChangeStops).toBeCloseTo(gained, 12);
    expect(change.densityChange).toBeCloseTo(2.1 * change.contrastChange, 12);
  });
  it("refuses times out of the curve's reach", () => {
    expect(() => developmentChange({ curve, timeMin: 8, timeErrorMin: 20 })).toThrow(
      "timeMin + timeErrorMin",
    );
  });
});

describe("factorialDevelopment", () => {
  it("counts from pouring on, not from appearance", () => {
    const plan = factorialDevelopment({ factor: 10, appearanceS: 30 });
    expect(plan.totalS).toBe(300);
    expect(plan.afterAppearanceS).toBe(270);
  });
  it("warns of a time too short to be even and refuses factors below 1", () => {
    expect(factorialDevelopment({ factor: 5, appearanceS: 9 }).warnings[0]).toContain("uneven");
    expect(() => factorialDevelopment({ factor: 0.5, appearanceS: 30 })).toThrow(InputError);
  });
});

describe("the example of contrast readings", () => {
  it("says that it is invented", () => {
    expect(contrastExample.source).toContain("invented");
    expect(contrastExample.howObtained).toContain("illustrative");
  });
});
