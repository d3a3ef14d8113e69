import { describe, expect, it } from "vitest";
import {
  aimsOfBatch,
  type ChartChoices,
  colourPaperProcess,
  controlCharts,
  crossover,
} from "wetside/control";
import { batch, batches, morning, paperStrip, reference } from "../example-strips.ts";

const wobble = [0, 0.02, 0.01, 0.03, 0.01];
const days = Array.from({ length: 25 }, (_, i) => i + 1);
const strips = days.map((day) => paperStrip(morning(day), wobble[day % 5] ?? 0));
const history = { strips, batches, specification: colourPaperProcess };
const choices: ChartChoices = { basePeriod: { from: "2026-08-01", to: "2026-08-20" } };
const ldRed = (given: typeof history = history, chosen: ChartChoices = choices) =>
  controlCharts(given, chosen).find(
    ({ series }) => series.parameter === "ld" && series.colour === "red",
  );

describe("control charts of a process", () => {
  it("rest on the base period, a date including its whole day", () => {
    expect(ldRed()?.limits?.baseReadings).toBe(20);
    const evening = { ...choices, basePeriod: { from: "2026-08-01", to: "2026-08-20T07:09" } };
    expect(() => ldRed(history, evening)).toThrow(/D-min red, number of readings.*is 19/);
  });
  it("take the base period by rows of the strips as well", () => {
    const byRows = ldRed(history, { basePeriod: { firstRow: 0, lastRow: 19 } });
    expect(byRows?.limits).toEqual(ldRed()?.limits);
  });
  it("leave strips with a known cause out of the base period, by day or by time", () => {
    const spoiled = strips.map((strip, i) => (i === 9 ? paperStrip(morning(10), 0.5) : strip));
    const given = { ...history, strips: spoiled };
    for (const text of ["2026-08-10", "2026-08-10T07:10"]) {
      const chart = ldRed(given, { ...choices, exclude: [text], minimumReadings: 19 });
      expect(chart?.limits?.baseReadings).toBe(19);
      expect(chart?.limits?.upperLimit).toBeLessThan(0.1);
      expect(chart?.individuals?.beyond).toEqual([9]);
    }
    expect(ldRed(given)?.limits?.upperLimit).toBeGreaterThan(0.1);
    expect(() => ldRed(given, { ...choices, exclude: ["9 August"] })).toThrow(/exclude\[0\]/);
  });
  it("refuse a base period without strips, the wrong way round, or not a date", () => {
    const period = (from: string, to: string) => () =>
      controlCharts(history, { basePeriod: { from, to } });
    expect(period("2025-01-01", "2025-02-01")).toThrow(/choose a period in which strips were run/);
    expect(period("2026-08-20", "2026-08-01")).toThrow(/from before to/);
    expect(period("1 August", "20 August")).toThrow(/write local dates/);
  });
  it("say why a series has no chart instead of failing the others", () => {
    const charts = controlCharts(history, choices);
    const dMin = charts.find(({ series }) => series.parameter === "dMin");
    expect(dMin?.limits).toBeNull();
    expect(dMin?.notCharted).toMatch(/all readings of the base period are equal/);
    const spread = charts.find(({ series }) => series.parameter === "colourSpread");
    expect(spread?.notCharted).toMatch(/spread is a range/);
  });
  it("leave out series whose base period is too short or empty, if asked, and say why", () => {
    const leaveOut = { ...choices, ifBaseTooShort: "leave out" } as const;
    const said = (chosen: ChartChoices) => ldRed(history, { ...leaveOut, ...chosen })?.notCharted;
    expect(said({ basePeriod: { from: "2026-08-01", to: "2026-08-19" } })).toBe(
      "19 readings in the base period, at least 20 are needed",
    );
    expect(said({ ...choices, exclude: ["2026-08-04", "2026-08-25"] })).toMatch(/^19 readings/);
    expect(said({ basePeriod: { from: "2025-01-01", to: "2025-02-01" } })).toBe(
      "no strip was run in the base period",
    );
    expect(said(choices)).toBeNull();
  });
  it("start the sums of the CUSUM again once a shift is over, unless told to let them stand", () => {
    const shifted = days.map((day) => paperStrip(morning(day), day === 21 ? 0.5 : 0.01));
    const given = {
      ...history,
      strips: [...strips.slice(0, 20), ...shifted.slice(20)],
    };
    const standing = (chosen: ChartChoices) => ldRed(given, chosen)?.cusum?.beyond.at(-1);
    const hasty = { ...choices, cusum: { h: 1.5, k: 1 } };
    expect(standing({ ...choices, cusum: { ...hasty.cusum, afterSignal: "carry on" } })).toBe(24);
    expect(standing(hasty)).toBeLessThan(24);
  });
  it("start afresh at a new batch without a crossover and carry on across one", () => {
    const changed = strips.map((strip, i) => (i < 22 ? strip : { ...strip, stripBatch: "88" }));
    const two = {
      strips: changed,
      batches: [...batches, batch("88")],
      specification: colourPaperProcess,
    };
    const ranges = (chart: ReturnType<typeof ldRed>) => chart?.individuals?.movingRange.rows.length;
    expect(ranges(ldRed(two))).toBe(23);
    expect(ranges(ldRed(two, { ...choices, atBatchChange: "carry on" }))).toBe(24);
    const pair = {
      old: paperStrip(morning(22), 0),
      new: paperStrip(morning(22), 0, { stripBatch: "88" }),
    };
    const over = crossover(aimsOfBatch(batch("77")), [pair, pair, pair]);
    const crossed = { ...two, crossovers: [over] };
    expect(ranges(ldRed(crossed))).toBe(24);
    expect(ranges(ldRed(crossed, { ...choices, atBatchChange: "restart" }))).toBe(23);
  });
  it("carry on over a missing reading unless told to start afresh", () => {
    const { ld: _, ...without } = reference;
    const gappy = strips.map((strip, i) => (i === 22 ? { ...strip, patches: without } : strip));
    const given = { ...history, strips: gappy };
    expect(ldRed(given)?.series.gaps).toEqual([22]);
    expect(ldRed(given)?.individuals?.movingRange.rows.length).toBe(23);
    const fresh = ldRed(given, { ...choices, atGap: "restart" });
    expect(fresh?.individuals?.movingRange.rows.length).toBe(22);
  });
  it("centre on the aim if asked", () => {
    expect(ldRed(history, { ...choices, centre: "aim" })?.limits?.centre).toBe(0);
    expect(ldRed(history, { ...choices, centre: "aim" })?.cusum?.target).toBe(0);
    expect(ldRed()?.limits?.centre).toBeCloseTo(0.014, 12);
  });
  it("are safe to write as JSON", () => {
    const charts = controlCharts(history, choices);
    expect(JSON.parse(JSON.stringify(charts))).toEqual(charts);
  });
  it("have nothing to chart where the process has no strips", () => {
    const empty = controlCharts({ ...history, strips: [] }, choices);
    expect(empty.every((chart) => chart.notCharted !== null)).toBe(true);
  });
});
