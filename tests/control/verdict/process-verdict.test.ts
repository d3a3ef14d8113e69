import { describe, expect, it } from "vitest";
import {
  colourPaperProcess,
  type ProcessVerdict,
  processVerdict,
  type Strip,
  type VerdictOptions,
} from "wetside/control";
import { batch, batches, frozen, grey, morning, paperStrip, reference } from "../example-strips.ts";

const specification = colourPaperProcess;

function judge(
  strips: readonly Strip[],
  options: VerdictOptions = {},
  change: { asOf?: string } = {},
): ProcessVerdict {
  return processVerdict(frozen({ strips, batches, specification, ...change }), options);
}

const ld = (verdict: ProcessVerdict) =>
  verdict.parameters.find((each) => each.parameter === "ld" && each.colour === "red");

describe("the verdict by the process's limits", () => {
  it("is run on a strip within its limits", () => {
    const verdict = judge([paperStrip(morning(1), 0.05)]);
    expect([verdict.verdict, verdict.workMayRun]).toEqual(["run", true]);
    expect(verdict.reason).toBe("all 13 readings of the latest strip are within their limits");
    expect(verdict.next).toBe("Run customer prints.");
    expect(verdict.rows).toEqual([0]);
  });
  it("is run on a reading exactly on a limit, and not a hair past it", () => {
    expect(judge([paperStrip(morning(1), 0.08)]).verdict).toBe("run");
    expect(judge([paperStrip(morning(1), 0.081)]).verdict).toBe("act");
    expect(judge([paperStrip(morning(1), 0.1)]).workMayRun).toBe(true);
    expect(judge([paperStrip(morning(1), 0.101)]).workMayRun).toBe(false);
    expect(judge([paperStrip(morning(1), -0.08)]).verdict).toBe("run");
  });
  it("notes a latest strip that comes so long after the one before that its date may be wrong", () => {
    const before = paperStrip("2026-08-14T07:10", 0);
    const notes = (takenAt: string) => judge([before, paperStrip(takenAt, 0)]).notes;
    expect(notes("2026-09-11T07:09")).toEqual([]);
    expect(notes("2026-09-11T07:10")).toEqual([
      "the latest strip, of 2026-09-11 07:10, comes 28 days after the one before it, of 2026-08-14 07:10: see that its date is right",
    ]);
    expect(notes("2062-08-14T07:10")[0]).toContain("comes 13149 days after");
    expect(judge([before]).notes).toEqual([]);
  });
  it("is act beyond an action limit, while customer work may run", () => {
    const verdict = judge([paperStrip(morning(1), -0.09)]);
    expect([verdict.verdict, verdict.workMayRun]).toEqual(["act", true]);
    expect(verdict.reason).toBe(
      "LD (speed) red is −0.09, below the action limit of −0.08 (also beyond a limit: LD (speed) green, LD (speed) blue)",
    );
    expect(verdict.next).toMatch(/may run; find the cause/);
  });
  it("asks for a repeat when one strip alone is beyond a control limit", () => {
    const verdict = judge([paperStrip(morning(1), 0), paperStrip(morning(2), 0.12)]);
    expect([verdict.verdict, verdict.workMayRun]).toEqual(["act", false]);
    expect(verdict.reason).toMatch(/\+0\.12, above the control limit of \+0\.10; one strip alone/);
    expect(verdict.next).toBe("Repeat the strip before any customer prints.");
    expect(verdict.rows).toEqual([1]);
  });
  it("holds when the repeat agrees", () => {
    const strips = [paperStrip(morning(2), 0.12), paperStrip(morning(2, "07:30"), 0.11)];
    const verdict = judge(strips);
    expect([verdict.verdict, verdict.workMayRun]).toEqual(["hold", false]);
    expect(verdict.rows).toEqual([0, 1]);
    expect(verdict.reason).toMatch(/and the strip of 07:10 \(\+0\.12\) was beyond it too/);
    expect(verdict.next).toMatch(/^Stop customer prints/);
  });
  it("holds when the repeat is beyond on the other side, for it clears nothing", () => {
    const strips = [paperStrip(morning(2), 0.12), paperStrip(morning(2, "07:30"), -0.12)];
    expect(judge(strips).verdict).toBe("hold");
  });
  it("runs, with a note, when the repeat clears", () => {
    const strips = [paperStrip(morning(2), 0.12), paperStrip(morning(2, "07:30"), 0.03)];
    const verdict = judge(strips);
    expect([verdict.verdict, verdict.workMayRun]).toEqual(["run", true]);
    expect(verdict.notes[0]).toBe(
      "LD (speed) red: the strip of 07:10 (+0.12) was beyond the control limit; the strip of 07:30 (+0.03) clears it",
    );
    expect(verdict.rows).toEqual([0, 1]);
  });
  it("acts when the repeat comes back only to the action band, and keeps the note", () => {
    const strips = [paperStrip(morning(2), 0.12), paperStrip(morning(2, "07:30"), 0.09)];
    const verdict = judge(strips);
    expect([verdict.verdict, verdict.workMayRun]).toEqual(["act", true]);
    expect(verdict.notes.length).toBe(3);
  });
  it("lets a hold go on the first strip back within, and asks what was corrected", () => {
    const strips = ["07:10", "07:30", "09:00"].map((time, i) =>
      paperStrip(morning(2, time), [0.12, 0.12, 0.01][i] ?? 0),
    );
    const verdict = judge(strips);
    expect(verdict.verdict).toBe("run");
    expect(verdict.notes[0]).toMatch(/confirmed; .* Write down what was corrected/);
  });
  it("takes a strip after the repeat window as a first one again", () => {
    const strips = [paperStrip(morning(2), 0.12), paperStrip(morning(5), 0.12)];
    expect(judge(strips).verdict).toBe("act");
    expect(judge(strips, { repeatWindowHours: 100 }).verdict).toBe("hold");
  });
  it("counts a strip at the very end of the repeat window as the repeat", () => {
    const repeatedAt = (time: string) =>
      judge([paperStrip(morning(2), 0.12), paperStrip(morning(3, time), 0.12)]).verdict;
    expect(repeatedAt("19:10")).toBe("hold");
    expect(repeatedAt("19:11")).toBe("act");
  });
  it("keeps a confirmed hold over a long pause", () => {
    const strips = [
      paperStrip(morning(2), 0.12),
      paperStrip(morning(2, "07:30"), 0.12),
      paperStrip(morning(9), 0.12),
    ];
    expect(judge(strips).verdict).toBe("hold");
  });
  it("judges each parameter by its own repeat", () => {
    const first = paperStrip(morning(2), 0, { patches: { ...reference, dMin: grey(0.13) } });
    const verdict = judge([first, paperStrip(morning(2, "07:30"), 0.12)]);
    expect(verdict.verdict).toBe("act");
    expect(verdict.next).toMatch(/^Repeat the strip/);
    expect(verdict.notes[0]).toMatch(/^D-min red: .* clears it/);
  });
  it("lets the worst reading speak for the process", () => {
    const patches = { ...reference, dMin: { red: 0.125, green: 0.14, blue: 0.1 } };
    expect(judge([paperStrip(morning(1), 0, { patches })]).reason).toMatch(
      /^D-min green is \+0\.040, above the control limit of \+0\.02.*\(also beyond a limit: D-min red\)$/,
    );
  });
});

