import { describe, expect, it } from "vitest";
import { seededRandom } from "wetside/numerics";
import {
  deliveredError,
  deliveredRates,
  knownRateAnswer,
  momentAtTurnovers,
  oddStrips,
  pumpEvidence,
  type RateLogs,
  rateAlarm,
  rateChange,
  rateProfile,
  rateSensitivity,
  rateWatch,
  sensitivityFromLogs,
  setRateChanges,
  slowShareOfNoise,
  tankOverDays,
  tuneRate,
} from "wetside/replenishment";
import { fillNoise } from "../../../lib/replenishment/tuning/slow-noise.ts";

const SENSITIVITY = [0.44, 0.48, 0.54, 0.24, 0.26, 0.28];
const STRIP_SD = 0.01;
/** One closed form written two ways. */
const ROUNDING = 1e-12;

const dateOf = (day: number) => new Date(Date.UTC(2026, 2, 1 + day)).toISOString().slice(0, 10);

interface LabPlan {
  readonly seed: number;
  readonly days: number;
  /** Fraction by which the pump is off on a day. */
  readonly error?: (day: number) => number;
  /** Setting, mL a stroke, on a day. */
  readonly setting?: (day: number) => number;
}

/** An invented line: the tank solved exactly by the library's balance, three strips a day. */
function lab({ seed, days, error = () => 0, setting = () => 5 }: LabPlan): RateLogs {
  const { normal } = seededRandom(seed);
  const areas = Array.from({ length: days }, (_, d) => 3 + (d % 4) / 2);
  let counter = 1000;
  const readings = areas.map((area, d) => {
    const strokes = Math.round((area * 600) / 5);
    counter += strokes;
    const deliveredMl = Math.max(0, strokes * setting(d) * (1 + error(d)) + 30 * normal());
    return {
      readAt: `${dateOf(d)}T18:00`,
      counterStrokes: counter,
      settingMlPerStroke: setting(d),
      deliveredMl,
    };
  });
  const components = [{ name: "x", replenisherGPerL: 2, startGPerL: 1, consumedGPerM2: 0.6 }];
  const rows = areas.map((areaM2, d) => ({
    date: dateOf(d),
    areaM2,
    replenisherMl: Math.round((areaM2 * 600) / 5) * setting(d) * (1 + error(d)),
  }));
  const evenings = tankOverDays({ volumeL: 20, rateMlPerM2: 600, components }, rows).days;
  const strips = evenings.slice(0, -1).flatMap(({ date, concentrationGPerL }, d) => {
    const answer = (concentrationGPerL.x ?? 1) - 1;
    return ["18:10", "18:20", "18:30"].map((time) => ({
      at: `${date}T${time}`,
      row: SENSITIVITY.map((s) => s * answer + STRIP_SD * normal()),
      d,
    }));
  });
  return {
    readings,
    days: rows.map(({ date, areaM2 }) => ({ date, areaM2 })),
    volumeL: 20,
    strips: { at: strips.map(({ at }) => at), deviations: strips.map(({ row }) => row) },
  };
}

const weak = (from: number, error: number) => (day: number) => (day >= from ? error : 0);

