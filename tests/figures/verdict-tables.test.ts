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

const plain = (value: unknown): string => {
  const display = (value as Record<symbol, () => Record<string, string>>)[
    Symbol.for("Jupyter.display")
  ];
  return display?.()["text/plain"] ?? "";
};

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
    expect(plain(attentionTable(processVerdict(calm)))).toBe(
      "Colour-paper process: none of the 13 parameters and colours asks for attention.",
    );
    expect(plain(attentionTable(processVerdict(paperLab([]))))).toMatch(/no strip of this process/);
  });

  it("prints deviations to the decimals the strips were read to", () => {
    expect(plain(attentionTable(verdict))).toMatch(/LD \(speed\) red +\+0\.09 /);
    const fine = processVerdict(paperLab([0, 0.091]));
    expect(plain(attentionTable(fine))).toMatch(/LD \(speed\) red +\+0\.091 /);
  });
});

describe("signalTable", () => {
  it("names the run rules by family and number and the first strip of the pattern", () => {
    const { rows } = signalTable(verdict, drifting.strips);
    const red = rows.find(({ subject }) => subject === "LD (speed) red");
    expect(red?.rules).toMatch(/^Western Electric 1/);
    expect(red?.others).toContain("EWMA, CUSUM");
    expect(signalTable(processVerdict(calm), calm.strips).rows).toEqual([]);
  });

  it("tells a signal that has stood for a while once, with its first strip and a count", () => {
    const { rows } = signalTable(verdict, drifting.strips);
    const red = rows.find(({ subject }) => subject === "LD (speed) red");
    expect([red?.since, red?.strips]).toEqual(["2026-03-25 08:00", 3]);
  });

  it("is a sentence where nothing signals, and says why where there are no limits", () => {
    expect(plain(signalTable(processVerdict(calm), calm.strips))).toBe(
      "Colour-paper process: no statistical limits, so no signals (no base period was given).",
    );
    const quiet = paperLab(Array.from({ length: 26 }, (_, i) => 0.01 * (i % 3)));
    const verdictOfQuiet = processVerdict(quiet, { charts: { basePeriod } });
    expect(plain(signalTable(verdictOfQuiet, quiet.strips))).toBe(
      "Colour-paper process: no statistical signal stands on the latest strip.",
    );
  });
});

describe("changeTable", () => {
  it("puts the largest share of the limit first and keeps to the number of rows asked", () => {
    const { rows, caption } = changeTable(verdict, 2);
    expect(rows).toHaveLength(2);
    expect(rows[0]?.percent).toBeGreaterThanOrEqual(Number(rows[1]?.percent));
    expect(caption).toContain("what changed since the last good day, 2026-03-");
    expect(changeTable(processVerdict(paperLab([0]))).caption).toContain("no good day");
    expect(plain(changeTable(processVerdict(paperLab([0]))))).toMatch(/nothing to compare with/);
  });
});

describe("verdictLines and verdictMarkdown", () => {
  it("say the lab's verdict first, then each process with what to do next", () => {
    const lines = verdictLines(call);
    expect(lines[0]).toMatch(/^ACT as of 2026-03-27 08:00: /);
    expect(lines).toHaveLength(2);
    expect(lines[1]).toContain(call.processes[0]?.next ?? "missing");
    expect(verdictMarkdown(call)).toMatch(
      /^### Colour-paper process: act\n\n\*\*Customer work may run\.\*\* .+\.\n\n\*\*Next:\*\* /,
    );
  });

  it("name no time where no strip was read and none was asked for", () => {
    const lab = { ...paperLab([0]), strips: [] };
    const [first] = verdictLines(morningCall({ ...lab, specifications: [calm.specification] }));
    expect(first).toMatch(/^HOLD: Colour-paper process: no strip of this process was read/);
  });

  it("say in as many words whether customer work may run, waits or stops", () => {
    const words = (off: readonly number[]) =>
      verdictMarkdown(morningCall({ ...paperLab(off), specifications: [calm.specification] }));
    expect(words([0])).toContain("**Customer work may run.**");
    expect(words([0, 0.12])).toContain("**Customer work waits.**");
    expect(words([0.12, 0.12])).toContain("**No customer work.**");
  });

  it("say where the statistical limits come from, or why there are none", () => {
    expect(verdictMarkdown(call)).toContain(
      "Statistical limits from the base period 2026-03-01 to 2026-03-24.",
    );
    const few = morningCall({ ...calm, specifications: [calm.specification], charts: {} });
    expect(verdictMarkdown(few)).toMatch(/No statistical limits: 3 strips on 3 days .* 17 more\./);
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