describe("the verdict on what is not known", () => {
  it("is hold when there is no strip at all", () => {
    const verdict = judge([], {}, { asOf: morning(1, "07:30") });
    expect([verdict.verdict, verdict.workMayRun, verdict.latestRow]).toEqual(["hold", false, null]);
    expect(verdict.reason).toMatch(/no strip of this process was read up to 2026-08-01 07:30/);
    expect(verdict.next).toBe("Run a strip before any customer prints.");
  });
  it("cannot be run on a stale strip", () => {
    const strips = [paperStrip(morning(1), 0)];
    expect(judge(strips, {}, { asOf: morning(1, "19:10") }).verdict).toBe("run");
    const late = judge(strips, {}, { asOf: morning(2, "07:00") });
    expect([late.verdict, late.workMayRun]).toEqual(["act", false]);
    expect(late.reason).toMatch(/2026-08-01 07:10, is 23\.8 hours old \(stale after 12 hours\)/);
    expect(late.next).toBe("Run a strip before any customer prints.");
    expect(judge(strips, { staleAfterHours: 48 }, { asOf: morning(2) }).verdict).toBe("run");
  });
  it("keeps a hold on a stale strip", () => {
    const strips = [paperStrip(morning(1), 0.12), paperStrip(morning(1, "07:30"), 0.12)];
    const late = judge(strips, {}, { asOf: morning(3) });
    expect(late.verdict).toBe("hold");
    expect(late.reason).toMatch(/hours old.*and it left this: LD/);
  });
  it("asks for a patch that was not read, and names only that one", () => {
    const { hd: _, ...patches } = reference;
    const verdict = judge([paperStrip(morning(1), 0, { patches })]);
    expect([verdict.verdict, verdict.workMayRun]).toEqual(["act", false]);
    expect(verdict.reason).toMatch(/HD − LD \(contrast\) red cannot be judged: hd was not read/);
    expect(verdict.next).toMatch(/^Read hd on the strip, or run another strip/);
    expect(ld(verdict)?.verdict).toBe("run");
  });
  it("keeps a confirmed hold where the next strip was not read", () => {
    const { ld: _, ...patches } = reference;
    const strips = [
      paperStrip(morning(1), 0.12),
      paperStrip(morning(1, "07:30"), 0.12),
      paperStrip(morning(1, "08:00"), 0, { patches }),
    ];
    const verdict = judge(strips);
    expect(verdict.verdict).toBe("hold");
    expect(ld(verdict)?.reason).toMatch(/the hold before it stands/);
  });
  it("leaves strips taken after asOf out and says so", () => {
    const strips = [paperStrip(morning(1), 0), paperStrip(morning(2), 0.12)];
    const verdict = judge(strips, {}, { asOf: morning(1, "08:00") });
    expect(verdict.verdict).toBe("run");
    expect(verdict.assumptions.join()).toMatch(/1 strip taken after 2026-08-01T08:00 left out/);
  });
  it("says that staleness is not judged when no time was asked for", () => {
    expect(judge([paperStrip(morning(1), 0)]).assumptions.join()).toMatch(/no asOf was given/);
  });
  it("is an error for an unknown batch, a wrong time and wrong options", () => {
    const strips = [paperStrip(morning(1), 0, { stripBatch: "78" })];
    expect(() => judge(strips)).toThrow(/stripBatch is "78".*did you mean "77"/);
    expect(() => judge([], {}, { asOf: "2026-08-14" })).toThrow(/asOf is "2026-08-14"/);
    expect(() => judge([], { repeatWindowHours: 0 })).toThrow(/repeatWindowHours is 0/);
    const kind = ["runrules" as "run rules"];
    expect(() => judge([], { actOn: kind })).toThrow(/did you mean "run rules"/);
  });
});

describe("what the verdict carries along", () => {
  it("is safe to write as JSON", () => {
    const verdict = judge([paperStrip(morning(1), 0.12)]);
    expect(JSON.parse(JSON.stringify(verdict))).toEqual(verdict);
    const none = judge([]);
    expect(JSON.parse(JSON.stringify(none))).toEqual(none);
  });
  it("warns where the limits are not from a source", () => {
    expect(judge([paperStrip(morning(1), 0)]).warnings[0]).toMatch(
      /limits of LD \(speed\), .*: common practice, no source; replace them/,
    );
  });
  it("notes a change of strip batch that no crossover covers", () => {
    const strips = [paperStrip(morning(1), 0), paperStrip(morning(2), 0, { stripBatch: "88" })];
    const history = { strips, batches: [...batches, batch("88")], specification };
    expect(processVerdict(history).notes.join()).toMatch(/batch 77 gave way to 88 on 2026-08-02/);
    expect(processVerdict(history).stripBatch).toBe("88");
  });
});
