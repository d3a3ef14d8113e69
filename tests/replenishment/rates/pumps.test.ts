import { describe, expect, it } from "vitest";
import { seededRandom } from "wetside/numerics";
import {
  deliveredRates,
  type PumpCounterReading,
  pumpCalibration,
  tankTurnoversAt,
} from "wetside/replenishment";

/** A shift of a pump at 120 strokes/m², set to 5 mL, delivering a share of it; 3 m² a day. */
function pumpLog(count: number, change: (i: number) => Partial<PumpCounterReading> = () => ({})) {
  return Array.from(
    { length: count },
    (_, i): PumpCounterReading => ({
      readAt: `2026-03-${String(i + 1).padStart(2, "0")}T18:00`,
      counterStrokes: 5000 + 360 * i,
      settingMlPerStroke: 5,
      deliveredMl: 1512,
      ...change(i),
    }),
  );
}
const days = Array.from({ length: 8 }, (_, i) => ({
  date: `2026-03-${String(i + 2).padStart(2, "0")}`,
  areaM2: 3,
}));

describe("delivered rates", () => {
  it("set the counter and the tank against the area", () => {
    const rates = deliveredRates({ readings: pumpLog(9), days });
    expect(rates.intervals).toHaveLength(8);
    expect(rates.setMlPerM2).toBeCloseTo(600, 12);
    expect(rates.deliveredMlPerM2).toBeCloseTo(504, 12);
    expect(rates.error).toBeCloseTo(-0.16, 12);
    expect(rates.problems).toEqual([]);
  });
  it("keep the good rows of a counter that runs backwards, and say what to write", () => {
    const readings = pumpLog(9, (i) => (i === 4 ? { counterStrokes: 100 } : {}));
    const { intervals, problems, setMlPerM2 } = deliveredRates({ readings, days });
    expect(problems).toEqual([
      {
        at: "2026-03-05T18:00",
        problem: "the counter runs backwards, 6080 to 100",
        advice: "correct the counter, or mark it as set back (counterReset: true)",
      },
    ]);
    expect(intervals[3]?.strokes).toBeNull();
    expect(intervals[3]?.deliveredMlPerM2).toBeCloseTo(504, 12);
    expect(intervals).toHaveLength(8);
    // The interval after the wrong figure counts too many strokes; nobody can know that from the counter.
    expect(setMlPerM2).toBeGreaterThan(600);
  });
  it("leave out the strokes over a marked reset without calling it a fault", () => {
    const readings = pumpLog(9, (i) =>
      i >= 4 ? { counterStrokes: 360 * (i - 4) + 200, counterReset: i === 4 } : {},
    );
    const { intervals, problems, setMlPerM2 } = deliveredRates({ readings, days });
    expect(problems).toEqual([]);
    expect(intervals.map((each) => each.strokes === null)).toEqual([
      false,
      false,
      false,
      true,
      false,
      false,
      false,
      false,
    ]);
    expect(setMlPerM2).toBeCloseTo(600, 12);
  });
  it("bridge evenings without a reading by adding the days", () => {
    const readings = pumpLog(9).filter((_, i) => i !== 3 && i !== 4);
    const { intervals, setMlPerM2, problems } = deliveredRates({ readings, days });
    expect(intervals[2]).toMatchObject({
      from: "2026-03-04",
      to: "2026-03-06",
      areaM2: 9,
      strokes: 1080,
    });
    expect(setMlPerM2).toBeCloseTo(600, 12);
    expect(problems).toEqual([]);
  });
  it("take strokes into the cylinder out of the next interval", () => {
    const readings = pumpLog(9, (i) => ({
      counterStrokes: 5000 + 360 * i + (i > 2 ? 20 : 0),
      ...(i === 2 ? { cylinder: { strokes: 20, volumeMl: 84 } } : {}),
    }));
    expect(deliveredRates({ readings, days }).setMlPerM2).toBeCloseTo(600, 12);
  });
  it("report production without readings, and readings without production", () => {
    const early = [{ date: "2026-02-28", areaM2: 2 }, { date: "2026-03-01", areaM2: 0 }, ...days];
    const { problems } = deliveredRates({ readings: pumpLog(9), days: early });
    expect(problems[0]).toMatchObject({
      at: "2026-02-28",
      problem: "production without pump readings on 2026-02-28",
    });
    const short = deliveredRates({ readings: pumpLog(9), days: days.slice(0, 5) });
    expect(short.intervals).toHaveLength(5);
    expect(short.problems[0]?.problem).toBe("no production for 2026-03-07");
  });
  it("report two readings of one minute and two of one evening, and keep one", () => {
    const [first, second, ...rest] = pumpLog(9);
    if (first === undefined || second === undefined) throw new Error("no readings");
    const same = deliveredRates({ readings: [first, second, second, ...rest], days });
    expect(same.problems[0]?.problem).toContain("same minute");
    expect(same.setMlPerM2).toBeCloseTo(600, 12);
    const later = { ...second, readAt: "2026-03-02T21:00" };
    const evening = deliveredRates({ readings: [first, second, later, ...rest], days });
    expect(evening.problems[0]?.problem).toContain("second reading on the same day");
  });
  it("sort readings that come out of order", () => {
    const readings = pumpLog(9).toReversed();
    expect(deliveredRates({ readings, days }).setMlPerM2).toBeCloseTo(600, 12);
  });
  it("give no rate over a day of rest, only a volume", () => {
    const still = days.map((day) => ({ ...day, areaM2: 0 }));
    const { intervals, setMlPerM2 } = deliveredRates({ readings: pumpLog(9), days: still });
    expect(intervals[0]).toMatchObject({ setMl: 1800, setMlPerM2: null, deliveredMlPerM2: null });
    expect(setMlPerM2).toBeNull();
  });
  it("refuse no readings, gaps and overlaps of days, and times nobody can read", () => {
    expect(() => deliveredRates({ readings: [], days })).toThrow(
      "without them production tells no rate",
    );
    const gap = days.filter((_, i) => i !== 2);
    expect(() => deliveredRates({ readings: pumpLog(9), days: gap })).toThrow(
      "2026-03-04 is missing",
    );
    const twice = [...days.slice(0, 2), ...days.slice(1)];
    expect(() => deliveredRates({ readings: pumpLog(9), days: twice })).toThrow(
      "stands there already",
    );
    const time = pumpLog(3, () => ({ readAt: "1.3.2026 18 Uhr" }));
    expect(() => deliveredRates({ readings: time, days })).toThrow("write date and time as");
    const negative = pumpLog(3, () => ({ deliveredMl: -4 }));
    expect(() => deliveredRates({ readings: negative, days })).toThrow("deliveredMl is -4");
  });
});

