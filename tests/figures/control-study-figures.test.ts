import { describe, expect, it } from "vitest";
import {
  changePoint,
  gaugeStudyByAnova,
  gaugeStudyByRange,
  proportionChart,
  rankedReasons,
  runLengthDistribution,
  simulateRunLengths,
  trendOutlook,
} from "wetside/control";
import {
  changePointFigure,
  falseAlarmFigure,
  gaugeComponentsFigure,
  gaugeReadingsFigure,
  proportionChartFigure,
  remakeReasonsFigure,
  runLengthDistributionFigure,
  runLengthFigure,
  trendFigure,
} from "wetside/figures";
import { holdFigureLaws } from "./figure-laws.ts";

const curve = (name: string, ...readings: number[]) => ({
  name,
  points: readings.map((each, i) => ({ size: 0.1 * (i + 1), readings: each })),
});
const rule = { chart: "individuals", limitWidth: 3 } as const;
const simulated = simulateRunLengths(rule, { shift: 2 }, { runs: 400, seed: 5 });
const byReading = runLengthDistribution(rule, { shift: 2 }, 60);
const days = Array.from({ length: 12 }, (_, i) => `2026-03-${String(i + 1).padStart(2, "0")}`);
const sizes = days.map((_, i) => (i % 6 === 0 ? 200 : 1000));
const counts = sizes.map((size, i) => Math.round(size * (i === 4 ? 0.09 : 0.03)));
const binomial = proportionChart(counts, sizes, { limits: "binomial" });
const laney = proportionChart(counts, sizes, { limits: "Laney" });
const reasons = rankedReasons([
  { reason: "too dim", count: 30, costEach: 0.4 },
  { reason: "marks", count: 10, costEach: 2 },
]);
const study = {
  operators: ["A", "B"],
  patches: ["x", "y"],
  readings: [
    [
      [0.2, 0.22],
      [1, 1.01],
    ],
    [
      [0.21, 0.21],
      [1.02, 1],
    ],
  ],
};
const times = Array.from({ length: 12 }, (_, i) => i);
const falling = times.map((t) => -0.004 * t + (t % 2 === 0 ? 0.003 : -0.003));
const series = { from: "2026-03-01", times, values: falling };
const outlook = trendOutlook(times, falling, { limits: [-0.06, 0.06] });
const stepped = [0, 1, 0, 1, 0, 1, 5, 6, 5, 6, 5, 6].map((v) => v / 100);
const takenAt = days.map((day) => `${day}T08:00`);

const figures = holdFigureLaws(() => ({
  "run lengths under drift": runLengthFigure([curve("one", 200, 50, 8), curve("two", 120, 40, 9)], {
    change: "drift",
    stripsPerDay: 2,
  }),
  "false alarms": falseAlarmFigure([{ name: "3 sigma", perYear: 1.97 }]),
  "simulated run lengths": runLengthDistributionFigure(simulated.runLengths, byReading, {
    title: "At 2 sigma",
  }),
  "a daily share": proportionChartFigure(days, binomial, { title: "Remakes", compare: laney }),
  reasons: remakeReasonsFigure(reasons, { title: "Why" }),
  "gauge components": gaugeComponentsFigure([
    gaugeStudyByRange(study.readings),
    gaugeStudyByAnova(study.readings),
  ]),
  "gauge readings": gaugeReadingsFigure(study),
  "a trend": trendFigure(series, outlook, { title: "LD" }),
  "a change point": changePointFigure({ takenAt, values: stepped }, changePoint(stepped), {
    title: "LD",
  }),
}));

