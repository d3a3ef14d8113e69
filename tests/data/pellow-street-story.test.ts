import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  colourNegativeProcess,
  colourPaperProcess,
  crossoversOfStrips,
  morningCall,
  stripHistories,
  verdictHistory,
} from "wetside/control";
import { parseStripBatchRegister, parseStripLogs, requireCleanLog } from "wetside/records";
import {
  areaByDay,
  noiseCovariance,
  rateChange,
  rateSensitivity,
  tuneRate,
} from "wetside/replenishment";
import { revealFaults } from "wetside/simulate";
import { batches as madeBatches } from "../../data/pellow-street/make/batches.ts";
import { film, paper } from "../../data/pellow-street/make/lines.ts";
import * as plan from "../../data/pellow-street/make/plan.ts";
import { simulateLineOfPellowStreet } from "../../data/pellow-street/make/simulation.ts";
import { filmTuning, stepTestChanges } from "./demo-tuning.ts";

const read = (file: string) => ({
  file,
  text: readFileSync(new URL(`../../data/pellow-street/${file}`, import.meta.url), "utf8"),
});
const register = read("strip-batches.csv");
const batches = requireCleanLog(parseStripBatchRegister(register.text, register));
const files = ["film-strips.csv", "paper-strips.csv"].map(read);
const strips = requireCleanLog(parseStripLogs(files, { batches }));
const crossovers = crossoversOfStrips(strips, batches);
const specifications = [colourNegativeProcess, colourPaperProcess];
const lab = { strips, batches, crossovers, specifications, charts: { baseDays: 21 } };

describe("the demo lab's simulation", () => {
  it("hides what the plan says, and nothing else", () => {
    const hidden = [film, paper].flatMap((line) => revealFaults(simulateLineOfPellowStreet(line)));
    expect(hidden.map(({ kind, fromDate, size }) => [kind, fromDate, size])).toEqual([
      ["under-replenished", plan.PUMP_FAULT.from, -plan.PUMP_FAULT.error],
      ["contaminated-with-fixer", plan.CONTAMINATION.day, plan.CONTAMINATION.fixerMlPerL],
      ["strip-mishandled", plan.FALSE_ALARMS.film.day, 1],
      ["developer-too-warm", plan.HEATER_FAULT.from, plan.HEATER_FAULT.offsetC],
      ["strip-mishandled", plan.FALSE_ALARMS.paper.day, 1],
    ]);
  });
});

describe("the morning of 2026-08-14", () => {
  const [filmCall, paperCall] = morningCall(lab).processes;

  it("acts on the film line: LD red beyond its action limit, within control, and work may run", () => {
    expect([filmCall?.verdict, filmCall?.workMayRun]).toEqual(["act", true]);
    expect(filmCall?.reason).toMatch(/^LD \(speed\) red is −0\.07\d, below the action limit/);
  });

  it("runs the paper line", () => {
    expect([paperCall?.verdict, paperCall?.workMayRun]).toEqual(["run", true]);
  });

  it("follows ninety days in which only the contamination and the two bad strips stopped work", () => {
    const stopped = stripHistories(lab).map((history) => [
      ...new Set(
        verdictHistory(history)
          .filter(({ workMayRun }) => !workMayRun)
          .map(({ day }) => day),
      ),
    ]);
    expect(stopped).toEqual([
      [plan.CONTAMINATION.day, plan.FALSE_ALARMS.film.day],
      [plan.FALSE_ALARMS.paper.day],
    ]);
  });

  it("crosses batches over where the pairs agree, and finds how far the printed aims are off", () => {
    /** Five pairs of strips that differ by some 0.010 each. */
    const PAIRS_TOLERANCE = 0.02;
    expect(crossovers.map(({ pairs, warnings }) => [pairs, warnings])).toEqual([
      [5, []],
      [5, []],
    ]);
    crossovers.forEach(({ differences, to }) => {
      const off = Object.values(madeBatches)
        .flat()
        .find(({ id }) => id === to)?.aimsOff;
      for (const { patch, colour, againstOwnAim } of differences) {
        const truth = off?.[patch]?.[colour] ?? 0;
        expect(
          Math.abs((againstOwnAim ?? Number.NaN) - truth),
          `${to} ${patch} ${colour}`,
        ).toBeLessThan(PAIRS_TOLERANCE);
      }
    });
  });
});

describe("tuning on the demo lab", () => {
  const test = filmTuning("pellow-street-step-test");
  const learned = rateSensitivity({
    turnovers: test.turnoversAt(test.strips.map(({ takenAt }) => takenAt)),
    deviations: test.strips.map(({ deviations }) => deviations),
    changes: stepTestChanges(test),
  });
  const main = filmTuning("pellow-street");
  const fresh = `${plan.CONTAMINATION.day}T12:00`;
  // The first strip of that day had seen light, as its repeat told the same morning.
  const bad = main.strips.find(({ takenAt }) => takenAt.startsWith(plan.FALSE_ALARMS.film.day));
  const used = main.strips.filter((strip) => strip.takenAt >= fresh && strip !== bad);
  const quiet = used.filter(({ takenAt }) => takenAt < "2026-07-12");
  const found = rateChange({
    turnovers: main.turnoversAt(used.map(({ takenAt }) => takenAt)),
    deviations: used.map(({ deviations }) => deviations),
    sensitivity: learned.map(({ sensitivity }) => sensitivity),
    noise: noiseCovariance(quiet.map(({ deviations }) => deviations)),
  });

  it("calls the pump's change", () => {
    expect(found.finding).toBe("rate changed");
    expect(found.pValue).toBeLessThan(0.01);
  });

  it("has the pump's error within its 95 % interval", () => {
    const [low, high] = found.errorInterval;
    expect(low).toBeLessThan(plan.PUMP_FAULT.error);
    expect(high).toBeGreaterThan(plan.PUMP_FAULT.error);
    expect(high - low).toBeLessThan(0.1);
  });

  it("has the morning on which the pump failed within its 95 % interval", () => {
    const [morning] = main.turnoversAt([`${plan.PUMP_FAULT.from}T08:00`]);
    const [early, late] = found.changeAtInterval;
    expect(early).toBeLessThan(morning ?? Number.NaN);
    expect(late).toBeGreaterThan(morning ?? Number.NaN);
  });

  it("does so in one call over both folders, too, and sets the pump nearly right", () => {
    const { days } = areaByDay([...test.rows, ...main.rows], { process: "colour-negative" });
    const strips = [...test.strips, ...main.strips];
    const { change, changeAtInterval, watch, newSettingMlPerStroke } = tuneRate(
      {
        readings: [...test.readings, ...main.readings],
        days,
        volumeL: 20,
        strips: {
          at: strips.map(({ takenAt }) => takenAt),
          deviations: strips.map(({ deviations }) => deviations),
        },
      },
      { leaveOut: [plan.CONTAMINATION.day] },
    );
    expect([change.finding, watch.sensitivityFrom]).toEqual(["rate changed", "step test"]);
    expect(change.errorInterval[0]).toBeLessThan(plan.PUMP_FAULT.error);
    expect(change.errorInterval[1]).toBeGreaterThan(plan.PUMP_FAULT.error);
    const failed = `${plan.PUMP_FAULT.from}T08:00`;
    expect(changeAtInterval[0] < failed && failed < changeAtInterval[1]).toBe(true);
    // The largest step that is advised at once is 15 %.
    expect(newSettingMlPerStroke).toBeCloseTo(5.75, 10);
  });
});