describe("tank turnovers at strips", () => {
  const { intervals } = deliveredRates({ readings: pumpLog(9), days });
  const at = (...times: string[]) => tankTurnoversAt({ intervals, volumeL: 18, at: times });
  it("rise with the replenisher, evenly between readings", () => {
    // 1.8 L a day into 18 L.
    expect(at("2026-03-01T18:00", "2026-03-02T06:00", "2026-03-09T18:00").turnovers).toEqual(
      [0, 0.05, 0.8].map((value) => expect.closeTo(value, 12)),
    );
    expect(at().turnoversPerDay).toBeCloseTo(0.1, 12);
  });
  it("count what was really delivered when asked", () => {
    const { total } = tankTurnoversAt({ intervals, volumeL: 18, at: [], by: "delivered" });
    expect(total).toBeCloseTo((8 * 1.512) / 18, 12);
  });
  it("fill an interval that has no strokes, and say so", () => {
    const reset = pumpLog(9, (i) => (i === 4 ? { counterReset: true } : {}));
    const broken = deliveredRates({ readings: reset, days }).intervals;
    const filled = tankTurnoversAt({ intervals: broken, volumeL: 18, at: [] });
    expect(filled.total).toBeCloseTo((7 * 1.8 + 1.512) / 18, 12);
    expect(filled.warnings[0]).toContain("2026-03-05");
    const blind = broken.map((each) => ({ ...each, deliveredMl: null }));
    const guessed = tankTurnoversAt({ intervals: blind, volumeL: 18, at: [] });
    expect(guessed.total).toBeCloseTo(0.8, 12);
    expect(guessed.warnings[0]).toContain("mean rate times the area");
  });
  it("refuse moments outside the readings unless told to hold", () => {
    expect(() => at("2026-03-10T08:00")).toThrow("holdDays: 1 for the morning after");
    const held = tankTurnoversAt({ intervals, volumeL: 18, at: ["2026-03-10T08:00"], holdDays: 1 });
    expect(held.turnovers[0]).toBeCloseTo(0.8, 12);
    expect(held.warnings[0]).toContain("2026-03-10T08:00");
    expect(() => tankTurnoversAt({ intervals: [], volumeL: 18, at: [] })).toThrow("at least one");
  });
  it("answer gallons with litres", () => {
    const typed = { intervals, volumeL: "5 gal" as unknown as number, at: [] };
    expect(() => tankTurnoversAt(typed)).toThrow("18.927");
  });
});

