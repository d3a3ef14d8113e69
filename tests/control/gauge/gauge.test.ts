import { describe, expect, it } from "vitest";
import {
  gaugeShareOfLimits,
  gaugeStudyByAnova,
  gaugeStudyByRange,
  trendOutlook,
  zeroDrift,
} from "wetside/control";
import { seededRandom } from "wetside/numerics";

/** A study whose true standard deviations are known: gauge 0.006 and 0.004, patches 0.5. */
function study(seed: number, operators = 6, patches = 20, repeats = 4) {
  const { normal } = seededRandom(seed);
  const truth = Array.from({ length: patches }, () => 0.5 * normal());
  return Array.from({ length: operators }, () => {
    const habit = 0.004 * normal();
    return truth.map((t) => Array.from({ length: repeats }, () => t + habit + 0.006 * normal()));
  });
}

describe("a gauge study", () => {
  it("finds the repeatability it was simulated with, by both methods", () => {
    // 360 degrees of freedom: five standard errors are 19 %.
    for (const method of [gaugeStudyByAnova, gaugeStudyByRange]) {
      expect(Math.abs(method(study(3)).repeatabilitySd / 0.006 - 1)).toBeLessThan(0.19);
    }
  });
  it("has variances that add up and shares whose squares add up to 1", () => {
    for (const method of [gaugeStudyByAnova, gaugeStudyByRange]) {
      const { gaugeSd, patchSd, totalSd, shareOfTotal } = method(study(4));
      expect(gaugeSd ** 2 + patchSd ** 2).toBeCloseTo(totalSd ** 2, 12);
      expect(shareOfTotal.gauge ** 2 + shareOfTotal.patches ** 2).toBeCloseTo(1, 12);
    }
  });
  it("does not change when every reading is shifted, and scales with the unit", () => {
    const readings = study(5, 3, 5, 2);
    const moved = readings.map((o) => o.map((p) => p.map((v) => 10 * v + 3)));
    for (const method of [gaugeStudyByAnova, gaugeStudyByRange]) {
      expect(method(moved).gaugeSd).toBeCloseTo(10 * method(readings).gaugeSd, 9);
    }
  });
  it("refuses a study with gaps and one whose readings are all the same", () => {
    const gap = [
      [[1, 2], [1]],
      [
        [1, 2],
        [1, 2],
      ],
    ];
    expect(() => gaugeStudyByRange(gap)).toThrow("readings[0][1]");
    expect(() => gaugeStudyByAnova([[[1, 2]], [[1, 2]]])).toThrow("number of patches is 1");
    const same = [
      [
        [1, 1],
        [1, 1],
      ],
      [
        [1, 1],
        [1, 1],
      ],
    ];
    expect(() => gaugeStudyByAnova(same)).toThrow("scatter of the readings is 0");
  });
});

describe("gaugeShareOfLimits", () => {
  it("takes the gauge out of the scatter", () => {
    const { processSd, limitsNarrowerBy } = gaugeShareOfLimits(0.006, 0.01);
    expect(processSd).toBeCloseTo(0.008, 12);
    expect(limitsNarrowerBy).toBeCloseTo(0.2, 12);
  });
  it("says so when the gauge scatters more than the strips, instead of a negative variance", () => {
    const share = gaugeShareOfLimits(0.02, 0.01);
    expect(share.processSd).toBe(0);
    expect(share.warnings[0]).toContain("do not belong together");
  });
});

describe("a study without any scatter", () => {
  it("is refused by both methods, with what to do", () => {
    const equal = [
      [
        [1, 1],
        [1, 1],
      ],
      [
        [1, 1],
        [1, 1],
      ],
    ];
    expect(() => gaugeStudyByRange(equal)).toThrow("read to more decimals");
    expect(() => gaugeStudyByAnova(equal)).toThrow("read to more decimals");
  });
});

describe("zeroDrift", () => {
  it("foresees when the tolerance is used up", () => {
    const drift = zeroDrift([0, 10, 20, 30, 40], [0, 0.0021, 0.0039, 0.0061, 0.0079], 0.02);
    expect(drift.finding).toBe("drifts");
    expect(drift.daysToTolerance).toBeCloseTo(60, -1);
  });
  it("counts the tolerance from the patch's own value, not from the first reading", () => {
    const days = [0, 10, 20, 30, 40];
    const readings = [-0.004, -0.006, -0.008, -0.01, -0.0121];
    const drift = zeroDrift(days, readings, 0.02);
    // Off by 0.012 after 40 days at 0.0002 a day: 0.008 are left, some 40 days.
    expect(drift.offNow).toBeCloseTo(-0.01206, 5);
    expect(drift.daysToTolerance).toBeCloseTo((0.02 - 0.01206) / 0.000202, 1);
    const [crossing] = trendOutlook(
      [...days, 50, 60, 70],
      [...readings, -0.0139, -0.0161, -0.018],
      {
        limits: [-0.02],
      },
    ).crossings;
    const longer = zeroDrift([...days, 50, 60, 70], [...readings, -0.0139, -0.0161, -0.018]);
    expect(70 + (longer.daysToTolerance ?? 0)).toBeCloseTo(crossing?.time ?? Number.NaN, 9);
    expect(70 + (longer.daysToToleranceInterval?.[1] ?? 0)).toBeCloseTo(
      crossing?.interval?.[1] ?? Number.NaN,
      9,
    );
    const aboutItsValue = readings.map((each) => each + 0.15);
    expect(zeroDrift(days, aboutItsValue, 0.02, 0.15).daysToTolerance).toBeCloseTo(
      drift.daysToTolerance ?? Number.NaN,
      6,
    );
  });
  it("says that nothing is left once the tolerance is used up", () => {
    const off = zeroDrift([0, 1, 2, 3, 4], [0.018, 0.0191, 0.0199, 0.0211, 0.022]);
    expect(off.daysToTolerance).toBe(0);
    expect(off.offNow).toBeCloseTo(0.022, 3);
  });
  it("finds none in noise", () => {
    expect(zeroDrift([0, 1, 2, 3, 4], [0, 0.002, -0.001, 0.001, 0]).finding).toBe(
      "no drift to speak of",
    );
  });
});
