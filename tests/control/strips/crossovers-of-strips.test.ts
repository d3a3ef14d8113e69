import { describe, expect, it } from "vitest";
import { aimsOfBatch, crossover, crossoversOfStrips, stripPairs } from "wetside/control";
import { batch, frozen, grey, morning, paperStrip, reference } from "../example-strips.ts";

const batches = frozen([
  batch("77"),
  batch("78", { reference: { ...reference, ld: grey(0.83) } }),
  batch("79"),
]);
const side = (day: number, from: string, to: string, step: number) => [
  paperStrip(morning(day), 0, { stripBatch: from }),
  paperStrip(morning(day, "07:16"), step, { stripBatch: to }),
];
const ids = (found: ReturnType<typeof crossoversOfStrips>) =>
  found.map((one) => `${one.from} → ${one.to}: ${one.pairs}`);

describe("all crossovers of a log", () => {
  it("are none without strips, with one batch, and where no two strips were run side by side", () => {
    expect(crossoversOfStrips([], batches)).toEqual([]);
    expect(crossoversOfStrips([paperStrip(morning(1), 0)], batches)).toEqual([]);
    const apart = [paperStrip(morning(1), 0), paperStrip(morning(2), 0, { stripBatch: "78" })];
    expect(crossoversOfStrips(apart, batches)).toEqual([]);
  });
  it("are what crossover makes of the pairs that stripPairs finds", () => {
    const strips = frozen([1, 2, 3].flatMap((day) => side(day, "77", "78", 0.02)));
    const pairs = stripPairs(strips, { process: "colour-paper", from: "77", to: "78" });
    const [old, own] = batches.map(aimsOfBatch);
    if (old === undefined || own === undefined) throw new Error("two batches are expected");
    expect(crossoversOfStrips(strips, batches)).toEqual([crossover(old, pairs, { ownAims: own })]);
  });
  it("go on from aims that a crossover moved, batch after batch", () => {
    const strips = [
      ...[1, 2, 3].flatMap((day) => side(day, "77", "78", 0.02)),
      ...[10, 11, 12].flatMap((day) => side(day, "78", "79", 0.03)),
    ];
    const found = crossoversOfStrips(strips, batches);
    expect(ids(found)).toEqual(["77 → 78: 3", "78 → 79: 3"]);
    expect(found[1]?.aims.patches.ld?.red).toBeCloseTo(0.8 + 0.02 + 0.03, 9);
  });
  it("do not depend on the order of the rows", () => {
    const strips = [1, 2, 3].flatMap((day) => side(day, "77", "78", 0.02));
    expect(crossoversOfStrips([...strips].reverse(), batches)).toEqual(
      crossoversOfStrips(strips, batches),
    );
  });
  it("keep processes apart that number their batches alike", () => {
    const strips = [1, 2, 3].flatMap((day) => side(day, "77", "78", 0.02));
    const film = strips.map((one) => ({ ...one, process: "colour-negative" }));
    const both = batches.flatMap((one) => [one, { ...one, process: "colour-negative" }]);
    const found = crossoversOfStrips([...film.slice(0, 2), ...strips], both);
    expect(found.map((one) => `${one.aims.process}: ${one.pairs}`)).toEqual([
      "colour-negative: 1",
      "colour-paper: 3",
    ]);
  });
  it("know nothing of strips after the time they are asked for", () => {
    const strips = [1, 2, 3].flatMap((day) => side(day, "77", "78", 0.02));
    const found = crossoversOfStrips(strips, batches, { asOf: morning(2, "12:00") });
    expect(ids(found)).toEqual(["77 → 78: 2"]);
    expect(found[0]?.warnings).toEqual([
      "2 pairs only; run at least 3, at separate times, while old strips are left",
    ]);
    expect(() => crossoversOfStrips(strips, batches, { asOf: "2026-08-02" })).toThrow(/asOf/);
  });
  it("pass over a batch that nobody registered", () => {
    const strips = [1, 2, 3].flatMap((day) => side(day, "77", "99", 0.02));
    expect(crossoversOfStrips(strips, batches)).toEqual([]);
  });
});