describe("a pump calibration", () => {
  const three = [84, 85, 83].map((volumeMl) => ({ strokes: 20, volumeMl }));
  it("gives volume, interval, error and the setting that mends it", () => {
    const found = pumpCalibration({ readings: three, settingMlPerStroke: 5 });
    expect(found.mlPerStroke).toBeCloseTo(4.2, 12);
    expect(found.error).toBeCloseTo(-0.16, 12);
    expect(found.finding).toBe("delivers too little");
    expect(found.newSettingMlPerStroke).toBeCloseTo(25 / 4.2, 12);
    // u² = 0.05²/3 + (1/20)²/12/3, ν = 2·(u²/(0.05²/3))² = 2.347, t = 3.747.
    expect(found.standardUncertaintyMl).toBeCloseTo(0.030046, 6);
    expect(found.intervalMl[1] - 4.2).toBeCloseTo(0.1126, 4);
  });
  it("rests on the division of the cylinder when the readings agree", () => {
    const same = [100, 100, 100].map((volumeMl) => ({ strokes: 20, volumeMl }));
    const { standardUncertaintyMl, finding } = pumpCalibration({
      readings: same,
      settingMlPerStroke: 5,
      divisionMl: 1,
    });
    expect(standardUncertaintyMl).toBeCloseTo(1 / Math.sqrt(12) / 20 / Math.sqrt(3), 12);
    expect(finding).toBe("agrees with its setting");
  });
  it("warns of one reading and knows nothing of a setting it was not told", () => {
    const found = pumpCalibration({ readings: three.slice(0, 1) });
    expect(found.warnings[0]).toContain("three or more");
    expect([found.error, found.finding, found.newSettingMlPerStroke]).toEqual([null, null, null]);
  });
  it("covers the true volume nineteen times in twenty", () => {
    const { normal } = seededRandom(7);
    let covered = 0;
    const runs = 2000;
    for (let i = 0; i < runs; i++) {
      const readings = Array.from({ length: 4 }, () => ({
        strokes: 20,
        volumeMl: Math.round(20 * 5 * (1 + 0.01 * normal())),
      }));
      const [low, high] = pumpCalibration({ readings }).intervalMl;
      if (low <= 5 && 5 <= high) covered += 1;
    }
    // 95 % of 2,000 within three standard deviations of a count (0.5 %), and a little for rounding.
    expect(covered / runs).toBeGreaterThan(0.93);
    expect(covered / runs).toBeLessThan(0.97);
  });
  it("handles a pump that gives nothing", () => {
    const none = [
      { strokes: 20, volumeMl: 0 },
      { strokes: 20, volumeMl: 0 },
    ];
    const found = pumpCalibration({ readings: none, settingMlPerStroke: 5 });
    expect(found.error).toBe(-1);
    expect(found.newSettingMlPerStroke).toBeNull();
  });
  it("refuses no readings, no strokes and negative volumes", () => {
    expect(() => pumpCalibration({ readings: [] })).toThrow("at least one { strokes, volumeMl }");
    expect(() => pumpCalibration({ readings: [{ strokes: 0, volumeMl: 1 }] })).toThrow(
      "strokes is 0",
    );
    expect(() => pumpCalibration({ readings: [{ strokes: 1, volumeMl: -1 }] })).toThrow(
      "volumeMl is -1",
    );
  });
});
