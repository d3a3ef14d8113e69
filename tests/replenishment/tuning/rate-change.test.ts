import { describe, expect, it } from "vitest";
import { seededRandom } from "wetside/numerics";
import {
  noiseCovariance,
  planStepTest,
  rateAdvice,
  rateChange,
  rateSensitivity,
  sequentialRateChange,
  tankOverDays,
} from "wetside/replenishment";
import { rateBank } from "../../../lib/replenishment/tuning/rate-bank.ts";
import { rateSurface } from "../../../lib/replenishment/tuning/rate-surface.ts";
import { rateAnswer } from "../../../lib/replenishment/tuning/tank-answer.ts";
import { coverageCell } from "../../bench/tuning-labs.ts";

const sensitivity = [0.3, 0.3, 0.3, 0.4, 0.4, 0.4];
const NOISE_SD = 0.012;
const noise = sensitivity.map((_, i) =>
  sensitivity.map((_, j) => {
    if (i === j) return NOISE_SD ** 2;
    return Math.floor(i / 3) === Math.floor(j / 3) ? 0.5 * NOISE_SD ** 2 : 0;
  }),
);

/** Strips of an invented line whose rate changes by `error` at turnover `at`. */
function strips(seed: number, error: number, at: number, count = 72, turnoversInAll = 6) {
  const { normal } = seededRandom(seed);
  const turnovers = Array.from({ length: count }, (_, i) => (i * turnoversInAll) / (count - 1));
  const deviations = turnovers.map((n) => {
    const answer = n > at ? (error / (1 + error)) * (1 - Math.exp((1 + error) * (at - n))) : 0;
    const common = [normal(), normal()];
    return sensitivity.map((s, j) => {
      const shared = Math.SQRT1_2 * (common[Math.floor(j / 3)] ?? 0);
      return 0.01 + s * answer + NOISE_SD * (shared + Math.SQRT1_2 * normal());
    });
  });
  return { turnovers, deviations, sensitivity, noise };
}

describe("the answer that is fitted", () => {
  /** Two exact solutions of one balance. */
  const ROUNDING = 1e-12;

  it("is the tank balance's own, for what is used up and for what is given off", () => {
    for (const error of [-0.3, -0.15, -0.05, 0.05, 0.3, 1]) {
      const components = [
        { name: "agent", replenisherGPerL: 5, startGPerL: 3.5, consumedGPerM2: 0.9 },
        { name: "bromide", replenisherGPerL: 0, startGPerL: 1.2, releasedGPerM2: 0.72 },
      ];
      const tank = { volumeL: 20, rateMlPerM2: 600, components };
      const days = Array.from({ length: 30 }, (_, i) => ({
        date: `2026-06-${String(i + 1).padStart(2, "0")}`,
        areaM2: 3 + (i % 3),
        replenisherMl: (3 + (i % 3)) * 600 * (1 + error),
      }));
      for (const day of tankOverDays(tank, days).days) {
        // Turnovers there are counted as delivered, here as set.
        const x = rateAnswer(error, day.turnovers / (1 + error));
        const { agent = 0, bromide = 0 } = day.concentrationGPerL;
        expect(Math.abs(agent - (3.5 + 1.5 * x))).toBeLessThan(ROUNDING);
        expect(Math.abs(bromide - (1.2 - 1.2 * x))).toBeLessThan(ROUNDING);
      }
    }
  });
  it("is 0 before the change, ε·n just after it, and a straight line for a pump that stands still", () => {
    expect(rateAnswer(-0.2, -1)).toBe(0);
    expect(rateAnswer(-0.2, 1e-7) / 1e-7).toBeCloseTo(-0.2, 6);
    expect(rateAnswer(-1, 2.5)).toBe(-2.5);
  });
});

