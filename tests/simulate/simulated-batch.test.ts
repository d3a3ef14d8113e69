import { describe, expect, it } from "vitest";
import { crossoversOfStrips } from "wetside/control";
import { InputError } from "wetside/input";
import {
  type SimulatedBatch,
  type SimulatedLine,
  simulatedLines,
  simulateLab,
} from "wetside/simulate";
import { dateOf } from "./labs.ts";

const [film] = simulatedLines as readonly [SimulatedLine];
const grey = (d: number) => ({ red: d, green: d, blue: d });
const first: SimulatedBatch = {
  id: "A-1",
  process: film.process,
  reference: film.reference,
  correction: { ld: grey(0.01) },
};
const second: SimulatedBatch = {
  ...first,
  id: "A-2",
  firstUsed: "2026-05-27",
  aimsOff: { ld: grey(0.03) },
  pairedDays: 4,
};
const QUIET = { stripSd: 0, layerSd: 0, readingSd: 0, wanderSd: 0 };
const run = (batches: readonly SimulatedBatch[], more = {}) =>
  simulateLab({ seed: 61, days: 30, lines: [{ ...film, batches }], ...more });

describe("the batches of strips of a simulated line", () => {
  const lab = run([first, second], { noise: QUIET, mixSd: 0 });

  it("are registered without what is hidden in them", () => {
    const { aimsOff, pairedDays, ...registered } = second;
    expect(lab.batches).toEqual([first, registered]);
  });

  it("follow one another, with a pair at start-up on each morning of the change", () => {
    for (let day = 0; day < 30; day++) {
      const used = lab.strips
        .filter(({ takenAt }) => takenAt.startsWith(dateOf(lab, day)))
        .map(({ stripBatch }) => stripBatch);
      const [startUp, ...others] = used;
      const after = day >= 14;
      expect(startUp, `day ${day}`).toBe(after ? "A-2" : "A-1");
      expect(others.includes("A-2"), `day ${day}`).toBe(
        (day >= 10 && !after) || (after && others.length > 0),
      );
      expect(used.length, `day ${day}`).toBeLessThanOrEqual(day >= 10 && !after ? 4 : 3);
    }
  });

  it("let a crossover find exactly how far a batch's strips lie off its aims", () => {
    /** Densities are read to thousandths. */
    const ROUNDING = 0.0011;
    const [change] = crossoversOfStrips(lab.strips, lab.batches);
    expect(change?.pairs).toBe(4);
    for (const { patch, againstOwnAim } of change?.differences ?? []) {
      const truth = patch === "ld" ? 0.03 : 0;
      expect(Math.abs((againstOwnAim ?? Number.NaN) - truth)).toBeLessThan(ROUNDING);
    }
  });

  it("change at once where no pairs are asked for", () => {
    const { pairedDays, ...atOnce } = second;
    const strips = run([first, atOnce]).strips;
    for (const { takenAt, stripBatch } of strips) {
      expect(stripBatch).toBe(takenAt < "2026-05-27" ? "A-1" : "A-2");
    }
    expect(strips).toHaveLength(run([first]).strips.length);
  });

  const refused: readonly (readonly [string, readonly unknown[], string])[] = [
    ["none", [], "at least one batch"],
    ["one of another process", [{ ...first, process: "colour-paper" }], "the line's own"],
    ["one twice", [first, { ...second, id: "A-1" }], "write each batch once"],
    [
      "a later one without a day",
      [first, { ...second, firstUsed: undefined }],
      "firstUsed of batch A-2",
    ],
    ["a day that does not exist", [first, { ...second, firstUsed: "2026-02-30" }], "YYYY-MM-DD"],
    ["half a day of pairs", [first, { ...second, pairedDays: 0.5 }], "pairedDays of A-2"],
    ["a correction that is a density", [{ ...first, correction: { ld: grey(0.9) } }], "correction"],
  ];
  for (const [words, batches, message] of refused) {
    it(`refuse ${words}`, () => {
      const bad = () => run(batches as readonly SimulatedBatch[]);
      expect(bad).toThrow(InputError);
      expect(bad).toThrow(message);
    });
  }
});

describe("what else a line may bring", () => {
  it("is a dryer, shown by its controller and by nothing else", () => {
    const dryer = simulateLab({ seed: 61, days: 8, lines: [{ ...film, dryerC: 55 }] }).temperatures;
    const rows = dryer.filter(({ bath }) => bath === "film-dryer");
    expect(rows).toHaveLength(24);
    expect(rows.every(({ instrument }) => instrument === "controller")).toBe(true);
    expect(rows.every(({ temperatureC }) => Math.abs(temperatureC - 55) < 2)).toBe(true);
  });

  it("is what a counter showed before the first day", () => {
    const baths = film.baths.map((bath) => ({ ...bath, firstCounterStrokes: 100 }));
    const pumps = simulateLab({ seed: 61, days: 1, lines: [{ ...film, baths }] }).pumps;
    for (const { counterStrokes } of pumps) {
      expect(counterStrokes).toBeGreaterThan(100);
      expect(counterStrokes).toBeLessThan(1000);
    }
  });
});

describe("how closely prints are looked at", () => {
  const faults = [{ kind: "printer-at-fault", line: "paper", fromDay: 0, size: 0.06 }];
  const dimWith = (doublingDensity?: number) => {
    const more = doublingDensity === undefined ? {} : { doublingDensity };
    const { remakes } = simulateLab({ seed: 61, days: 60, faults, ...more });
    return remakes.reduce((sum, { remade }) => sum + (remade.tooDim ?? 0), 0);
  };

  it("makes more of a printer at fault: 2^(0.06/0.03) against 2^(0.06/0.06), within a tenth", () => {
    expect(dimWith(0.03) / dimWith(0.06)).toBeGreaterThan(1.8);
    expect(dimWith(0.03) / dimWith(0.06)).toBeLessThan(2.2);
    expect(dimWith(0.08)).toBe(dimWith());
  });

  it("refuses what is no density", () => {
    expect(() => dimWith(0)).toThrow("doublingDensity is 0");
  });
});
