import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  colourNegativeProcess,
  colourPaperProcess,
  crossoversOfStrips,
  likelyCauses,
  type MorningCallInput,
  morningCall,
} from "wetside/control";
import {
  developerLogs,
  loggedBaths,
  parseCheckLog,
  parseLabDescription,
  parseProductionLog,
  parsePumpLog,
  parseStripBatchRegister,
  parseStripLogs,
  parseTemperatureLog,
  parseWorkLog,
} from "wetside/records";

const text = (name: string) =>
  readFileSync(new URL(`../../../data/pellow-street/${name}`, import.meta.url), "utf8");
const read = (name: string) => ({ file: name, text: text(name) });
const specifications = [colourNegativeProcess, colourPaperProcess];
const processes = specifications.map(({ id }) => id);
const batches = parseStripBatchRegister(text("strip-batches.csv"), {
  file: "strip-batches.csv",
  processes,
}).rows;
const strips = parseStripLogs([read("film-strips.csv"), read("paper-strips.csv")], {
  batches,
  processes,
}).rows;
const description = parseLabDescription(text("lab.json"));
const logs = developerLogs(description, {
  temperatures: parseTemperatureLog(text("temperatures.csv"), {
    file: "temperatures.csv",
    baths: loggedBaths(description),
  }).rows,
  pumps: parsePumpLog(text("pumps.csv"), { file: "pumps.csv" }).rows,
  production: parseProductionLog(text("production.csv"), { file: "production.csv" }).rows,
  checks: parseCheckLog(text("checks.csv"), { file: "checks.csv" }).rows,
  work: parseWorkLog(text("work.csv"), { file: "work.csv" }).rows,
});

/** The demo lab on some morning. The answers are those of data/pellow-street/hidden-faults.md. */
function labOn(asOf: string): MorningCallInput {
  const crossovers = crossoversOfStrips(strips, batches, { asOf });
  return { strips, batches, crossovers, specifications, charts: { baseDays: 21 }, asOf };
}
function causesOn(asOf: string, own = logs) {
  const lab = labOn(asOf);
  return likelyCauses(lab, morningCall(lab), own);
}

describe("likelyCauses on the demo lab", () => {
  it("finds the pump that delivers too little, and says what the pump log says", () => {
    const [film, ...others] = causesOn("2026-08-14T08:00");
    expect(others).toEqual([]);
    expect(film?.process).toBe("colour-negative");
    expect(film?.ranking?.faults[0]?.id).toBe("under-replenished");
    expect(film?.ranking?.faults[0]?.probability).toBeGreaterThan(0.9);
    expect(film?.sentence).toMatch(/^Most likely developer under-replenished .*measuring cylinder/);
    const words = film?.ranking?.logs.map((each) => each.words).join("\n");
    expect(words).toMatch(/delivered −1[4-7].*speaks for developer under-replenished/);
  });
  it("without logs leaves the causes that strips cannot part beside each other", () => {
    const [film] = causesOn("2026-08-14T08:00", []);
    expect(film?.ranking?.leading).toBe("under-active");
    expect(film?.sentence).toContain("developer too cool");
    expect(film?.ranking?.logs).toEqual([]);
  });
  it("finds the heater that holds the paper developer too warm, by the thermometer", () => {
    const paper = causesOn("2026-07-03T12:00").find((each) => each.process === "colour-paper");
    expect(paper?.ranking?.faults[0]?.id).toBe("developer-too-warm");
  });
  it("puts fixer in the film developer among the first two on the morning it happened", () => {
    const film = causesOn("2026-06-09T07:40").find((each) => each.process === "colour-negative");
    const two = film?.ranking?.faults.slice(0, 2).map(({ id }) => id);
    expect(two).toContain("contaminated-with-fixer");
  });
  it("does not blame a fault that was mended days ago", () => {
    const paper = causesOn("2026-07-15T12:00").find((each) => each.process === "colour-paper");
    expect(paper?.ranking?.leading).not.toBe("over-active");
  });
  it("looks for no cause where the line may simply run", () => {
    expect(causesOn("2026-05-18T12:00")).toEqual([]);
  });
});

describe("likelyCauses without a ranking", () => {
  const asOf = "2026-08-14T08:00";
  it("looks for no cause where a line only waits for a fresh strip", () => {
    const lab = labOn("2026-08-15T07:30");
    const call = morningCall(lab);
    const paper = call.processes.find(({ process }) => process === "colour-paper");
    expect([paper?.verdict, paper?.workMayRun]).toEqual(["act", false]);
    expect(likelyCauses(lab, call).map(({ process }) => process)).toEqual(["colour-negative"]);
  });

  it("says so where no base period was given", () => {
    const { charts: _, ...lab } = labOn(asOf);
    const [film] = likelyCauses(lab, morningCall(lab));
    expect(film).toMatchObject({
      ranking: null,
      sentence: "No ranking of causes: no base period was given.",
    });
  });
  it("says so where the base period is given by rows", () => {
    const basePeriod = { firstRow: 0, lastRow: 44 };
    const lab = { ...labOn(asOf), specifications: [colourNegativeProcess], charts: { basePeriod } };
    const [film] = likelyCauses(lab, morningCall(lab));
    expect(film?.sentence).toContain("not given by dates");
  });
  it("names the tables there are for a process that has none", () => {
    const own = { ...colourNegativeProcess, id: "own-film" };
    const lab = {
      ...labOn(asOf),
      crossovers: [],
      specifications: [own],
      strips: strips.map((strip) => ({
        ...strip,
        process: strip.process.replace("colour-negative", "own-film"),
      })),
      batches: batches.map((batch) => ({
        ...batch,
        process: batch.process.replace("colour-negative", "own-film"),
      })),
    };
    const [film] = likelyCauses(lab, morningCall(lab));
    expect(film?.ranking).toBeNull();
    expect(film?.sentence).toContain('"colour-negative" and "colour-paper"');
  });
});
