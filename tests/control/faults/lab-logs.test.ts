import { describe, expect, it } from "vitest";
import {
  type FaultRanking,
  faultChecks,
  faultLogKinds,
  faultWorkKinds,
  type LabLogsInput,
  type LoggedPump,
  labLogs,
  rankFaults,
} from "wetside/control";
import { frozen } from "../example-strips.ts";
import { strip, window } from "./window.ts";

// Strips of 1 to 12 August; off from the 9th on. Base period of the logs: 15 to 31 July.
const low = strip(-0.008, -0.12, -0.08);
const still = strip(0, 0, 0);
const evidence = window(Array.from({ length: 12 }, (_, i) => (i < 8 ? still : low)));
const basePeriod = { from: "2026-07-15", to: "2026-07-31" };
const days = Array.from({ length: 29 }, (_, i) =>
  new Date(Date.UTC(2026, 6, 15 + i)).toISOString().slice(0, 10),
);
const off = (day: string) => day >= "2026-08-09";
const wobble = (i: number) => [0.05, -0.05, 0, 0.1, -0.1][i % 5] ?? 0;

const temperatures = (shift: number, instrument = "thermometer") => ({
  bath: "film-developer",
  readings: days.map((day, i) => ({
    readAt: `${day}T07:00`,
    bath: "film-developer",
    instrument,
    temperatureC: 37.8 + wobble(i) + (off(day) ? shift : 0),
  })),
});
const checks = (check: string, level: number, shift: number) => ({
  line: "film",
  readings: days.map((day, i) => ({
    readAt: `${day}T07:03`,
    line: "film",
    check,
    value: level * (1 + 0.02 * wobble(i) + (off(day) ? shift : 0)),
  })),
});
const pumps = (factor: number) => ({
  pump: "film-developer",
  readings: days.map((day, i): LoggedPump => {
    const reading = {
      readAt: `${day}T18:00`,
      pump: "film-developer",
      counterStrokes: 1000 + 300 * i + (i > 20 ? 20 : 0),
      settingMlPerStroke: 5,
      deliveredMl: 1500 * (off(day) ? factor : 1) * (1 + 0.2 * wobble(i)),
      counterReset: false,
    };
    return i === 20 ? { ...reading, cylinder: { strokes: 20, volumeMl: 99 } } : reading;
  }),
});
const work = (...entries: readonly (readonly [day: string, work: string])[]) => ({
  line: "film",
  entries: entries.map(([day, what]) => ({ doneAt: day, line: "film", work: what })),
});

const rank = (input: Partial<LabLogsInput>): FaultRanking =>
  rankFaults(evidence, { logs: labLogs({ basePeriod, ...input }) });
const first = (ranking: FaultRanking) => ranking.faults[0]?.id;
const p = (ranking: FaultRanking, id: string) =>
  ranking.faults.find((fault) => fault.id === id)?.probability ?? 0;

