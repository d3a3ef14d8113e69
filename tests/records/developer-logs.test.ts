import { describe, expect, it } from "vitest";
import { developerLogs, type LabDescription } from "wetside/records";

const bath = (id: string, role: string) => {
  return { id, role, volumeL: 20, setTemperatureC: 38, timeMin: 3 };
};
const line = (process: string, baths: LabDescription["lines"][number]["baths"]) => {
  return { id: process, name: process, process, strips: "s.csv", patches: [], formats: [], baths };
};
const lab: LabDescription = {
  name: "Shed",
  lines: [
    line("film", [bath("f-dev", "developer"), bath("f-fix", "fixer")]),
    line("paper", [bath("p-dev", "developer")]),
    line("wash only", [bath("w", "wash")]),
  ],
  pumps: [
    { id: "pump-2", bath: "f-fix", settingMlPerStroke: 5, rateMlPerM2: 600 },
    { id: "pump-1", bath: "f-dev", settingMlPerStroke: 5, rateMlPerM2: 600 },
  ],
  files: { stripBatches: "b.csv" },
};
const readAt = "2026-08-14T07:00";
const warm = (id: string) => {
  return { readAt, bath: id, instrument: "thermometer" as const, temperatureC: 38 };
};
const counter = (pump: string) => {
  return { readAt, pump, counterStrokes: 1, settingMlPerStroke: 5, counterReset: false };
};

describe("developerLogs", () => {
  it("takes each line's developer, the pump that feeds it, and its own production", () => {
    const made = { date: "2026-08-14", process: "film", format: "135-36", count: 3 };
    const [film, paper, ...others] = developerLogs(lab, {
      temperatures: [warm("f-dev"), warm("f-fix"), warm("p-dev")],
      pumps: [counter("pump-1"), counter("pump-2")],
      production: [made],
    });
    expect(film).toEqual({
      process: "film",
      temperatures: { bath: "f-dev", readings: [warm("f-dev")] },
      pumps: { pump: "pump-1", readings: [counter("pump-1")] },
      production: { process: "film", rows: [made] },
    });
    expect(paper).toEqual({
      process: "paper",
      temperatures: { bath: "p-dev", readings: [warm("p-dev")] },
    });
    expect(others).toEqual([]);
  });
  it("takes the checks and the work of the line itself", () => {
    const check = (of: string) => ({ readAt, line: of, check: "clearing-time", value: 40 });
    const work = (of: string) => ({ doneAt: readAt, line: of, work: "fixer-handled" });
    const [film, paper] = developerLogs(lab, {
      checks: [check("film"), check("paper")],
      work: [work("film")],
    });
    expect(film).toEqual({
      process: "film",
      checks: { line: "film", readings: [check("film")] },
      work: { line: "film", entries: [work("film")] },
    });
    expect(paper).toEqual({
      process: "paper",
      checks: { line: "paper", readings: [check("paper")] },
    });
  });
  it("leaves out logs that the lab does not keep, and those without an entry of the line", () => {
    expect(developerLogs(lab, { temperatures: [], pumps: undefined })).toEqual([
      { process: "film" },
      { process: "paper" },
    ]);
  });
});
