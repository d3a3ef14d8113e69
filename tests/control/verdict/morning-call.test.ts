import { describe, expect, it } from "vitest";
import {
  colourNegativeProcess,
  colourPaperProcess,
  comparedDays,
  morningCall,
  morningCharts,
  type Strip,
  startUpCheck,
  stripHistories,
  verdictHistory,
} from "wetside/control";
import { batch, batches, grey, morning, paperStrip, reference } from "../example-strips.ts";

const negativeReference = { ...reference, retainedSilver: grey(2.2) };
const negative = batch("N1", { process: "colour-negative", reference: negativeReference });
const negativeStrip = (takenAt: string, ld: number): Strip => ({
  ...paperStrip(takenAt, 0),
  process: "colour-negative",
  stripBatch: "N1",
  patches: { ...negativeReference, ld: grey(0.8 + ld), hd: grey(1.6 + ld) },
});
const both = [colourNegativeProcess, colourPaperProcess];
const all = [...batches, negative];

describe("the morning call", () => {
  it("is as bad as its worst process, and gives that one's reason", () => {
    const strips = [paperStrip(morning(1), 0), negativeStrip(morning(1), 0.07)];
    const call = morningCall({ strips, batches: all, specifications: both });
    expect(call.verdict).toBe("act");
    expect(call.reason).toMatch(/^Colour-negative film process: LD \(speed\) red is \+0\.07/);
    expect(call.processes.map((each) => each.verdict)).toEqual(["act", "run"]);
    expect(call.processes[0]?.next).toMatch(/^Customer film may run/);
  });
  it("says so when all is well", () => {
    const strips = [paperStrip(morning(1), 0), negativeStrip(morning(1), 0)];
    const call = morningCall({ strips, batches: all, specifications: both });
    expect([call.verdict, call.reason]).toEqual(["run", "all 2 processes are within limits"]);
    expect(JSON.parse(JSON.stringify(call))).toEqual(call);
  });
  it("takes the latest strip of any process for the time if none is given, so that one line can be stale", () => {
    const strips = [paperStrip(morning(1), 0), negativeStrip(morning(2), 0)];
    const call = morningCall({ strips, batches: all, specifications: both });
    expect(call.asOf).toBe(morning(2));
    expect(call.processes.map((each) => each.workMayRun)).toEqual([true, false]);
  });
  it("holds a process without strips", () => {
    const call = morningCall({
      strips: [paperStrip(morning(1), 0)],
      batches: all,
      specifications: both,
    });
    expect(call.verdict).toBe("hold");
    const empty = morningCall({ strips: [], batches: [], specifications: [colourPaperProcess] });
    expect([empty.verdict, empty.asOf]).toEqual(["hold", ""]);
  });
  it("warns of strips of a process nobody specified", () => {
    const strips = [
      paperStrip(morning(1), 0),
      paperStrip(morning(1), 0, { process: "color-paper" }),
    ];
    const call = morningCall({ strips, batches, specifications: [colourPaperProcess] });
    expect(call.warnings).toEqual([
      '1 strip of process "color-paper" not judged: no specification has that id (did you mean "colour-paper"?)',
    ]);
  });
  it("takes a base period of its own for a process", () => {
    const strips = Array.from({ length: 25 }, (_, i) => paperStrip(morning(i + 1), (i % 3) / 100));
    const call = morningCall({
      strips,
      batches,
      specifications: [colourPaperProcess],
      charts: { basePeriod: { from: "2025-01-01", to: "2025-02-01" } },
      basePeriods: { "colour-paper": { from: "2026-08-01", to: "2026-08-25" } },
    });
    expect(call.processes[0]?.assumptions.join()).toMatch(/run rules/);
  });
  it("takes the first days in control of each process if charts are asked for without a period", () => {
    const wobble = (i: number) => (i % 3) / 100;
    const lab = {
      strips: [
        ...Array.from({ length: 25 }, (_, i) => paperStrip(morning(i + 1), wobble(i))),
        ...Array.from({ length: 5 }, (_, i) => negativeStrip(morning(i + 21), wobble(i))),
      ],
      batches: all,
      specifications: both,
      charts: { baseDays: 22, cusum: { h: 4 } },
    };
    const [negativeLine, paperLine] = morningCall(lab).processes;
    expect(paperLine?.statisticalBase).toEqual({
      charts: {
        ifBaseTooShort: "leave out",
        cusum: { h: 4 },
        basePeriod: { from: "2026-08-01", to: "2026-08-22" },
        exclude: [],
      },
      reason: "22 strips on 22 days in control, 2026-08-01 to 2026-08-22",
    });
    expect(negativeLine?.statisticalBase).toEqual({
      charts: null,
      reason:
        "4 strips on 4 days in control before the latest strip's day; at least 20 are needed, so 16 more",
    });
    expect(negativeLine?.assumptions.join()).toMatch(/there is no base period/);
    const charts = morningCharts(lab);
    expect(new Set(charts.map((one) => one.series.process))).toEqual(new Set(["colour-paper"]));
    expect(charts.find((one) => one.cusum !== null)?.limits?.baseReadings).toBe(22);
    expect(morningCharts({ ...lab, charts: undefined as never })).toEqual([]);
  });
  it("leaves a process without statistical limits, and says why, where a stated period does not serve", () => {
    const strips = Array.from({ length: 25 }, (_, i) => paperStrip(morning(i + 1), (i % 3) / 100));
    const reasonFor = (from: string, to: string) =>
      morningCall({
        strips,
        batches,
        specifications: [colourPaperProcess],
        charts: { basePeriod: { from, to } },
      }).processes[0]?.statisticalBase;
    expect(reasonFor("2026-08-01", "2026-08-10")).toEqual({
      charts: null,
      reason: "10 readings in the base period, at least 20 are needed",
    });
    expect(reasonFor("2025-08-01", "2025-08-10")?.reason).toMatch(/no strip was run/);
    expect(() => reasonFor("1 August", "2026-08-10")).toThrow(/write local dates/);
  });
  it("refuses no specification, one twice, and a base period for an unknown process", () => {
    const call = (change: object) => () =>
      morningCall({ strips: [], batches: [], specifications: both, ...change });
    expect(call({ specifications: [] })).toThrow(/write at least one/);
    expect(call({ specifications: [colourPaperProcess, colourPaperProcess] })).toThrow(/once/);
    expect(call({ basePeriods: { x: { firstRow: 0, lastRow: 1 } } })).toThrow(/basePeriods is "x"/);
  });
});