describe("a ranking with the lab's own logs", () => {
  it("tells faults of one signature apart by the thermometer", () => {
    const cold = rank({ temperatures: temperatures(-0.7) });
    expect(first(cold)).toBe("developer-too-cool");
    expect(p(cold, "developer-too-cool")).toBeGreaterThan(0.8);
    expect(first(rank({ temperatures: temperatures(0) }))).toBe("developer-too-short");
  });

  it("tells them apart by the stop-watch and by the pump", () => {
    const short = rank({ checks: checks("developer-time", 195, -0.08) });
    expect(first(short)).toBe("developer-too-short");
    expect(p(short, "developer-too-short")).toBeGreaterThan(0.8);
    const starved = rank({ pumps: pumps(0.75) });
    const alone = rankFaults(evidence);
    expect(p(starved, "under-replenished")).toBeGreaterThan(3 * p(alone, "under-replenished"));
    expect(p(rank({ pumps: pumps(1) }), "under-replenished")).toBeLessThan(
      p(alone, "under-replenished"),
    );
  });

  it("says in words what each log shows, for and against", () => {
    const [said] = rank({ temperatures: temperatures(-0.7) }).logs;
    expect(said?.check).toBe("thermometer");
    expect(said?.speaksFor).toEqual(["developer-too-cool"]);
    expect(said?.speaksAgainst).toContain("developer-too-warm");
    expect(said?.words).toMatch(
      /^temperature of the developer by an independent thermometer −0\.6\d+ ± 0\.\d+ °C against the base period \(mean of 4 readings since it began\); speaks for developer too cool/,
    );
    const [quiet] = rank({ temperatures: temperatures(0) }).logs;
    expect(quiet?.words).toContain("speaks against developer too warm, developer too cool");
  });

  it("is the ranking of the strips alone where no log is kept or none reaches so far", () => {
    const alone = rankFaults(evidence);
    const none = rankFaults(evidence, { logs: { logs: [], warnings: [] } });
    expect(none).toEqual(alone);
    const early = rank({ asOf: "2026-07-31", temperatures: temperatures(-0.7) });
    expect(p(early, "developer-too-cool")).toBeCloseTo(p(alone, "developer-too-cool"), 12);
    expect(early.logs[0]?.words).toContain("no reading since it began");
  });

  it("does not see in the controller what only a thermometer shows, and says less by it", () => {
    const shown = rank({ temperatures: temperatures(0, "controller") });
    const checked = rank({ temperatures: temperatures(0) });
    expect(shown.logs[0]?.log).toBe("controller");
    expect(p(shown, "developer-too-cool")).toBeGreaterThan(p(checked, "developer-too-cool"));
  });

  it("never lets a log that may be wrong decide against strips that are clear", () => {
    const ranking = rank({ checks: checks("check-plaque", 1, 0.4) });
    expect(ranking.leading).toBe("under-active");
    const odds = Math.exp(Math.max(...ranking.logs.map(({ logWeight }) => Math.abs(logWeight))));
    // 0.96 of a densitometer that is off beside a hundredth that a log is wrong.
    expect(odds).toBeLessThan(100);
  });

  it("does not propose a check that a log has just made", () => {
    const { check } = rank({ temperatures: temperatures(0) });
    expect(check?.id).not.toBe("thermometer");
    expect(check).not.toBeNull();
  });

  it("reads the work that went before: a rack lifted where it began tells, elsewhere it does not", () => {
    const odd = strip(0.055, 0.07, 0.12);
    const contaminated = window(Array.from({ length: 12 }, (_, i) => (i < 8 ? still : odd)));
    const by = (...entries: readonly (readonly [string, string])[]) =>
      rankFaults(contaminated, { logs: labLogs({ basePeriod, work: work(...entries) }) });
    const usual = [
      ["2026-07-20", "bleach-handled"],
      ["2026-07-22T06:30", "fixer-handled"],
    ] as const;
    const bleach = by(...usual, ["2026-08-08T16:00", "bleach-handled"]);
    expect(first(bleach)).toBe("contaminated-with-bleach");
    expect(bleach.logs.map(({ words }) => words).join()).toContain("entered 2026-08-08T16:00");
    const before = by(...usual, ["2026-08-03", "bleach-handled"]);
    expect(p(before, "contaminated-with-bleach")).toBeCloseTo(
      p(before, "contaminated-with-fixer"),
      12,
    );
  });

  it("holds nothing against a cause whose work is never written down", () => {
    const { logs } = labLogs({ basePeriod, work: work(["2026-07-20", "bleach-handled"]) });
    expect(logs.map(({ log }) => log)).toEqual(["bleach-handled"]);
  });

  it("changes nothing it is given and survives JSON", () => {
    const logs = labLogs(frozen({ basePeriod, temperatures: temperatures(-0.7), pumps: pumps(1) }));
    expect(JSON.parse(JSON.stringify(logs))).toEqual(logs);
    const ranking = rankFaults(evidence, { logs: frozen(logs) });
    const sum = ranking.faults.reduce((s, { probability }) => s + probability, 0);
    expect(sum + ranking.noneOfThese + ranking.nothingWrong).toBeCloseTo(1, 9);
    expect(ranking.assumptions.join()).toContain("each log is a check already made");
  });
});

