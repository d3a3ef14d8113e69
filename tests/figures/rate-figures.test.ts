import { describe, expect, it } from "vitest";
import {
  rateAdviceSheet,
  rateAgreementFigure,
  rateFitFigure,
  rateLikelihoodExplorer,
  ratePathFigure,
  rateProfileFigure,
  rateSequenceFigure,
  rateVerdictLine,
  stepTestFigure,
} from "wetside/figures";
import { seededRandom } from "wetside/numerics";
import {
  type RateLogs,
  rateAnswer,
  rateProfile,
  sensitivityFromLogs,
  sequentialRateChange,
  tuneRate,
} from "wetside/replenishment";
import { holdFigureLaws } from "./figure-laws.ts";

const dateOf = (day: number) => new Date(Date.UTC(2026, 4, 1 + day)).toISOString().slice(0, 10);
const channels = [
  { parameter: "ld", colour: "red" },
  { parameter: "hdLessLd", colour: "red" },
];
const sensitivity = [0.5, 0.25];

/** Seventy days of 0.09 turnovers; `error` since day 50, or a setting of 5.5 mL on days 10 to 30. */
function logs(error: number, test = false): RateLogs {
  const { normal } = seededRandom(7);
  const setting = (day: number) => (test && day >= 10 && day < 30 ? 5.5 : 5);
  const days = Array.from({ length: 70 }, (_, day) => day);
  const readings = days.map((day) => ({
    readAt: `${dateOf(day)}T18:00`,
    counterStrokes: 360 * day,
    settingMlPerStroke: setting(day),
  }));
  const row = (day: number) => {
    const n = 0.09 * day;
    const weak = rateAnswer(error, n - 4.5);
    const up = test ? rateAnswer(0.1, n - 0.9) : 0;
    const x = test && day >= 30 ? 0.08 * Math.exp(2.7 - n) : weak + up;
    return sensitivity.map((s) => s * x + 0.008 * normal());
  };
  const at = days.flatMap((day) => [`${dateOf(day)}T18:10`, `${dateOf(day)}T18:20`]).slice(0, -2);
  return {
    readings,
    days: days.map((day) => ({ date: dateOf(day), areaM2: 3 })),
    volumeL: 20,
    strips: { at, deviations: at.map((_, i) => row(Math.floor(i / 2))) },
  };
}

const weak = tuneRate(logs(-0.18), { sensitivity });
const sound = tuneRate(logs(0), { sensitivity });
const learned = sensitivityFromLogs(logs(0, true));
const profile = rateProfile(weak.watch.series, { errors: [-0.4, 0.1] });
const estimates = sequentialRateChange(weak.watch.series);
const witnesses = [
  { name: "strips", error: -0.18, interval: [-0.2, -0.16], suspect: true },
  { name: "film-fixer", error: 0.01, interval: [-0.01, 0.03] },
] as const;

const figures = holdFigureLaws(() => ({
  "weak pump": rateFitFigure(weak, { title: "A weak pump", channels }),
  "sound pump": rateFitFigure(sound, { title: "A sound pump", channels }),
  "step test": stepTestFigure(learned, { title: "A step test", channels }),
  profile: rateProfileFigure(profile, weak, { title: "Likelihood" }),
  sequence: rateSequenceFigure(estimates, weak, { title: "Strip by strip" }),
  path: ratePathFigure(weak, {
    title: "The way back",
    channels,
    limits: { "action limit": -0.06 },
  }),
  "path of a sound pump": ratePathFigure(sound, { title: "Nothing to do", channels }),
  witnesses: rateAgreementFigure(witnesses, { title: "Witnesses" }),
}));

describe("the figures of a tuned pump", () => {
  it("say in words what they show", () => {
    expect(figures["weak pump"].description).toMatch(/off by −1\d\.\d %/);
    expect(figures["sound pump"].description).toContain("no change to speak of");
    expect(figures["step test"].description).toContain("660 mL/m²");
    expect(figures.sequence.description).toContain("The alarm fell");
    expect(figures.witnesses.description).toContain("film-fixer +1.0 % (−1.0 % to +3.0 %)");
  });
  it("refuse channels that are not the strips', and a parameter that is not there", () => {
    const one = channels.slice(0, 1);
    expect(() => rateFitFigure(weak, { title: "x", channels: one })).toThrow(/write 2 channels/);
    const wrong = { title: "x", channels, parameter: "dMin" };
    expect(() => ratePathFigure(weak, wrong)).toThrow(/ld, hdLessLd/);
    const inside = [{ name: "a", error: 0.2, interval: [0, 0.1] as const }];
    expect(() => rateAgreementFigure(inside, { title: "x" })).toThrow(/interval of a/);
  });
  it("let the likelihood be explored, best pair marked", () => {
    const figure = rateLikelihoodExplorer(profile, weak, { title: "Pairs" });
    expect(figure.data).toHaveLength(2);
    expect(JSON.stringify(figure.data)).not.toContain("null");
  });
});

describe("the advice in words", () => {
  it("mends the pump first, and says to set it back on that day", () => {
    const text = rateAdviceSheet(weak, { lab: "Shed", pump: "developer", witnesses });
    expect(text.indexOf("Mend the pump: valves")).toBeGreaterThan(0);
    expect(text.indexOf("Mend the pump: valves")).toBeLessThan(text.indexOf("UNTIL IT IS MENDED"));
    expect(text).toContain("set it back to 5 mL a stroke");
    expect(Math.max(...text.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
  });
  it("sets a pump that was raised before back to the rate of before", () => {
    const watch = { ...weak.watch, setFractionNow: 0.08, settingMlPerStroke: 5.4 };
    const text = rateAdviceSheet({ ...weak, watch }, { lab: "Shed", pump: "developer" });
    expect(text).not.toContain("set it back to 5.4 mL");
    expect(text.replaceAll(/\s+/g, " ")).toContain(
      `set it back to ${watch.firstRateMlPerM2.toFixed(0)} mL/m², as at the beginning of the log (5.00 mL a stroke)`,
    );
  });
  it("names no day to look again where the line stood idle", () => {
    const { lookAgainDays: _, ...advice } = weak.advice;
    const text = rateAdviceSheet({ ...weak, advice }, { lab: "Shed", pump: "developer" });
    expect(text).toContain("One tank turnover on (the line stood idle");
  });
  it("leaves a sound pump alone, in one line too", () => {
    expect(rateVerdictLine(sound, "developer")).toMatch(/^developer: no change to speak of/);
    expect(rateAdviceSheet(sound, { lab: "Shed", pump: "developer" })).toContain("Leave the rate");
  });
});