describe("the histories of a lab's processes", () => {
  it("leave out a process without a strip up to the time asked for", () => {
    const strips = [paperStrip(morning(2), 0), negativeStrip(morning(1), 0)];
    const lab = { strips, batches: all, specifications: both };
    const ids = (asOf?: string) =>
      stripHistories({ ...lab, ...(asOf === undefined ? {} : { asOf }) }).map(
        (one) => one.specification.id,
      );
    expect(ids()).toEqual(["colour-negative", "colour-paper"]);
    expect(ids(morning(1, "12:00"))).toEqual(["colour-negative"]);
    expect(ids("2025-01-01T00:00")).toEqual([]);
  });
});

describe("the days that are compared", () => {
  it("are the latest strip's, the day before it and the last good day of each process", () => {
    const strips = [
      paperStrip(morning(1), 0),
      paperStrip(morning(4), 0.09),
      paperStrip(morning(6), 0.09),
      negativeStrip(morning(6), 0),
    ];
    const call = morningCall({ strips, batches: all, specifications: both });
    expect(comparedDays(call, strips)).toEqual(["2026-08-01", "2026-08-04", "2026-08-06"]);
    const early = morningCall({
      strips,
      batches: all,
      specifications: both,
      asOf: morning(4, "12:00"),
    });
    expect(comparedDays(early, strips)).toEqual(["2026-08-01", "2026-08-04"]);
  });
});

describe("the history of verdicts", () => {
  it("tells the verdict after each strip and which strip ends its day", () => {
    const strips = [
      paperStrip(morning(2), 0.12),
      paperStrip(morning(1), 0),
      paperStrip(morning(2, "07:30"), 0.12),
      paperStrip(morning(2, "11:00"), 0.02),
    ];
    const history = verdictHistory({ strips, batches, specification: colourPaperProcess });
    expect(history.map((each) => each.row)).toEqual([1, 0, 2, 3]);
    expect(history.map((each) => each.verdict)).toEqual(["run", "act", "hold", "run"]);
    expect(history.map((each) => each.workMayRun)).toEqual([true, false, false, true]);
    expect(history.map((each) => each.endsDay)).toEqual([true, false, false, true]);
  });
  it("is empty without strips", () => {
    const none = { strips: [], batches, specification: colourPaperProcess };
    expect(verdictHistory(none)).toEqual([]);
  });
});

describe("the start-up check", () => {
  const check = (deviations: readonly number[]) =>
    startUpCheck({
      strips: deviations.map((ld, i) => paperStrip(morning(1, `07:${i + 10}`), ld)),
      batches,
      specification: colourPaperProcess,
    });
  it("is ready when the mean of five strips is within or on the adjustment tolerance", () => {
    expect(check([0.06, 0.02, 0.05, 0.03, 0.04]).ready).toBe(true);
    const off = check([0.06, 0.03, 0.05, 0.03, 0.04]);
    expect(off.ready).toBe(false);
    const red = off.parameters.find((each) => each.parameter === "ld" && each.colour === "red");
    expect([red?.meanDeviation, red?.limitName, red?.ready]).toEqual([0.042, "adjustment", false]);
  });
  it("is never ready on fewer strips, and says how many it wants", () => {
    const few = check([0, 0, 0, 0]);
    expect(few.ready).toBe(false);
    expect(few.warnings).toEqual(["4 strips only; run 5 and take their mean"]);
  });
  it("falls back on the action or control limit where no tolerance is known", () => {
    const names = check([0, 0, 0, 0, 0]).parameters.map((each) => each.limitName);
    expect(new Set(names)).toEqual(new Set(["adjustment", "action", "control"]));
  });
  it("refuses a log without strips of the process", () => {
    expect(() => check([])).toThrow(/at least one strip of process "colour-paper"/);
  });
});
