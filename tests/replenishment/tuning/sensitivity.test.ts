import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { colourNegativeProcess, colourPaperProcess, seriesOfStrips } from "wetside/control";
import {
  illustrativeSensitivity,
  rateChange,
  rateSensitivity,
  stripRows,
} from "wetside/replenishment";
import { densityResponses } from "wetside/simulate";
import { developerAims } from "../../../lib/simulate/developer-tank.ts";

const file = JSON.parse(
  readFileSync(
    new URL("../../../data/replenishment/rate-sensitivity.json", import.meta.url),
    "utf8",
  ),
);

describe("the default sensitivity", () => {
  it("is marked illustrative in the file, in the result, and in a sentence", () => {
    for (const each of file.processes) {
      expect(each.howObtained).toBe("illustrative");
      expect(each.source).toContain("invented");
    }
    const found = illustrativeSensitivity("colour-paper");
    expect(found.howObtained).toBe("illustrative");
    expect(found.warnings[0]).toContain("rateSensitivity");
    expect(found.warnings[0]).toContain("planStepTest");
  });
  it("names parameters that the process has", () => {
    const specifications = [colourNegativeProcess, colourPaperProcess];
    for (const { process, parameter } of file.processes) {
      const specification = specifications.find(({ id }) => id === process);
      expect(specification?.parameters.map(({ id }) => id)).toContain(parameter);
    }
  });
  it("is how the simulated lab's developer answers, to the digits it is given in", () => {
    /** Half of the last digit given. */
    const ROUNDING = 0.005;
    const aims = developerAims.map(({ replenisherOverAim }) => replenisherOverAim - 1);
    for (const { process, parameter, densityPerUnitRate } of file.processes) {
      const answers = densityResponses[process];
      const ofPatch = (patch: string) => {
        const causes = ["developingAgent", "bromide", "alkali"] as const;
        return [0, 1, 2].map((colour) =>
          causes.reduce((sum, cause, k) => {
            return sum + (aims[k] ?? 0) * (answers?.[cause].densities[patch]?.[colour] ?? 0);
          }, 0),
        );
      };
      const [low, high] = [ofPatch("ld"), ofPatch("hd")];
      const expected =
        parameter === "hdLessLd" ? high.map((d, i) => d - (low[i] ?? 0)) : ofPatch(parameter);
      const { red, green, blue } = densityPerUnitRate;
      [red, green, blue].forEach((value, i) => {
        expect(Math.abs(value - (expected[i] ?? Number.NaN))).toBeLessThan(ROUNDING);
      });
    }
  });
  it("says which processes and parameters there are", () => {
    expect(() => illustrativeSensitivity("reversal")).toThrow('"colour-negative", "colour-paper"');
    expect(() => illustrativeSensitivity("colour-paper", ["speed"])).toThrow('"ld", "hdLessLd"');
    expect(() => illustrativeSensitivity("colour-paper", [])).toThrow("write a list");
  });
});

describe("the rows of strips for tuning", () => {
  const grey = (d: number) => ({ red: d, green: d, blue: d });
  const reference = { dMin: grey(0.1), ld: grey(0.8), hd: grey(1.6), dMax: grey(2.4) };
  const batches = [{ id: "77", process: "colour-paper", reference, correction: {} }];
  const strips = Array.from({ length: 30 }, (_, i) => ({
    takenAt: `2026-06-${String(i + 1).padStart(2, "0")}T07:10`,
    process: "colour-paper",
    stripBatch: "77",
    operator: "A",
    patches: { ...reference, ld: { red: 0.81, green: 0.8 + i / 1000, blue: 0.79 } },
  }));
  const series = seriesOfStrips({ strips, batches, specification: colourPaperProcess });

  it("are one a strip, parameter by parameter in red, green, blue", () => {
    const { channels, deviations, at } = stripRows(series);
    const ids = channels.map(({ parameter, colour }) => `${parameter} ${colour}`);
    expect(ids.join()).toBe("ld red,ld green,ld blue,hdLessLd red,hdLessLd green,hdLessLd blue");
    expect(deviations[3]).toEqual([0.01, 0.003, -0.01, -0.01, -0.003, 0.01]);
    expect(at[3]).toBe("2026-06-04T07:10");
    expect(channels).toEqual(illustrativeSensitivity("colour-paper").channels);
  });
  it("leave out a strip that lacks a patch, and say so", () => {
    const { hd: _, ...withoutHd } = reference;
    const torn = strips.map((strip, i) => (i === 4 ? { ...strip, patches: withoutHd } : strip));
    const rows = stripRows(
      seriesOfStrips({ strips: torn, batches, specification: colourPaperProcess }),
    );
    expect(rows.deviations).toHaveLength(29);
    expect(rows.leftOut).toEqual(["2026-06-05T07:10"]);
    expect(rows.warnings[0]).toContain("2026-06-05T07:10");
    expect(rows.at).not.toContain("2026-06-05T07:10");
  });
  it("go into the fit as they are", () => {
    const { deviations } = stripRows(series, { from: "2026-06-03T00:00" });
    const turnovers = deviations.map((_, i) => i / 10);
    const { sensitivity } = illustrativeSensitivity("colour-paper");
    const noise = sensitivity.map((_, j) => sensitivity.map((__, k) => (j === k ? 1e-4 : 0)));
    expect(rateChange({ turnovers, deviations, sensitivity, noise }).strips).toBe(28);
  });
  it("refuse strips of two processes, colour spread, unknown parameters and empty stretches", () => {
    const film = series.map((each) => ({ ...each, process: "colour-negative" }));
    expect(() => stripRows([...series, ...film])).toThrow("write the series of one process");
    expect(() => stripRows([])).toThrow("seriesOfStrips");
    expect(() => stripRows(series, { parameters: ["colourSpread"] })).toThrow("one value a strip");
    expect(() => stripRows(series, { parameters: ["hdLesLd"] })).toThrow('did you mean "hdLessLd"');
    expect(() => stripRows(series, { from: "2027-01-01T00:00" })).toThrow("no strip has all");
  });
});

describe("a history of rate changes", () => {
  it("with rows missing or short is told which, and what to write", () => {
    const turnovers = Array.from({ length: 12 }, (_, i) => i / 3);
    const deviations = turnovers.map(() => [0.01, 0.02]);
    const changes = [{ atTurnovers: 1, fraction: 0.1 }];
    const of = (rows: readonly (readonly number[])[]) => () =>
      rateSensitivity({ turnovers, deviations: rows, changes });
    expect(of(deviations.slice(1))).toThrow('deviations is "11 rows"; write 12, one a strip');
    expect(of(deviations.map((row, i) => (i === 3 ? [0.01] : row)))).toThrow(
      'rateSensitivity: deviations[3] is "1 numbers"; write 2',
    );
    expect(of(deviations.map((row, i) => (i === 3 ? [0.01, Number.NaN] : row)))).toThrow(
      "deviations[3][1] is NaN",
    );
    expect(of([])).toThrow("one a strip");
  });
});
