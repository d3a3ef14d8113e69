import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Densities } from "wetside/control";
import {
  revealFaults,
  simulatedFaultEffect,
  simulatedFaultKinds,
  simulateLab,
} from "wetside/simulate";

const page = readFileSync(new URL("../../docs/simulate.md", import.meta.url), "utf8");
const rows = page
  .split("\n")
  .filter((line) => line.startsWith("| "))
  .map((line) =>
    line
      .slice(1, -1)
      .split("|")
      .map((cell) => cell.trim()),
  );
const rowsOf = (kind: string) => rows.filter(([first]) => first === `\`${kind}\``);

function thousandths(value: number): string {
  const rounded = Math.round(1000 * value);
  if (rounded === 0) return "0";
  return rounded > 0 ? `+${rounded}` : `−${-rounded}`;
}

function shown(process: string, kind: string): readonly string[] {
  const effect = simulatedFaultEffect(process, kind);
  const mean = ({ red, green, blue }: Densities) => (red + green + blue) / 3;
  const { dMin, ld, hd, dMax } = effect;
  if (!dMin || !ld || !hd || !dMax) throw new Error(`${process} lacks a patch`);
  return [mean(dMin), mean(ld), mean(hd) - mean(ld), mean(dMax)].map(thousandths);
}

describe("the page on the simulated lab", () => {
  for (const {
    id,
    words,
    sizeMeans,
    unit,
    typicalSize,
    largestSize,
    showsIn,
  } of simulatedFaultKinds) {
    it(`lists ${id} as the data has it`, () => {
      const [row = []] = rowsOf(id);
      expect(row[1]).toBe(words);
      expect(row[2]).toBe(unit === "1" ? sizeMeans : `${sizeMeans}, ${unit}`);
      expect(row[3]).toBe(`${typicalSize}, ${largestSize}`);
      expect(row[5]).toBe(showsIn);
    });

    it(`shows what ${id} does to strips as it is computed`, () => {
      const [, row = []] = rowsOf(id);
      const film = id === "printer-at-fault" ? ["–", "–", "–", "–"] : shown("colour-negative", id);
      expect(row.slice(1)).toEqual([`${typicalSize}`, ...film, ...shown("colour-paper", id)]);
    });
  }

  it("has an example that holds", () => {
    const fault = { kind: "under-replenished", line: "film", fromDay: 30, size: 0.2 };
    expect(page).toContain('{ kind: "under-replenished", line: "film", fromDay: 30, size: 0.2 }');
    const lab = simulateLab({ seed: 2026, days: 60, faults: [fault] });
    expect(page).toContain(`lab.strips.length; // ${lab.strips.length}, of both lines`);
    const [pump] = lab.pumps;
    const { readAt, pump: id, counterStrokes } = pump ?? {};
    expect(page).toContain(
      `{ readAt: "${readAt}", pump: "${id}", counterStrokes: ${counterStrokes}, … }`,
    );
    expect(page).toContain(`fromDate; // "${revealFaults(lab)[0]?.fromDate}"`);
  });
});
