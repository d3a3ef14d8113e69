import { describe, expect, it } from "vitest";
import { controlCharts, morningCall, processVerdict } from "../../lib/control/index.ts";
import {
  attentionTable,
  changeTable,
  nearestLimit,
  signalTable,
  verdictLines,
  verdictMarkdown,
} from "../../lib/figures/index.ts";
import { paperLab } from "./paper-lab.ts";

const calm = paperLab([0, 0, 0, 0.01]);
const drifting = paperLab([
  ...Array.from({ length: 24 }, (_, i) => 0.01 * (i % 3)),
  0.06,
  0.07,
  0.09,
]);
const basePeriod = { from: "2026-03-01", to: "2026-03-24" };
const verdict = processVerdict(drifting, { charts: { basePeriod } });
const call = morningCall({
  ...drifting,
  specifications: [drifting.specification],
  charts: { basePeriod },
});

describe("attentionTable", () => {
  it("lists what is not run, with reason, and counts it in the caption", () => {
    const { rows, caption } = attentionTable(verdict);
    expect(rows.map(({ subject }) => subject)).toContain("LD (speed) red");
    expect(rows.every((row) => row.verdict !== "run")).toBe(true);
    expect(caption).toBe(
      `Colour-paper process: ${rows.length} of ${verdict.parameters.length} parameters and colours ask for attention`,
    );
  });

  it("has no rows on a calm morning", () => {
    expect(attentionTable(processVerdict(calm)).rows).toEqual([]);
  });
});

describe("signalTable", () => {
  it("names the run rules by family and number and the first strip of the pattern", () => {
    const { rows } = signalTable(verdict, drifting.strips);
    const red = rows.find(({ subject }) => subject === "LD (speed) red");
    expect(red?.rules).toMatch(/^Western Electric 1/);
    expect(red?.since).toMatch(/^2026-03-\d\d 08:00$/);
    expect(signalTable(processVerdict(calm), calm.strips).rows).toEqual([]);
  });
});

describe("changeTable", () => {
  it("puts the largest share of the limit first and keeps to the number of rows asked", () => {
    const { rows, caption } = changeTable(verdict, 2);
    expect(rows).toHaveLength(2);
    expect(rows[0]?.percent).toBeGreaterThanOrEqual(Number(rows[1]?.percent));
    expect(caption).toContain("what changed since the last good day, 2026-03-");
    expect(changeTable(processVerdict(paperLab([0]))).caption).toContain("no good day");
  });
});

describe("verdictLines and verdictMarkdown", () => {
  it("say the lab's verdict first, then each process with what to do next", () => {
    const lines = verdictLines(call);
    expect(lines[0]).toMatch(/^ACT as of 2026-03-27 08:00: /);
    expect(lines).toHaveLength(2);
    expect(lines[1]).toContain(call.processes[0]?.next ?? "missing");
    expect(verdictMarkdown(call)).toMatch(
      /^### Colour-paper process: act\n\n.+\.\n\n\*\*Next:\*\* /,
    );
  });
});

describe("nearestLimit", () => {
  it("finds the charted series whose latest reading is the largest share of its process limit", () => {
    const charts = controlCharts(drifting, { basePeriod });
    const found = nearestLimit(charts);
    expect(found?.series.parameter).toBe("ld");
    expect(found?.share).toBeCloseTo(0.09 / (found?.series.limits.action?.upper ?? 0), 9);
    expect(found?.words).toMatch(/^LD \(speed\) red: \d+ % of its process limit$/);
  });

  it("finds nothing where there are no charts", () => {
    expect(nearestLimit([])).toBeNull();
    const charts = controlCharts(drifting, { basePeriod }).map((one) => ({ ...one, ewma: null }));
    expect(nearestLimit(charts)).toBeNull();
  });
});