describe("tuneRate", () => {
  it("finds, dates and sizes a weak pump from the logs, and asks for the setting that mends it", () => {
    const found = tuneRate(lab({ seed: 3, days: 75, error: weak(52, -0.16) }), {
      sensitivity: SENSITIVITY,
      largestStep: 0.25,
    });
    expect(found.change.finding).toBe("rate changed");
    const [low, high] = found.change.errorInterval;
    expect(low).toBeLessThan(-0.16);
    expect(high).toBeGreaterThan(-0.16);
    const [early, late] = found.changeAtInterval;
    expect(early < `${dateOf(52)}T12:00`).toBe(true);
    expect(late > dateOf(51)).toBe(true);
    expect((found.toldAt ?? "") > dateOf(52)).toBe(true);
    expect((found.toldAt ?? "9") < dateOf(62)).toBe(true);
    expect(found.newSettingMlPerStroke).toBeCloseTo(5 / (1 + found.change.error), 6);
  });
  it("advises nothing for a pump that delivers what it is set to", () => {
    const found = tuneRate(lab({ seed: 4, days: 75 }), { sensitivity: SENSITIVITY });
    expect(found.change.finding).toBe("no change to speak of");
    const [low, high] = found.change.oldErrorInterval ?? [-1, 1];
    expect(low).toBeGreaterThan(-0.1);
    expect(high).toBeLessThan(0.1);
    expect(found.advice.advise).toBe(false);
    expect(found.newSettingMlPerStroke).toBe(5);
    expect(found.toldAt).toBeNull();
  });
  it("learns the sensitivity from a step test in the log, and watches from then on", () => {
    const setting = (day: number) => (day >= 8 && day < 22 ? 5.5 : 5);
    const error = weak(70, -0.15);
    const { watch, change } = tuneRate(lab({ seed: 5, days: 92, error, setting }));
    expect(watch.sensitivityFrom).toBe("step test");
    expect(watch.setRateChanges.map(({ date }) => date)).toEqual([dateOf(8), dateOf(22)]);
    const channels = watch.stepTest?.channels ?? [];
    expect(channels).toHaveLength(SENSITIVITY.length);
    channels.forEach(({ interval }, c) => {
      // 99.9 % intervals would be 1.7 times as wide: six channels must not fail by chance.
      const middle = (interval[0] + interval[1]) / 2;
      const half = 1.7 * (interval[1] - middle);
      expect(Math.abs((SENSITIVITY[c] ?? 0) - middle)).toBeLessThan(half);
    });
    expect((watch.at[0] ?? "") > (watch.stepTest?.to ?? "9")).toBe(true);
    expect(change.finding).toBe("rate changed");
  });
  it("sees that a setting already makes up for the pump, and asks for no more", () => {
    const setting = (day: number) => (day >= 70 ? 5 / 0.84 : 5);
    const found = tuneRate(lab({ seed: 6, days: 80, error: weak(50, -0.16), setting }), {
      sensitivity: SENSITIVITY,
    });
    expect(found.watch.setFractionNow).toBeCloseTo(1 / 0.84 - 1, 3);
    expect(found.change.finding).toBe("rate changed");
    expect(found.advice.advise).toBe(false);
    expect(found.advice.reason).toContain("with it the rate is as it was");
  });
  it("asks for the rest where the setting was raised by less than it takes", () => {
    const setting = (day: number) => (day >= 70 ? 5.4 : 5);
    const found = tuneRate(lab({ seed: 7, days: 82, error: weak(50, -0.2), setting }), {
      sensitivity: SENSITIVITY,
      largestStep: 0.3,
    });
    expect(found.advice.advise).toBe(true);
    const rest = 1 / (0.8 * 1.08) - 1;
    expect(Math.abs(found.advice.stepFraction - rest)).toBeLessThan(0.05);
  });
  it("finds the error itself, whichever of pump and setting changed first", () => {
    // The lab's own answer and the pump's are not simply added: 20 % more on 16 % less is 0.8 %, not 4 %.
    for (const [settingFrom, errorFrom] of [
      [25, 45],
      [65, 45],
    ] as const) {
      const setting = (day: number) => (day >= settingFrom ? 6 : 5);
      const logs = lab({ seed: 31, days: 90, error: weak(errorFrom, -0.16), setting });
      const { change, advice } = tuneRate(logs, { sensitivity: SENSITIVITY });
      // Three strips a day of 0.010 leave a standard error near 0.003; adding the answers, 0.02.
      expect(Math.abs(change.error + 0.16)).toBeLessThan(0.01);
      expect(advice.advise).toBe(false);
      expect(advice.reason).toContain("the setting is +20.0 % on what it was");
    }
  });
  it("takes its finding back where the last strips are on the way back", () => {
    const error = (day: number) => (day >= 40 && day < 82 ? -0.16 : 0);
    const mended = tuneRate(lab({ seed: 32, days: 90, error }), { sensitivity: SENSITIVITY });
    expect(mended.change.finding).toBe("cannot tell yet");
    expect(mended.change.reason).toMatch(/on the way back from it: was the pump mended/);
    expect(mended.advice.advise).toBe(false);
    expect(mended.advice.newRateInterval).toEqual([mended.advice.rateMlPerM2, 600]);
    const again = (day: number) => (day < 40 ? 0 : day < 84 ? -0.1 : -0.25);
    const worse = tuneRate(lab({ seed: 33, days: 90, error: again }), { sensitivity: SENSITIVITY });
    expect(worse.change.reason).toContain("beyond it");
  });
  it("sends to the pump, and to no setting, where less than half is delivered", () => {
    const dead = tuneRate(lab({ seed: 34, days: 70, error: weak(63, -1) }), {
      sensitivity: SENSITIVITY,
    });
    expect(dead.change.finding).toBe("rate changed");
    expect(dead.change.errorInterval[0]).toBe(-1);
    expect(dead.advice.advise).toBe(false);
    expect(dead.advice.reason).toContain("Mend the pump before anything else");
    expect(dead.newSettingMlPerStroke).toBe(5);
  });
  it("answers for a line that has stood idle since, without a day to look again", () => {
    const logs = lab({ seed: 35, days: 90, error: weak(45, -0.16) });
    const days = logs.days.map((day, i) => (i < 60 ? day : { ...day, areaM2: 0 }));
    const stopped = logs.readings[59]?.counterStrokes ?? 0;
    const readings = logs.readings.map((reading, i) =>
      i < 60 ? reading : { ...reading, counterStrokes: stopped, deliveredMl: 0 },
    );
    const found = tuneRate({ ...logs, days, readings }, { sensitivity: SENSITIVITY });
    expect(found.watch.turnoversPerDay).toBe(0);
    expect(found.advice.lookAgainTurnovers).toBe(1);
    expect(found.advice.lookAgainDays).toBeUndefined();
  });
  it("takes strips in any order", () => {
    const logs = lab({ seed: 8, days: 60, error: weak(40, -0.2) });
    const { at, deviations } = logs.strips;
    const backwards = { at: at.toReversed(), deviations: deviations.toReversed() };
    const found = tuneRate({ ...logs, strips: backwards }, { sensitivity: SENSITIVITY });
    expect(found).toEqual(tuneRate(logs, { sensitivity: SENSITIVITY }));
  });
  it("touches no pump where the strips moved and came back for another reason", () => {
    const logs = lab({ seed: 9, days: 75 });
    const warm = (i: number) => (i > 100 && i < 150 ? 0.05 : 0);
    const deviations = logs.strips.deviations.map((row, i) => row.map((d) => d + warm(i)));
    const found = tuneRate(
      { ...logs, strips: { ...logs.strips, deviations } },
      { sensitivity: SENSITIVITY },
    );
    expect(found.change.finding).toBe("cannot tell yet");
    expect(found.change.reason).toContain("look for another cause");
    expect(found.advice.advise).toBe(false);
  });
  it("gives the same for the same logs, and leaves them as they are", () => {
    const logs = lab({ seed: 8, days: 60, error: weak(40, -0.2) });
    const before = structuredClone(logs);
    const found = tuneRate(logs, { sensitivity: SENSITIVITY });
    expect(tuneRate(logs, { sensitivity: SENSITIVITY })).toEqual(found);
    expect(logs).toEqual(before);
  });
});

