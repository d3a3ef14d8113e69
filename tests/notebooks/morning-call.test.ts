import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { runNotebook } from "../../lib/notebook/run-notebook.ts";
import { parseStripBatchRegister, parseStripLog, problemMessage } from "../../lib/records/index.ts";

const at = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const NOTEBOOK = at("notebooks/morning-call.ipynb");
const WEEK = at("data/one-week/strips.csv");
const REGISTER = at("data/one-week/strip-batches.csv");
/** A run takes seconds alone, and longer beside other tests. */
const SLOW = 120_000;

interface Saved {
  readonly verdict: string;
  readonly processes: readonly { readonly process: string; readonly verdict: string }[];
  readonly statisticalLimitsFrom: Readonly<Record<string, unknown>>;
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
    expect(verdict.statisticalLimitsFrom["colour-paper"]).toMatch(/at least 20 readings/);
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
    expect(verdict.statisticalLimitsFrom["colour-negative"]).toEqual({
      from: "2026-05-17",
      to: "2026-06-06",
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
});
