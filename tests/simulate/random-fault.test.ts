import { describe, expect, it } from "vitest";
import {
  randomFault,
  type SimulatedLine,
  simulatedFaultKinds,
  simulatedLines,
  simulateLab,
} from "wetside/simulate";

const SEEDS = Array.from({ length: 2000 }, (_, seed) => seed);
const film = simulatedLines.filter(({ id }) => id === "film");

describe("a random fault", () => {
  it("is refused without a whole seed, for fewer than three days, or without lines", () => {
    expect(() => randomFault(Number.NaN)).toThrow("seed is NaN; write a whole number");
    expect(() => randomFault(1, { days: 2 })).toThrow("days is 2; write a whole number at least 3");
    expect(() => randomFault(1, { lines: [] })).toThrow("write a list of lines");
    const words = ["film"] as unknown as readonly SimulatedLine[];
    expect(() => randomFault(1, { lines: words })).toThrow("write a list of lines");
  });

  it("is the same for the same seed", () => {
    expect(randomFault(5, { days: 70 })).toEqual(randomFault(5, { days: 70 }));
  });

  it("begins after the first third and before the last tenth", () => {
    for (const days of [3, 4, 10, 90, 365]) {
      const moments = SEEDS.slice(0, 300).map((seed) => randomFault(seed, { days }).fromDay);
      expect(Math.min(...moments)).toBeGreaterThanOrEqual(Math.floor(days / 3));
      expect(Math.max(...moments)).toBeLessThan(Math.max(0.9 * days, days / 3 + 1));
    }
  });

  it("is 0.8 to 1.6 times what is typical of its kind, and never too large", () => {
    for (const seed of SEEDS) {
      const { kind, size = Number.NaN } = randomFault(seed);
      const found = simulatedFaultKinds.find(({ id }) => id === kind);
      const times = size / (found?.typicalSize ?? Number.NaN);
      expect(times).toBeGreaterThan(0.795);
      expect(times).toBeLessThan(1.605);
      expect(size).toBeLessThanOrEqual(found?.largestSize ?? Number.NaN);
    }
  });

  it("is of every kind about equally often, within five deviations", () => {
    const counts = new Map<string, number>();
    const lines = simulatedLines.filter(({ id }) => id === "paper");
    for (const seed of SEEDS) {
      const { kind } = randomFault(seed, { lines });
      counts.set(kind, (counts.get(kind) ?? 0) + 1);
    }
    const share = 1 / simulatedFaultKinds.length;
    const sd = Math.sqrt(SEEDS.length * share * (1 - share));
    for (const { id } of simulatedFaultKinds) {
      expect(Math.abs((counts.get(id) ?? 0) - SEEDS.length * share), id).toBeLessThan(5 * sd);
    }
  });

  it("is never a printer at fault where nothing is printed", () => {
    const kinds = new Set(SEEDS.map((seed) => randomFault(seed, { lines: film }).kind));
    expect(kinds.has("printer-at-fault")).toBe(false);
    expect(kinds.size).toBe(simulatedFaultKinds.length - 1);
  });

  it("can always be switched on", () => {
    for (const seed of SEEDS.slice(0, 100)) {
      expect(() =>
        simulateLab({ seed, days: 3, faults: [randomFault(seed, { days: 3 })] }),
      ).not.toThrow();
    }
  });
});
