import { cpSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { PUMP_FAULT } from "../../data/pellow-street/make/plan.ts";
import { runNotebook } from "../../lib/notebook/run-notebook.ts";

const at = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const NOTEBOOK = at("notebooks/tuning-replenishment.ipynb");
const DEMO = at("data/pellow-street");
/** A run takes seconds alone, and longer beside other tests. */
const SLOW = 600_000;

const run = (settings: Readonly<Record<string, string>>) =>
  runNotebook({ file: NOTEBOOK, settings: new Map(Object.entries(settings)) });

/** The demo lab's files in a folder of their own, one of them changed. */
function changedLab(name: string, change: (lines: readonly string[]) => readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), "pump-"));
  cpSync(DEMO, folder, { recursive: true });
  const text = readFileSync(join(folder, name), "utf8");
  writeFileSync(join(folder, name), change(text.split("\n")).join("\n"));
  return join(folder, "film-strips.csv");
}

describe("the pump's notebook", () => {
  it("finds, dates and sizes the hidden pump within its intervals, and names a bad reading on the way", {
    timeout: SLOW,
  }, async () => {
    const stripsFile = changedLab("pumps.csv", (lines) =>
      lines.map((line) =>
        line.startsWith("2026-07-05") && line.includes(",film-developer,")
          ? line.replace(/,film-developer,\d+,/, ",film-developer,1,")
          : line,
      ),
    );
    const { announced, saved, notebook } = await run({ stripsFile });
    const advice = JSON.parse(saved.get("tuning-2026-08-14.json") ?? "null");
    expect(advice.finding).toBe("rate changed");
    expect(advice.errorInterval[0]).toBeLessThan(PUMP_FAULT.error);
    expect(advice.errorInterval[1]).toBeGreaterThan(PUMP_FAULT.error);
    const [early, late] = advice.changeAtInterval.map((time: string) => time.slice(0, 10));
    expect(early <= PUMP_FAULT.from && PUMP_FAULT.from <= late).toBe(true);
    expect(advice.agreement).toContain("it is the pump");
    expect(announced.join("\n")).toMatch(/^film-developer: −1\d\.\d %.*Mend the pump/);
    expect(saved.get("tuning-2026-08-14.txt")).toContain("set it back to 5 mL a stroke");
    expect(JSON.stringify(notebook)).toContain("the counter of film-developer runs backwards");
  });
  it("does without level, cylinder and step test, and says what that is worth", {
    timeout: SLOW,
  }, async () => {
    const stripsFile = changedLab("pumps.csv", (lines) =>
      lines.map((line) => line.split(",").slice(0, 4).join(",")),
    );
    const { announced, saved } = await run({ stripsFile, stepTestFile: "" });
    expect(announced.join("\n")).toContain("S is ILLUSTRATIVE");
    const advice = JSON.parse(saved.get("tuning-2026-08-14.json") ?? "null");
    expect(advice.agreement).toContain("the level was not measured");
  });
  it("refuses a pump of another line, and a pump that is not in the log", {
    timeout: SLOW,
  }, async () => {
    const paper = run({ stripsFile: join(DEMO, "paper-strips.csv") });
    await expect(paper).rejects.toThrow(/production of the process that this pump feeds/);
    await expect(run({ pump: "film-develper" })).rejects.toThrow(/did you mean "film-developer"/);
  });
});
