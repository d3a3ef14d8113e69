import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { runNotebook } from "../../lib/notebook/run-notebook.ts";
import { parseStripBatchRegister, parseStripLog, problemMessage } from "../../lib/records/index.ts";

const at = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const NOTEBOOK = at("notebooks/morning-call.ipynb");
const WEEK = at("data/one-week/strips.csv");
const REGISTER = at("data/one-week/strip-batches.csv");
/** A run takes seconds alone, and longer beside other tests. */
const SLOW = 600_000;

interface Saved {
  readonly verdict: string;
  readonly processes: readonly {
    readonly process: string;
    readonly verdict: string;
    readonly workMayRun: boolean;
    readonly reason: string;
    readonly next: string;
    readonly statisticalBase: { readonly charts: unknown; readonly reason: string };
  }[];
}

const run = (stripsFile: string, settings: readonly (readonly [string, string])[] = []) =>
  runNotebook({ file: NOTEBOOK, settings: new Map([["stripsFile", stripsFile], ...settings]) });
const savedBy = (saved: ReadonlyMap<string, string>): Saved =>
  JSON.parse(saved.get("morning-verdict.json") ?? "null");

describe("the morning call on another lab's files", () => {
  it("judges one line with one batch and few strips, and says why there are no statistical limits", {
    timeout: SLOW,
  }, async () => {
    const { announced, saved } = await run(WEEK);
    expect(announced.join("\n")).toMatch(
      /^RUN as of 2026-05-24 07:\d\d: the process is within limits\.\n/,
    );
    const verdict = savedBy(saved);
    expect(verdict.processes.map((one) => one.process)).toEqual(["colour-paper"]);
    expect(verdict.processes[0]?.statisticalBase.charts).toBeNull();
    expect(verdict.processes[0]?.statisticalBase.reason).toMatch(
      /at least 20 are needed, so \d more$/,
    );
  });

  it("judges files with decimal commas and semicolons as it does those with points", {
    timeout: SLOW,
  }, async () => {
    const folder = mkdtempSync(join(tmpdir(), "wetside-comma-"));
    const withCommas = (text: string) => text.replaceAll(",", ";").replaceAll(".", ",");
    for (const file of [WEEK, REGISTER]) {
      writeFileSync(join(folder, basename(file)), withCommas(readFileSync(file, "utf8")));
    }
    const { announced } = await run(join(folder, "strips.csv"), [["decimalComma", "true"]]);
    expect(announced).toEqual((await run(WEEK)).announced);
  });

  it("judges a morning in the middle of the log, by statistical limits too", {
    timeout: SLOW,
  }, async () => {
    const { announced, saved } = await run(at("data/pellow-street/film-strips.csv"), [
      ["asOf", "2026-06-09T07:30"],
    ]);
    expect(announced.join("\n")).toMatch(
      /^HOLD as of 2026-06-09 07:30: Colour-negative film process/,
    );
    const verdict = savedBy(saved);
    expect(verdict.verdict).toBe("hold");
    expect(verdict.processes.map((one) => one.process)).toEqual([
      "colour-negative",
      "colour-paper",
    ]);
    expect(verdict.processes[0]?.statisticalBase.charts).toMatchObject({
      basePeriod: { from: "2026-05-17", to: "2026-06-06" },
    });
  });

  it("stops at a bad file with exactly what the readers of logs say of it", {
    timeout: SLOW,
  }, async () => {
    const folder = mkdtempSync(join(tmpdir(), "wetside-morning-"));
    const register = readFileSync(REGISTER, "utf8");
    writeFileSync(join(folder, "strip-batches.csv"), register);
    const lines = readFileSync(WEEK, "utf8").split("\n");
    const cells = (lines[5] ?? "").split(",");
    lines[5] = [...cells.slice(0, 7), "12", ...cells.slice(8)].join(",");
    lines[8] = (lines[8] ?? "").replace("P-17", "P-99");
    const file = join(folder, "strips.csv");
    writeFileSync(file, lines.join("\n"));
    const { rows: batches } = parseStripBatchRegister(register, { file: "strip-batches.csv" });
    const said = problemMessage(parseStripLog(lines.join("\n"), { file, batches }));
    expect(said).toContain("2 problems");
    const failure = await run(file).then(
      () => "no failure",
      (error: Error) => error.message,
    );
    expect(failure).toContain("stopped");
    for (const line of said.split("\n")) expect(failure).toContain(line.trim());
    expect(failure).not.toContain("    at ");
  });

  it("asks for a repeat before customers' work after one strip beyond a limit, and holds after two", {
    timeout: SLOW,
  }, async () => {
    const film = at("data/pellow-street/film-strips.csv");
    const filmAt = async (asOf: string) =>
      savedBy((await run(film, [["asOf", asOf]])).saved).processes[0];
    const first = await filmAt("2026-06-09T07:15");
    expect([first?.verdict, first?.workMayRun]).toEqual(["act", false]);
    expect(first?.next).toBe("Repeat the strip before any customer film.");
    const second = await filmAt("2026-06-09T07:30");
    expect([second?.verdict, second?.workMayRun]).toEqual(["hold", false]);
    expect(second?.next).toMatch(/^Stop customer film; find and correct the cause/);
  });

  it("does not call a strip of the day before this morning's", { timeout: SLOW }, async () => {
    const { saved } = await run(WEEK, [["asOf", "2026-05-26T07:30"]]);
    const [paper] = savedBy(saved).processes;
    expect([paper?.verdict, paper?.workMayRun]).toEqual(["act", false]);
    expect(paper?.reason).toMatch(/is 2 days old \(stale after 12 hours\)$/);
  });

  it("has nothing to say, and holds, before the first strip", { timeout: SLOW }, async () => {
    const { saved } = await run(WEEK, [["asOf", "2026-05-01T07:30"]]);
    expect(savedBy(saved).verdict).toBe("hold");
    expect(savedBy(saved).processes[0]?.reason).toMatch(/nothing is known of it$/);
  });

  it("does not count a log twice that is named as both lines", { timeout: SLOW }, async () => {
    const paper = at("data/pellow-street/paper-strips.csv");
    const { saved } = await run(paper, [["asOf", "2026-08-06T07:30"]]);
    const [line, ...others] = savedBy(saved).processes;
    expect(others).toEqual([]);
    // One strip beyond the control limit; read twice it would pass for its own repeat.
    expect([line?.verdict, line?.workMayRun]).toEqual(["act", false]);
  });
});