describe("rateWatch", () => {
  it("says that it needs a sensitivity where the log has no step test", () => {
    expect(() => rateWatch(lab({ seed: 1, days: 40 }))).toThrow(/step test.*planStepTest/);
  });
  it("names strips that lie outside the pump's readings, and refuses when too few are left", () => {
    const logs = lab({ seed: 1, days: 60 });
    const late = { ...logs, readings: logs.readings.slice(20) };
    const { warnings } = rateWatch(late, { sensitivity: SENSITIVITY });
    expect(warnings.join(" ")).toMatch(/57 strips lie outside the pump's readings/);
    const none = { ...logs, readings: logs.readings.slice(0, 2) };
    expect(() => rateWatch(none, { sensitivity: SENSITIVITY })).toThrow(/readings answer for/);
  });
  it("says what is missing where the unchanged period cannot give the noise", () => {
    const logs = lab({ seed: 1, days: 60 });
    const watch = (change: object, options: object = {}) =>
      rateWatch({ ...logs, ...change }, { sensitivity: SENSITIVITY, ...options });
    const { at, deviations } = logs.strips;
    const weekly = (list: readonly unknown[]) => list.filter((_, i) => i % 15 === 0);
    expect(() => watch({ strips: { at: weekly(at), deviations: weekly(deviations) } })).toThrow(
      /strips in the unchanged period is 5.*write more baseDays/,
    );
    expect(() => watch({}, { watchFrom: "2027-01-01" })).toThrow("no strip lies there");
    expect(() => watch({}, { sensitivity: [0.4] })).toThrow("write 6, one a channel");
    const copied = { at, deviations: deviations.map(() => SENSITIVITY) };
    expect(() => watch({ strips: copied })).toThrow("strips that all read the same show no noise");
  });
  it("refuses a pump that does not follow the area it is given", () => {
    const logs = lab({ seed: 1, days: 60 });
    const days = logs.days.map(({ date }, i) => ({ date, areaM2: 1 + ((i * 7) % 5) }));
    expect(() => rateWatch({ ...logs, days }, { sensitivity: SENSITIVITY })).toThrow(
      /bring the production of the process that this pump feeds/,
    );
  });
  it("names days on which the pump ran and no production was written", () => {
    const logs = lab({ seed: 1, days: 60 });
    const days = logs.days.map((day, i) => (i === 30 || i === 31 ? { ...day, areaM2: 0 } : day));
    const { warnings } = rateWatch({ ...logs, days }, { sensitivity: SENSITIVITY });
    expect(warnings.join(" ")).toContain(
      `2 days without production (${dateOf(30)}, ${dateOf(31)})`,
    );
  });
  it("leaves out a spoilt strip and says which, but keeps the answer of the tank", () => {
    const logs = lab({ seed: 2, days: 60, error: weak(40, -0.25) });
    const deviations = logs.strips.deviations.map((row, i) =>
      row.map((d) => d + (i === 70 ? 0.15 : 0)),
    );
    const spoilt = { ...logs, strips: { ...logs.strips, deviations } };
    const watch = rateWatch(spoilt, { sensitivity: SENSITIVITY });
    expect(watch.oddStrips).toEqual([logs.strips.at[70]]);
  });
  it("lets the strips of days that are named not count", () => {
    const logs = lab({ seed: 2, days: 60 });
    const watch = rateWatch(logs, { sensitivity: SENSITIVITY, leaveOut: [dateOf(30)] });
    expect(watch.at.some((at) => at.startsWith(dateOf(30)))).toBe(false);
    expect(watch.at).toHaveLength(logs.strips.at.length - 3);
  });
});

describe("sensitivityFromLogs", () => {
  const setting = (day: number) => (day >= 14 && day < 42 ? 5.6 : 5);
  it("learns from a step test of eleven weeks what the strips were made with", () => {
    const learned = sensitivityFromLogs(lab({ seed: 21, days: 77, setting }));
    expect(learned.setRateChanges.map(({ date }) => date)).toEqual([dateOf(14), dateOf(42)]);
    const { channels } = learned;
    const ratios = channels.map((each, c) => each.sensitivity / (SENSITIVITY[c] ?? 1));
    const mean = ratios.reduce((sum, each) => sum + each, 0) / ratios.length;
    expect(Math.abs(mean - 1)).toBeLessThan(4 * learned.sensitivityError + 0.02);
    expect(learned.sensitivityError).toBeLessThan(0.05);
  });
  it("brings its error into the interval of the finding", () => {
    const logs = lab({ seed: 3, days: 75, error: weak(52, -0.16) });
    const exact = tuneRate(logs, { sensitivity: SENSITIVITY }).change;
    const { change } = tuneRate(logs, { sensitivity: SENSITIVITY, sensitivityError: 0.1 });
    expect(change.errorInterval[0]).toBeLessThan(exact.errorInterval[0]);
    expect(change.errorInterval[1]).toBeGreaterThan(exact.errorInterval[1]);
    expect(change.error).toBe(exact.error);
    expect(change.assumptions.join()).toContain("10.0 %");
    // The sentence says the same interval as the number.
    const shown = (end: number) => `−${(-100 * end).toFixed(0)} %`;
    const [low, high] = change.errorInterval;
    expect(change.reason).toContain(`(${shown(low)} to ${shown(high)})`);
    // What a change a turnover old may be is wider at both ends, and ends at nothing delivered.
    const [old, oldExact] = [change.oldErrorInterval ?? [], exact.oldErrorInterval ?? []];
    expect(old[0]).toBeLessThan(oldExact[0] ?? Number.NaN);
    expect(old[1]).toBeGreaterThan(oldExact[1] ?? Number.NaN);
    const unsure = { sensitivity: SENSITIVITY, sensitivityError: 0.5, widestInterval: 0.2 };
    const vague = tuneRate(logs, unsure).change;
    expect(vague.oldErrorInterval?.[0]).toBeGreaterThanOrEqual(-1);
    expect(vague.finding).toBe("cannot tell yet");
    expect(vague.reason).toContain("its size is only known as");
  });
  it("says that a rate left alone teaches nothing", () => {
    expect(() => sensitivityFromLogs(lab({ seed: 21, days: 40 }))).toThrow(/planStepTest/);
  });
});

describe("knownRateAnswer", () => {
  it("is the answer that rateSensitivity fits", () => {
    const turnovers = Array.from({ length: 40 }, (_, i) => i / 8);
    const changes = [
      { atTurnovers: 1, fraction: 0.2 },
      { atTurnovers: 2.5, fraction: -0.2 },
    ];
    const deviations = knownRateAnswer(changes, turnovers).map((x) => [0.37 * x + 0.01]);
    const [channel] = rateSensitivity({ turnovers, deviations, changes });
    expect(channel?.sensitivity).toBeCloseTo(0.37, 12);
  });
  it("is 0 without changes and settles at f/(1 + f)", () => {
    expect(knownRateAnswer([], [0, 5])).toEqual([0, 0]);
    const [late] = knownRateAnswer([{ atTurnovers: 0, fraction: 0.25 }], [100]);
    expect(Math.abs((late ?? 0) - 0.2)).toBeLessThan(ROUNDING);
  });
  it("refuses a rate set to nothing", () => {
    const gone = [1, 2].map((atTurnovers) => ({ atTurnovers, fraction: -0.6 }));
    expect(() => knownRateAnswer(gone, [3])).toThrow(/rate left/);
  });
});

describe("setRateChanges", () => {
  const intervals = (rates: readonly number[]) => {
    let counter = 0;
    const readings = [0, ...rates].map((rate, d) => {
      counter += (3 * rate) / 5;
      return {
        readAt: `${dateOf(d)}T18:00`,
        counterStrokes: Math.round(counter),
        settingMlPerStroke: 5,
      };
    });
    const days = rates.map((_, i) => ({ date: dateOf(i + 1), areaM2: 3 }));
    return deliveredRates({ readings, days }).intervals;
  };
  it("finds none in a rate left alone, nor in a single day logged late", () => {
    expect(setRateChanges(intervals([600, 600, 600, 600, 600]))).toEqual([]);
    expect(setRateChanges(intervals([600, 600, 600, 400, 800, 600, 600]))).toEqual([]);
    expect(setRateChanges([])).toEqual([]);
  });
  it("finds a step up and the return, each against the first rate", () => {
    const rates = [600, 600, 600, 660, 660, 660, 660, 600, 600, 600];
    const found = setRateChanges(intervals(rates));
    expect(found.map(({ date }) => date)).toEqual([dateOf(4), dateOf(8)]);
    expect(found[0]?.fraction).toBeCloseTo(0.1, 9);
    expect(found[1]?.fraction).toBeCloseTo(0, 9);
  });
});

describe("deliveredError and pumpEvidence", () => {
  const logs = lab({ seed: 11, days: 40, error: weak(25, -0.16) });
  const { intervals } = deliveredRates(logs);
  it("holds the truth before and since", () => {
    const before = deliveredError(intervals, { to: dateOf(24) });
    const since = deliveredError(intervals, { from: dateOf(25) });
    expect(Math.abs(before.error)).toBeLessThan(0.02);
    expect(since.errorInterval[0]).toBeLessThan(-0.16);
    expect(since.errorInterval[1]).toBeGreaterThan(-0.16);
  });
  it("refuses fewer than three evenings", () => {
    expect(() => deliveredError(intervals, { from: dateOf(38) })).toThrow(/longer span/);
  });
  it("names the pump at fault and lets the sound one be", () => {
    const sound = lab({ seed: 12, days: 40 });
    const pumps = [
      { pump: "developer", ...logs },
      { pump: "fixer", ...sound },
    ];
    const found = pumpEvidence(pumps, { since: dateOf(25) });
    expect(found.map(({ finding }) => finding)).toEqual([
      "delivers less than it is set to",
      "delivers what it is set to",
    ]);
    expect(found[0]?.cylinderSince).toBeNull();
  });
  it("gives one cylinder check the scatter that the line's other checks show", () => {
    const checked = (day: number, volumeMl: number) => ({
      ...(logs.readings[day] ?? { readAt: "", counterStrokes: 0, settingMlPerStroke: 5 }),
      cylinder: { strokes: 20, volumeMl },
    });
    const pump = (volumes: readonly [number, number, number]) => ({
      pump: "a",
      days: logs.days,
      readings: [checked(3, volumes[0]), checked(12, volumes[1]), checked(30, volumes[2])],
    });
    const [found] = pumpEvidence([pump([100, 101, 84]), pump([99, 100, 100])], {
      since: dateOf(25),
    });
    // Pooled: two pairs 1 % apart, sd 0.71 % on 2 degrees of freedom, t = 4.30; read to 1 mL in 100.
    const half = 4.3027 * Math.sqrt(0.01 ** 2 / 2 + 0.01 ** 2 / 12);
    expect(found?.cylinderSince?.error).toBeCloseTo(-0.16, 12);
    expect(found?.cylinderSince?.errorInterval[1]).toBeCloseTo(-0.16 + half, 4);
    expect(found?.cylinderBefore?.readings).toBe(2);
  });
  it("says that a pump was not measured", () => {
    const readings = logs.readings.map(({ readAt, counterStrokes, settingMlPerStroke }) => {
      return { readAt, counterStrokes, settingMlPerStroke };
    });
    const [found] = pumpEvidence([{ pump: "a", readings, days: logs.days }], { since: dateOf(25) });
    expect(found?.finding).toBe("not measured since");
  });
});

describe("rateAlarm", () => {
  it("raises a false alarm in about as many unchanged lines as it says", () => {
    const lines = 120;
    let alarms = 0;
    for (let seed = 0; seed < lines; seed++) {
      const { normal } = seededRandom(70_000 + seed);
      const turnovers = Array.from({ length: 45 }, (_, i) => i / 8);
      const deviations = turnovers.map(() => [0.01 * normal()]);
      const series = { turnovers, deviations, sensitivity: [0.4], noise: [[0.0001]] };
      if (rateAlarm(series, { draws: 200, seed: seed + 1 }).strip !== null) alarms++;
    }
    expect(alarms).toBeGreaterThan(0);
    expect(alarms / lines).toBeLessThan(0.05 + 4 * Math.sqrt((0.05 * 0.95) / lines));
  });
});

describe("slowShareOfNoise", () => {
  const wandering = (seed: number, share: number) => {
    const { normal } = seededRandom(seed);
    const turnovers = Array.from({ length: 120 }, (_, i) => i / 18);
    const z = new Float64Array(120);
    fillNoise(z, turnovers, share, normal);
    const deviations = Array.from(z, (each) => [0.01 * each]);
    return { turnovers, deviations, sensitivity: [0.5], noise: [[0.0001]] };
  };
  it("is about the share that the strips were made with, over thirty lines", () => {
    for (const share of [0, 0.4]) {
      const found = Array.from({ length: 30 }, (_, seed) => {
        const series = wandering(seed, share);
        return slowShareOfNoise(series, rateChange(series, { draws: 200 }));
      });
      const mean = found.reduce((sum, each) => sum + each, 0) / found.length;
      // The fit takes part of the wander for a change, so that a little less is left of it.
      expect(mean).toBeGreaterThan(share - 0.15);
      expect(mean).toBeLessThan(share + 0.1);
    }
  });
  it("keeps the test honest where independent strips were assumed before", () => {
    const lines = 50;
    let [naive, aware] = [0, 0];
    for (let seed = 0; seed < lines; seed++) {
      const series = wandering(500 + seed, 0.4);
      if (rateChange(series, { draws: 200 }).pValue <= 0.05) naive++;
      if (rateChange(series, { draws: 200, slowShare: 0.4 }).pValue <= 0.05) aware++;
    }
    expect(naive / lines).toBeGreaterThan(0.3);
    expect(aware / lines).toBeLessThan(0.05 + 4 * Math.sqrt((0.05 * 0.95) / lines));
  });
});

describe("rateProfile", () => {
  it("has its least at the best pair, where it is 0", () => {
    const { series } = rateWatch(lab({ seed: 3, days: 75, error: weak(52, -0.16) }), {
      sensitivity: SENSITIVITY,
    });
    const profile = rateProfile(series, { errors: [-0.4, 0.2] });
    const least = Math.min(...profile.byError.map(({ ratio }) => ratio));
    expect(least).toBe(0);
    const best = profile.byError.find(({ ratio }) => ratio === 0);
    expect(Math.abs((best?.error ?? 0) + 0.16)).toBeLessThan(0.03);
    expect(profile.surface).toHaveLength(profile.errors.length);
  });
});

describe("small parts", () => {
  it("oddStrips keeps constant and short series, and drifts", () => {
    expect(oddStrips([])).toEqual([]);
    expect(oddStrips([[0], [0]])).toEqual([]);
    expect(oddStrips(Array.from({ length: 30 }, (_, i) => [0.004 * i]))).toEqual([]);
    expect(() => oddStrips([[0], [Number.NaN], [0]])).toThrow(/deviations\[1\]/);
  });
  it("momentAtTurnovers stays within the strips", () => {
    const strips = { at: ["2026-08-13T08:00", "2026-08-14T08:00"], turnovers: [2, 2.2] };
    expect(momentAtTurnovers(strips, 1)).toBe("2026-08-13T08:00");
    expect(momentAtTurnovers(strips, 9)).toBe("2026-08-14T08:00");
    expect(() => momentAtTurnovers({ at: [], turnovers: [] }, 1)).toThrow(/at least one/);
  });
});