describe("rateChange", () => {
  it("finds, sizes and dates a pump that delivers 15 % too little", () => {
    const found = rateChange(strips(4, -0.15, 3));
    expect(found.finding).toBe("rate changed");
    const [low, high] = found.errorInterval;
    expect(low).toBeLessThan(-0.15);
    expect(high).toBeGreaterThan(-0.15);
    const [early, late] = found.changeAtInterval;
    expect(early).toBeLessThan(3);
    expect(late).toBeGreaterThan(3);
    expect(found.pValue).toBeLessThan(0.01);
    expect(found.warnings).toEqual([]);
  });
  describe("on simulated labs, the tank solved by tankOverDays", () => {
    const labs = 150;
    const fourErrors = 4 * Math.sqrt((0.05 * 0.95) / labs);
    const cell = { turnovers: 4, noiseSd: 0.015, stripsPerTurnover: 12 };

    it("speaks of a change falsely in at most 5 % of unchanged lines, within four standard errors", () => {
      const found = coverageCell({ ...cell, error: 0, changeAt: 2 }, labs, 1000);
      expect(found.calledChanged / labs).toBeLessThan(0.05 + fourErrors);
      expect(found.calledChanged).toBeGreaterThan(0);
    });
    it.each([
      [-0.3, 1 / 3],
      [0.1, 2],
      [-0.05, 3],
      [0.3, 3],
    ])(
      "holds an error of %d since turnover %d as often as it says, within four standard errors",
      (error, changeAt) => {
        const found = coverageCell({ ...cell, error, changeAt }, labs, 2000);
        expect(Math.abs(found.errorHeld / labs - 0.95)).toBeLessThan(fourErrors);
        expect(found.momentHeld / labs).toBeGreaterThan(0.93 - fourErrors);
      },
    );
  });
  it("gives the same answer for the same strips, and does not care in which unit density is read", () => {
    const series = strips(9, -0.1, 2);
    const found = rateChange(series);
    expect(rateChange(series)).toEqual(found);
    const inHundredths = rateChange({
      turnovers: series.turnovers,
      deviations: series.deviations.map((row) => row.map((d) => 100 * d)),
      sensitivity: sensitivity.map((s) => 100 * s),
      noise: noise.map((row) => row.map((v) => 1e4 * v)),
    });
    expect(inHundredths.error).toBeCloseTo(found.error, 10);
    expect(inHundredths.finding).toBe(found.finding);
  });
  it("cannot tell the size of a change that has hardly begun to show", () => {
    const found = rateChange(strips(12, -0.2, 5.75));
    expect(found.finding).toBe("cannot tell yet");
  });
  it("warns of scatter that the stated noise does not explain", () => {
    const series = strips(3, 0, 0);
    const calm = noise.map((row) => row.map((v) => v / 9));
    expect(rateChange({ ...series, noise: calm }).warnings[0]).toMatch(/[23]\.\d times/);
  });
  it("refuses too few strips, a counter that runs backwards, and parts that do not fit", () => {
    const series = strips(1, 0, 0);
    const few = { ...series, turnovers: [0, 1], deviations: series.deviations.slice(0, 2) };
    expect(() => rateChange(few)).toThrow("number of strips is 2");
    const back = [...series.turnovers];
    back[5] = 0;
    expect(() => rateChange({ ...series, turnovers: back })).toThrow("counter that was reset");
    expect(() => rateChange({ ...series, sensitivity: [0.3] })).toThrow("noise");
    expect(() => rateChange({ ...series, sensitivity: sensitivity.map(() => 0) })).toThrow("not 0");
    const still = series.turnovers.map(() => 1);
    expect(() => rateChange({ ...series, turnovers: still })).toThrow("hardly been replenished");
  });
});

describe("sequentialRateChange", () => {
  it("ends with the estimate of the fit over all strips, within the grid's spacing", () => {
    const series = strips(4, -0.15, 3);
    const last = sequentialRateChange(series).at(-1);
    const whole = rateChange(series);
    expect(last?.changeAtTurnovers).toBeCloseTo(whole.changeAtTurnovers, 1);
    expect(last?.error).toBeCloseTo(whole.error, 2);
  });
  it("is at every strip what it would be if the log ended there", () => {
    const series = strips(6, 0.2, 2);
    const all = sequentialRateChange(series);
    const at = 50;
    const short = sequentialRateChange({
      ...series,
      turnovers: series.turnovers.slice(0, at),
      deviations: series.deviations.slice(0, at),
    }).at(-1);
    const same = all.find((each) => each.strip === at - 1);
    expect(same?.error).toBeCloseTo(short?.error ?? Number.NaN, 10);
    expect(same?.changeAtTurnovers).toBe(short?.changeAtTurnovers);
  });
});

describe("the bank of recursive regressions", () => {
  it("agrees with the fit over all strips at once, pair by pair", () => {
    const { turnovers } = strips(4, -0.15, 3);
    const { normal } = seededRandom(8);
    const z = turnovers.map(() => 0.02 * normal() + 0.4);
    const grid = { errors: [-0.98, -0.5, -0.1, 0, 0.2, 1], moments: [0, 0.05, 1, 3.3, 5.9] };
    const bank = rateBank(grid);
    turnovers.forEach((n, i) => {
      bank.add(n, z[i] ?? 0);
    });
    const [step, whole] = [bank.surface(), rateSurface(grid, turnovers, z)];
    // Relative to the largest: at ε = −0.98 the answer is 49 times its amplitude.
    const ROUNDING = 1e-11 * Math.max(...whole.rest);
    whole.rest.forEach((rest, i) => {
      expect(Math.abs((step.rest[i] ?? 1) - rest)).toBeLessThan(ROUNDING);
    });
    expect(Math.abs(step.restWithoutChange - whole.restWithoutChange)).toBeLessThan(ROUNDING);
  });
  it("gives the sum of squares of a fit written out in full", () => {
    const turnovers = [0, 0.4, 1, 1.7, 2];
    const z = [0.1, -0.2, 0.3, 0.2, 0.6];
    const [error, at] = [0.3, 0.5];
    const left = z.map((each, i) => each - rateAnswer(error, (turnovers[i] ?? 0) - at));
    const mean = left.reduce((sum, each) => sum + each, 0) / left.length;
    const expected = left.reduce((sum, each) => sum + (each - mean) ** 2, 0);
    const [rest] = rateSurface({ errors: [error], moments: [at] }, turnovers, z).rest;
    expect(rest).toBeCloseTo(expected, 14);
  });
});

