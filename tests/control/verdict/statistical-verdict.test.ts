import { describe, expect, it } from "vitest";
import {
  colourPaperProcess,
  processVerdict,
  type Strip,
  type VerdictOptions,
} from "wetside/control";
import { batches, morning, paperStrip } from "../example-strips.ts";

const specification = colourPaperProcess;
const wobble = [0, 0.004, -0.004, 0.002, -0.002, 0.003, -0.003];
const basePeriod = { from: "2026-08-01", to: "2026-08-20" };
const base: readonly Strip[] = Array.from({ length: 20 }, (_, i) =>
  paperStrip(morning(i + 1), wobble[i % 7] ?? 0),
);
const judge = (more: readonly number[], options: Partial<VerdictOptions> = {}, charts = {}) =>
  processVerdict(
    {
      strips: [...base, ...more.map((ld, i) => paperStrip(morning(21 + i), ld))],
      batches,
      specification,
    },
    { charts: { basePeriod, ...charts }, ...options },
  );
const ld = (verdict: ReturnType<typeof judge>) =>
  verdict.parameters.find((each) => each.parameter === "ld" && each.colour === "red");

describe("a statistical signal", () => {
  it("turns run into act, never into hold, and lets customer work run", () => {
    const verdict = judge([0.05, 0.05, 0.05]);
    expect([verdict.verdict, verdict.workMayRun]).toEqual(["act", true]);
    expect(verdict.reason).toMatch(
      /within its process limits, but: 1 reading more than 3 sigma above/,
    );
    expect(verdict.next).toMatch(/A statistical signal alone does not stop the line/);
  });
  it("gives the strips that led to it", () => {
    const signals = ld(
      judge([0.05, 0.05, 0.05], {}, { runRules: { rules: ["western-electric-2"] } }),
    );
    expect(signals?.rows).toEqual([20, 21, 22]);
    expect(signals?.signals.find((each) => each.rule === "western-electric-2")?.acts).toBe(true);
  });
  it("comes from rules 1 and 4 of Western Electric unless others are named", () => {
    const rules = (verdict: ReturnType<typeof judge>) =>
      ld(verdict)
        ?.signals.filter((each) => each.kind === "run rules")
        .map((each) => each.rule);
    const eight = new Array(8).fill(0.008);
    expect(rules(judge(eight))).toEqual(["western-electric-4"]);
    expect(rules(judge([0.05, 0.05]))).toEqual(["western-electric-1"]);
    expect(rules(judge([0.05, 0.05], {}, { runRules: { rules: ["nelson-5"] } }))).toEqual([
      "nelson-5",
    ]);
  });
  it("does not count once the series has moved on", () => {
    const rules = { runRules: { rules: ["western-electric-1"] as const } };
    expect(judge([0.05], {}, rules).verdict).toBe("act");
    expect(judge([0.05, 0], {}, rules).verdict).toBe("run");
    for (const kind of ["EWMA", "CUSUM", "moving range"] as const) {
      const kinds = (more: readonly number[]) =>
        ld(judge(more, { actOn: [kind] }, rules))?.signals.map((each) => each.kind);
      expect(kinds([0.026]), kind).toContain(kind);
      expect(kinds([0.026, -0.01, 0]), kind).not.toContain(kind);
    }
  });
  it("tells from which strip on it has stood, and on how many", () => {
    const red = ld(judge([0.05, 0, 0.05, 0.06, 0.05]));
    const rule = red?.signals.find((each) => each.rule === "western-electric-1");
    expect([rule?.since, rule?.strips]).toEqual([22, 3]);
    expect(red?.reason).toMatch(/\(Western Electric rule 1\), as on 2 strips before( \(|$)/);
    const fresh = ld(judge([0.05]))?.signals.find((each) => each.kind === "run rules");
    expect([fresh?.since, fresh?.strips]).toEqual([20, 1]);
  });
  it("is counted, not named, beside a limit that is passed", () => {
    const strip = paperStrip(morning(21), 0.06);
    const ldRed = { ...strip.patches, ld: { red: 0.885, green: 0.86, blue: 0.86 } };
    const hdRed = { ...ldRed, hd: { red: 1.685, green: 1.66, blue: 1.66 } };
    const strips = [...base, { ...strip, patches: hdRed }];
    const { reason } = processVerdict(
      { strips, batches, specification },
      { charts: { basePeriod } },
    );
    expect(reason).toMatch(
      /^LD \(speed\) red is \+0\.085, above the action .*\(statistical signals on 2 more\)$/,
    );
  });
  it("yields to a process limit that is passed", () => {
    expect(judge([0.09]).reason).toMatch(/above the action limit/);
    expect(judge([0.12]).reason).toMatch(/above the control limit/);
  });
  it("is shown but does not act unless its kind is named", () => {
    const quiet = judge([0.05, 0.05], { actOn: [] });
    expect(quiet.verdict).toBe("run");
    expect(ld(quiet)?.signals.length).toBeGreaterThan(0);
    expect(ld(quiet)?.signals.every((each) => !each.acts)).toBe(true);
    for (const kind of ["EWMA", "CUSUM", "moving range"] as const) {
      const loud = judge([0.05], { actOn: [kind] }, { runRules: { rules: [] } });
      expect(loud.verdict, kind).toBe("act");
      expect(ld(loud)?.signals.some((each) => each.kind === kind && each.acts)).toBe(true);
    }
  });
  it("is not looked for without a base period, and that is said", () => {
    const verdict = processVerdict({ strips: base, batches, specification });
    expect(verdict.assumptions.join()).toMatch(
      /there is no base period: only the process's limits/,
    );
    expect(ld(verdict)?.signals).toEqual([]);
  });
  it("comes with the price of its rules in false alarms", () => {
    expect(judge([0]).assumptions.join()).toMatch(
      /once in 152\.7 readings on average; with 12 series up to one strip in 13 carries one/,
    );
  });
  it("leaves a patch that did not vary without limits and says so once for all of them", () => {
    const about = judge([0]).warnings.filter((each) => /no statistical limits/.test(each));
    expect(about.length).toBe(1);
    expect(about[0]).toMatch(/^D-min red, green, blue; .*D-max \(black patch\) red, green, blue: /);
  });
  it("says from which base period it comes, or why there is none", () => {
    expect(judge([0]).statisticalBase).toEqual({
      charts: { basePeriod },
      reason: "the base period 2026-08-01 to 2026-08-20",
    });
    expect(
      judge([0], {}, { exclude: ["2026-08-02"], minimumReadings: 19 }).statisticalBase.reason,
    ).toBe("the base period 2026-08-01 to 2026-08-20, without 2026-08-02");
    const without = processVerdict({ strips: base, batches, specification }).statisticalBase;
    expect(without).toEqual({ charts: null, reason: "no base period was given" });
    const short = judge([0], {}, { minimumReadings: 21, ifBaseTooShort: "leave out" });
    expect(short.statisticalBase).toEqual({
      charts: null,
      reason: "20 readings in the base period, at least 21 are needed",
    });
    expect(short.verdict).toBe("run");
  });
  it("needs a base period that is long enough", () => {
    expect(() => judge([0], {}, { minimumReadings: 21 })).toThrow(
      /processVerdict: D-min red, number of readings in the base period is 20/,
    );
  });
});

describe("what changed since the last good day", () => {
  const change = (more: readonly number[], options = {}) => judge(more, options).changeSinceGoodDay;

  it("compares with the last strip of the last day that ended as run, largest share first", () => {
    const found = change([0.002, 0.05, 0.06]);
    expect(found?.goodDay).toBe("2026-08-21");
    expect([found?.rowThen, found?.rowNow]).toEqual([20, 22]);
    const [first] = found?.changes ?? [];
    expect(first).toMatchObject({
      parameter: "ld",
      deviationThen: 0.002,
      deviationNow: 0.06,
      change: 0.058,
    });
    expect(first?.changeOverLimit).toBeCloseTo(0.58, 12);
    const shares = (found?.changes ?? []).map((each) => each.changeOverLimit ?? -1);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
  });
  it("does not take a day that ended in a signal for a good one, unless signals do not act", () => {
    expect(change([0.05, 0.05])?.goodDay).toBe("2026-08-20");
    expect(change([0.05, 0.05], { actOn: [] })?.goodDay).toBe("2026-08-21");
  });
  it("lets the last strip of a day speak for the day", () => {
    const strips = [
      paperStrip(morning(1), 0.12),
      paperStrip(morning(1, "07:30"), 0.01),
      paperStrip(morning(2), 0.12),
    ];
    const verdict = processVerdict({ strips, batches, specification });
    expect(verdict.changeSinceGoodDay?.rowThen).toBe(1);
  });
  it("does not take an early good strip for the day when the day ended badly", () => {
    const strips = [
      paperStrip(morning(1), 0.01),
      paperStrip(morning(2), 0.02),
      paperStrip(morning(2, "12:00"), 0.09),
      paperStrip(morning(3), 0.03),
    ];
    const verdict = processVerdict({ strips, batches, specification });
    expect(verdict.changeSinceGoodDay?.goodDay).toBe("2026-08-01");
  });
  it("is null where there was no good day", () => {
    const strips = [paperStrip(morning(1), 0.09), paperStrip(morning(2), 0)];
    expect(processVerdict({ strips, batches, specification }).changeSinceGoodDay).toBeNull();
    const one = [paperStrip(morning(1), 0), paperStrip(morning(1, "12:00"), 0)];
    expect(processVerdict({ strips: one, batches, specification }).changeSinceGoodDay).toBeNull();
  });
});
