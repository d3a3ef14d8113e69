import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { rateSensitivity } from "wetside/replenishment";
import { simulatedFaultEffect } from "wetside/simulate";
import { lab } from "../../data/pellow-street/make/lab.ts";
import { STEPS, stepTestFiles } from "../../data/pellow-street-step-test/make.ts";
import { filmTuning, stepTestChanges } from "./demo-tuning.ts";

const FOLDER = new URL("../../data/pellow-street-step-test/", import.meta.url);
const made = stepTestFiles();
const COLOURS = ["red", "green", "blue"] as const;

describe("the demo lab's step test", () => {
  for (const [name, text] of Object.entries(made)) {
    it(`is made again byte for byte: ${name}`, () => {
      expect(readFileSync(new URL(name, FOLDER), "utf8")).toBe(text);
    });
  }

  it("has no file that nobody makes", () => {
    expect(readdirSync(FOLDER).sort()).toEqual([...Object.keys(made), "make.ts"].sort());
  });

  const test = filmTuning("pellow-street-step-test");

  it("shows the changes of rate in the pump log's own column: 8 % more, 8 % less, and back", () => {
    const settings = test.readings.map(({ settingMlPerStroke }) => settingMlPerStroke);
    const expected = [
      ...new Array(14).fill(5),
      ...new Array(28).fill(5.4),
      ...new Array(28).fill(4.6),
      ...new Array(48).fill(5),
    ];
    expect(settings).toEqual(expected);
  });

  it("ends where the ninety days begin: the next day, with the counter where it was left", () => {
    const last = test.readings.at(-1);
    expect(last?.readAt.slice(0, 10)).toBe("2026-05-16");
    expect(last?.counterStrokes).toBe(
      lab.pumps.find(({ id }) => id === STEPS.bath)?.firstCounterStrokes,
    );
  });

  it("keeps every strip within the control limits and every week's mean within the action limits", () => {
    const start = Date.parse("2026-01-19");
    const weekOf = (at: string) => Math.floor((Date.parse(at.slice(0, 10)) - start) / (7 * 864e5));
    for (const { parameter, limits, deviations, takenAt } of test.series) {
      const [action, control] = [limits.action?.upper ?? 0, limits.control?.upper ?? 0];
      for (const each of deviations) expect(Math.abs(each), parameter).toBeLessThan(control);
      for (let week = 0; week < 16; week++) {
        const some = deviations.filter((_, i) => weekOf(takenAt[i] ?? "") === week);
        const mean = some.reduce((sum, each) => sum + each, 0) / some.length;
        expect(Math.abs(mean), `${parameter} in week ${week}`).toBeLessThan(action);
      }
    }
  });

  it("teaches the sensitivity that the simulator has, within its 95 % intervals", () => {
    const channels = rateSensitivity({
      turnovers: test.turnoversAt(test.strips.map(({ takenAt }) => takenAt)),
      deviations: test.strips.map(({ deviations }) => deviations),
      changes: stepTestChanges(test),
    });
    // The slope at a small error: the settled effect over its share of the rate.
    const error = 0.001;
    const effect = simulatedFaultEffect("colour-negative", "over-replenished", error);
    const slope = (patch: string, colour: (typeof COLOURS)[number]) =>
      ((effect[patch]?.[colour] ?? Number.NaN) * (1 + error)) / error;
    const truth = [
      ...COLOURS.map((colour) => slope("ld", colour)),
      ...COLOURS.map((colour) => slope("hd", colour) - slope("ld", colour)),
    ];
    expect(channels).toHaveLength(truth.length);
    channels.forEach(({ interval: [low, high] }, i) => {
      expect(low).toBeLessThan(truth[i] ?? Number.NaN);
      expect(high).toBeGreaterThan(truth[i] ?? Number.NaN);
    });
  });
});
