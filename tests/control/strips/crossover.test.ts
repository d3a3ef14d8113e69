import { describe, expect, it } from "vitest";
import { aimsOfBatch, crossover, type StripPair, stripPairs } from "wetside/control";
import { batch, frozen, grey, morning, paperStrip, reference } from "../example-strips.ts";

const oldAims = aimsOfBatch(batch("77"));
const pair = (day: number, old: number, fresh: number): StripPair =>
  frozen({
    old: paperStrip(morning(day), old),
    new: paperStrip(morning(day), fresh, { stripBatch: "88" }),
  });
const three = [pair(1, 0.02, 0.05), pair(2, 0.01, 0.05), pair(3, 0.03, 0.05)];

describe("a crossover to a new batch of strips", () => {
  it("moves the aim by the mean difference, so that the process keeps its place", () => {
    const { aims, from, to, pairs, warnings } = crossover(oldAims, three);
    expect([from, to, pairs]).toEqual(["77", "88", 3]);
    expect(aims.patches.ld).toEqual(grey(0.83));
    expect(aims.patches.dMin).toEqual(reference.dMin);
    expect(aims.basis).toBe("crossover");
    expect(warnings).toEqual([]);
  });
  it("gives scatter and standard error of each difference", () => {
    const ld = crossover(oldAims, three).differences.find((d) => d.patch === "ld");
    expect(ld?.meanDifference).toBe(0.03);
    expect(ld?.standardDeviation).toBeCloseTo(0.01, 9);
    expect(ld?.standardError).toBeCloseTo(0.01 / Math.sqrt(3), 9);
  });
  it("warns of fewer than three pairs, and has no scatter for one", () => {
    const one = crossover(oldAims, three.slice(0, 1));
    expect(one.warnings.join()).toMatch(/1 pair only; run at least 3/);
    expect(one.differences[0]?.standardDeviation).toBeNull();
    expect(crossover(oldAims, three.slice(0, 2)).warnings.join()).toMatch(/2 pairs only/);
    expect(crossover(oldAims, three, { minimumPairs: 5 }).warnings.join()).toMatch(/at least 5/);
  });
  it("warns of wide scatter", () => {
    const wide = [pair(1, 0, 0), pair(2, 0, 0.08), pair(3, 0, 0.01)];
    expect(crossover(oldAims, wide).warnings.join()).toMatch(
      /ld red: the differences scatter by 0/,
    );
  });
  it("warns where the moved aim disagrees with the batch's own, without forcing a match", () => {
    const own = aimsOfBatch(batch("88", { reference: { ...reference, ld: grey(0.9) } }));
    const { warnings, differences } = crossover(oldAims, three, { ownAims: own });
    expect(differences.find((d) => d.patch === "ld")?.againstOwnAim).toBe(-0.07);
    expect(warnings.join()).toMatch(/ld red: the moved aim stands −0\.070.*do not force a match/);
  });
  it("leaves a patch that only one of the two has out of that pair", () => {
    const { dMax: _, ...patches } = reference;
    const short = { ...three[0], new: { ...three[0]?.new, patches } } as StripPair;
    const { differences } = crossover(oldAims, [short, ...three.slice(1)]);
    expect(differences.find((d) => d.patch === "dMax")?.pairs).toBe(2);
    const never = crossover(oldAims, [short]);
    expect(never.aims.patches.dMax).toBeUndefined();
    expect(never.warnings.join()).toMatch(/no pair has patch dMax/);
  });
  it("refuses no pairs, mixed batches, the same batch and another process", () => {
    expect(() => crossover(oldAims, [])).toThrow(/run at least one strip of each batch/);
    expect(() => crossover(aimsOfBatch(batch("88")), three)).toThrow(/another batch than the old/);
    const mixed = [
      three[0],
      { ...pair(2, 0, 0), old: paperStrip(morning(2), 0, { stripBatch: "9" }) },
    ];
    expect(() => crossover(oldAims, mixed as StripPair[])).toThrow(
      /pairs\[1\]\.old\.stripBatch is "9"/,
    );
    const other = { ...pair(1, 0, 0), old: paperStrip(morning(1), 0, { process: "x" }) };
    expect(() => crossover(oldAims, [other])).toThrow(/pairs\[0\]\.old\.process is "x"/);
    const bare = { ...pair(1, 0, 0), old: paperStrip(morning(1), 0, { patches: {} }) };
    expect(() => crossover(oldAims, [bare])).toThrow(/share a patch/);
  });
});

describe("the strips that were run side by side", () => {
  const search = { process: "colour-paper", from: "77", to: "88" };
  const old = (day: number, time: string) => paperStrip(morning(day, time), 0);
  const fresh = (day: number, time: string) =>
    paperStrip(morning(day, time), 0.02, { stripBatch: "88" });
  const times = (pairs: readonly StripPair[]) =>
    pairs.map((each) => [each.old.takenAt.slice(8), each.new.takenAt.slice(8)]);

  it("are found in a log in any order, either batch first, within the window", () => {
    const log = [
      fresh(3, "07:05"),
      old(3, "07:11"),
      old(1, "07:10"),
      fresh(1, "07:40"),
      fresh(2, "07:10"),
    ];
    expect(times(stripPairs(log, search))).toEqual([
      ["01T07:10", "01T07:40"],
      ["03T07:11", "03T07:05"],
    ]);
    expect(times(stripPairs(log, { ...search, withinMinutes: 29 }))).toEqual([
      ["03T07:11", "03T07:05"],
    ]);
  });
  it("are paired once each, the nearest first", () => {
    const log = [old(1, "07:00"), old(1, "07:10"), fresh(1, "07:11"), fresh(1, "07:20")];
    expect(times(stripPairs(log, search))).toEqual([
      ["01T07:10", "01T07:11"],
      ["01T07:00", "01T07:20"],
    ]);
  });
  it("leave other processes out", () => {
    const log = [old(1, "07:00"), { ...fresh(1, "07:05"), process: "x" }];
    expect(stripPairs(log, search)).toEqual([]);
  });
  it("are refused for one batch and for a window of nothing", () => {
    expect(() => stripPairs([], { ...search, to: "77" })).toThrow(/another batch than from/);
    expect(() => stripPairs([], { ...search, withinMinutes: 0 })).toThrow(/withinMinutes is 0/);
  });
});