describe("figures of run lengths, remakes, gauge and trend", () => {
  it("say run lengths in readings and in days, at both ends of each curve", () => {
    const { description } = figures["run lengths under drift"];
    expect(description).toContain(
      "one: 200 readings (100 days) at 0.1, 8 readings (4 days) at 0.3",
    );
  });

  it("put the same heights on the scale of readings and on that of days", async () => {
    const figure = figures["run lengths under drift"];
    const layers = figure.specification.layer as {
      encoding: { y: { scale: { domain: number[] } } };
    }[];
    const [readings = [], inDays = []] = layers.map((layer) => layer.encoding.y.scale.domain);
    expect(readings.map((each) => each / 2)).toEqual(inDays);
  });

  it("say how many bars of a simulation lie beyond two Monte Carlo errors", () => {
    const honest = figures["simulated run lengths"].description;
    const beyond = Number(/(\d+) of \d+ bars/.exec(honest)?.[1]);
    expect(beyond).toBeLessThanOrEqual(3);
    const wrong = runLengthDistribution(rule, { shift: 1.5 }, 60);
    const { description } = runLengthDistributionFigure(simulated.runLengths, wrong, {
      title: "The wrong theory",
    });
    expect(Number(/(\d+) of \d+ bars/.exec(description)?.[1])).toBeGreaterThan(5);
  });

  it("name the days beyond binomial and beyond Laney limits apart", () => {
    const { description } = figures["a daily share"];
    expect(description).toContain("beyond binomial limits: 5 Mar 2026");
    expect(description).toMatch(/beyond Laney limits: (no day|5 Mar 2026)/);
  });

  it("rank reasons by count or by cost", () => {
    expect(figures.reasons.description).toBe(
      "Ranked by count: too dim 30 (75 %); marks 10 (25 %).",
    );
    const byCost = rankedReasons(
      [
        { reason: "too dim", count: 30, costEach: 0.4 },
        { reason: "marks", count: 10, costEach: 2 },
      ],
      "cost",
    );
    expect(remakeReasonsFigure(byCost, { title: "Why", by: "cost" }).description).toContain(
      "marks 20 (63 %); too dim 12 (38 %)",
    );
  });

  it("give the day of crossing with its interval, and only for a limit ahead", () => {
    const { description } = figures["a trend"];
    expect(description).toMatch(/reaches −0\.060 on 1\d Mar 2026 \(1\d Mar 2026 to \d+ Mar 2026\)/);
    expect(description).not.toContain("+0.060");
  });

  it("name no day where there is no trend to speak of", () => {
    const level = times.map((t) => (t % 2 === 0 ? 0.01 : -0.01));
    const none = trendOutlook(times, level, { limits: [0.06] });
    const figure = trendFigure({ ...series, values: level }, none, { title: "LD", limits: [0.06] });
    expect(figure.description).toContain("No trend to speak of");
    expect(figure.description).toContain("No limit is crossed ahead");
  });

  it("say when the level changed, between what and how surely", () => {
    const { description } = figures["a change point"];
    expect(description).toContain("from +0.005 to +0.055 at 7 Mar 08:00");
    expect(description).toContain("confidence");
  });

  it.each([
    [() => runLengthFigure([], { change: "shift", stripsPerDay: 1 }), "1 to 6"],
    [() => runLengthFigure([curve("a", 0)], { change: "shift", stripsPerDay: 1 }), "readings"],
    [() => runLengthFigure([curve("a", 9)], { change: "shift", stripsPerDay: 0 }), "stripsPerDay"],
    [
      () =>
        runLengthFigure([{ name: "a", points: [{ size: 0, readings: 9 }] }], {
          change: "drift",
          stripsPerDay: 1,
        }),
      "size",
    ],
    [() => falseAlarmFigure([]), "at least one"],
    [() => falseAlarmFigure([{ name: "a", perYear: -1 }]), "perYear"],
    [() => runLengthDistributionFigure([1, 2], byReading, { title: "a" }), "number of runs"],
    [() => runLengthDistributionFigure(simulated.runLengths, [], { title: "a" }), "probabilities"],
    [() => proportionChartFigure(days.slice(1), binomial, { title: "a" }), "12 days"],
    [() => remakeReasonsFigure([], { title: "a" }), "above 0"],
    [() => gaugeComponentsFigure([]), "at least one"],
    [
      () => trendFigure({ ...series, times: times.slice(1) }, outlook, { title: "a" }),
      "write 12 times",
    ],
    [
      () => changePointFigure({ takenAt, values: [1] }, changePoint(stepped), { title: "a" }),
      "write 1 times",
    ],
    [
      () =>
        changePointFigure(
          { takenAt: takenAt.slice(0, 6), values: stepped.slice(0, 6) },
          changePoint(stepped),
          { title: "a" },
        ),
      "from these values",
    ],
  ])("refuse what cannot be drawn (%#)", (make, message) => {
    expect(make).toThrow(message);
  });
});