describe("rateAdvice", () => {
  const change = rateChange(strips(4, -0.15, 3));

  it("sets the rate so that the old delivery comes back, and ends at no error", () => {
    const advice = rateAdvice(change, { rateMlPerM2: 100, largestStep: 0.5, turnoversPerDay: 0.2 });
    expect(advice.capped).toBe(false);
    expect(advice.newRateMlPerM2 * (1 + change.error)).toBeCloseTo(100, 9);
    expect(Math.abs(advice.path.at(-1)?.expected ?? 1)).toBeLessThan(0.01);
    expect(advice.path[0]?.expected).toBeCloseTo(change.reachedError, 12);
    expect(advice.lookAgainDays).toBe(5);
  });
  it("never advises a larger step than the cap, and says so", () => {
    const advice = rateAdvice(change, { rateMlPerM2: 100, largestStep: 0.05 });
    expect(advice.newRateMlPerM2).toBeCloseTo(105, 9);
    expect(advice.capped).toBe(true);
    expect(advice.reason).toContain("largest step allowed");
  });
  it("leaves the rate alone where nothing is known to have changed", () => {
    const quiet = rateChange(strips(21, 0, 0));
    const advice = rateAdvice(quiet, { rateMlPerM2: 100 });
    expect(quiet.finding).not.toBe("rate changed");
    expect(advice.advise).toBe(false);
    expect(advice.newRateMlPerM2).toBe(100);
  });
  it("keeps the expected path between its ends", () => {
    for (const point of rateAdvice(change, { rateMlPerM2: 50 }).path) {
      expect(point.low).toBeLessThanOrEqual(point.expected + 1e-12);
      expect(point.high).toBeGreaterThanOrEqual(point.expected - 1e-12);
    }
  });
});

describe("noiseCovariance", () => {
  it("recovers the covariance of simulated strips, drift or no drift", () => {
    const { deviations } = strips(30, 0.3, 0, 4000, 6);
    const found = noiseCovariance(deviations);
    found.forEach((row, i) => {
      row.forEach((value, j) => {
        // Five standard errors of a covariance from 4,000 differences.
        const allowed = 5 * NOISE_SD ** 2 * Math.sqrt(3 / 4000);
        expect(Math.abs(value - (noise[i]?.[j] ?? 0))).toBeLessThan(allowed);
      });
    });
  });
  it("asks for more strips than channels", () => {
    expect(() => noiseCovariance([[0.01, 0.02]])).toThrow("ten strips more than channels");
  });
});

describe("rateSensitivity and planStepTest", () => {
  it("give a plan whose interval is as wide as promised", () => {
    const plan = planStepTest({
      halfWidth: 0.05,
      noiseSd: 0.01,
      stepFraction: 0.1,
      stripsPerTurnover: 10,
      sensitivity: 0.4,
    });
    const count = plan.stripsBefore + plan.stripsAfter;
    const turnovers = Array.from({ length: count }, (_, i) => (i + 1) / 10);
    const at = plan.stripsBefore / 10;
    const { normal } = seededRandom(2);
    let covered = 0;
    let width = 0;
    const tests = 400;
    for (let k = 0; k < tests; k++) {
      const deviations = turnovers.map((n) => {
        return [0.4 * (0.1 / 1.1) * (n > at ? 1 - Math.exp(at - n) : 0) + 0.01 * normal()];
      });
      const changes = [{ atTurnovers: at, fraction: 0.1 }];
      const [channel] = rateSensitivity({ turnovers, deviations, changes });
      const [low, high] = channel?.interval ?? [1, 0];
      if (low <= 0.4 && high >= 0.4) covered++;
      width += (high - low) / 2 / tests;
    }
    expect(Math.abs(covered / tests - 0.95)).toBeLessThan(4 * Math.sqrt((0.05 * 0.95) / tests));
    expect(Math.abs(width / plan.expectedHalfWidth - 1)).toBeLessThan(0.05);
    expect(plan.expectedShift).toBeCloseTo((0.04 / 1.1) * (1 - Math.exp(-plan.turnoversAfter)), 12);
  });
  it("refuse a history without a change, and a plan that no number of strips meets", () => {
    expect(() =>
      rateSensitivity({ turnovers: [0, 1, 2, 3, 4, 5], deviations: [], changes: [] }),
    ).toThrow("at least one change");
    expect(() =>
      planStepTest({ halfWidth: 1e-5, noiseSd: 0.01, stepFraction: 0.1, stripsPerTurnover: 10 }),
    ).toThrow("larger step");
  });
});