describe("labLogs", () => {
  it("sees strokes that are missing where the production is known, and only there", () => {
    // From the 9th on every fourth stroke is missing: less is delivered, and less was counted.
    let counter = 0;
    const readings = days.map((day, i): LoggedPump => {
      const strokes = off(day) ? 225 : 300;
      counter += strokes;
      const deliveredMl = 5 * strokes * (1 + 0.2 * wobble(i));
      const rest = { settingMlPerStroke: 5, counterReset: false };
      return { readAt: `${day}T18:00`, pump: "p", counterStrokes: counter, deliveredMl, ...rest };
    });
    const rows = days.map((date) => {
      return { date, process: "colour-negative", format: "135-36", count: 40 };
    });
    const lately = (input: Partial<LabLogsInput>) => {
      const { logs } = labLogs({ basePeriod, pumps: { pump: "p", readings }, ...input });
      const [log] = logs;
      const some = log?.kind === "readings" ? log.readings.slice(-3) : [];
      return some.reduce((sum, { change }) => sum + change, 0) / some.length;
    };
    expect(Math.abs(lately({}))).toBeLessThan(3);
    expect(lately({ production: { process: "colour-negative", rows } })).toBeCloseTo(-25, -1);
    expect(() => lately({ production: { process: "colour-paper", rows } })).toThrow(
      /colour-negative/,
    );
  });

  it("leaves strokes into a cylinder out of what the bath got", () => {
    const [log] = labLogs({ basePeriod, pumps: pumps(1) }).logs;
    const changes = log?.kind === "readings" ? log.readings.map(({ change }) => change) : [];
    expect(changes).toHaveLength(12);
    expect(Math.max(...changes.map(Math.abs))).toBeLessThan(3);
  });

  it("refuses a log without entries, of another bath, pump or line, and says which there are", () => {
    expect(() => labLogs({ basePeriod, temperatures: { bath: "x", readings: [] } })).toThrow(
      /no entry; leave out temperatures/,
    );
    expect(() =>
      labLogs({ basePeriod, temperatures: { ...temperatures(0), bath: "paper-developer" } }),
    ).toThrow(/film-developer/);
    expect(() => labLogs({ basePeriod, pumps: { ...pumps(1), pump: "film" } })).toThrow(
      /film-developer/,
    );
    expect(() =>
      labLogs({ basePeriod, checks: { ...checks("developer-time", 195, 0), line: "paper" } }),
    ).toThrow(/film/);
  });

  it("warns of a log that does not reach the base period, and does without it", () => {
    const { logs, warnings } = labLogs({
      basePeriod: { from: "2026-01-01", to: "2026-02-01" },
      temperatures: temperatures(0),
    });
    expect(logs).toEqual([]);
    expect(warnings.join()).toMatch(/0 readings in the base period.*2026-07-15T07:00 to/);
    const ranking = rankFaults(evidence, { logs: { logs, warnings } });
    expect(ranking.warnings.join()).toContain("0 readings in the base period");
  });

  it("refuses unknown checks and work, dates that are none, and numbers that are not finite", () => {
    expect(() => labLogs({ basePeriod, checks: checks("developer-tim", 195, 0) })).toThrow(
      /did you mean "developer-time"/,
    );
    expect(() => labLogs({ basePeriod, work: work(["2026-07-20", "bleach-handeld"]) })).toThrow(
      /did you mean "bleach-handled"/,
    );
    expect(() => labLogs({ basePeriod: { from: "15 July", to: "2026-07-31" } })).toThrow(
      /local date/,
    );
    expect(() => labLogs({ basePeriod, asOf: "now" })).toThrow(/local date/);
    expect(() => labLogs({ basePeriod, checks: checks("developer-time", Number.NaN, 0) })).toThrow(
      /finite/,
    );
    expect(() => labLogs({ basePeriod, checks: checks("developer-time", 0, 0) })).toThrow(
      /greater than 0/,
    );
  });

  it("asks for times where logs are weighed", () => {
    const undated = { ...evidence, takenAt: evidence.takenAt.map((_, i) => `strip ${i}`) };
    const logs = labLogs({ basePeriod, temperatures: temperatures(0) });
    expect(() => rankFaults(undated, { logs })).toThrow(/2026-08-14T07:10/);
  });
});

describe("the kinds of logs", () => {
  it("tell outcomes that their check has", () => {
    for (const { check, above, within, below, id } of faultLogKinds) {
      const outcomes = faultChecks.find((each) => each.id === check)?.outcomes ?? [];
      for (const outcome of [above, within, below]) {
        if (outcome !== undefined) expect(outcomes, id).toContain(outcome);
      }
      expect(outcomes, id).toContain(within);
      expect(above ?? below, id).toBeDefined();
    }
  });
  it("give work a probability below 1 that it stands in the log", () => {
    for (const { recorded } of faultWorkKinds) {
      for (const share of Object.values(recorded)) expect(share > 0 && share < 1).toBe(true);
    }
  });
});
