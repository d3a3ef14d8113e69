import { describe, expect, it } from "vitest";
import { aimsOfBatch, colourPaperProcess, crossover, seriesOfStrips } from "wetside/control";
import { batch, batches, frozen, grey, morning, paperStrip, reference } from "../example-strips.ts";

const specification = colourPaperProcess;
const ldRed = (history: Parameters<typeof seriesOfStrips>[0]) =>
  seriesOfStrips(frozen(history)).find((s) => s.parameter === "ld" && s.colour === "red");

describe("the series of a strip log", () => {
  it("stand in the order of time whatever the order of the strips, with rows that lead back", () => {
    const strips = [3, 1, 2].map((day) => paperStrip(morning(day), day / 100));
    const series = ldRed({ strips, batches, specification });
    expect(series?.deviations).toEqual([0.01, 0.02, 0.03]);
    expect(series?.rows).toEqual([1, 2, 0]);
    expect(series?.takenAt).toEqual([1, 2, 3].map((day) => morning(day)));
  });
  it("keep two strips of the same minute in the order given", () => {
    const strips = [
      paperStrip(morning(2), 0),
      paperStrip(morning(1), 0.01),
      paperStrip(morning(1), 0.02),
    ];
    expect(ldRed({ strips, batches, specification })?.rows).toEqual([1, 2, 0]);
  });
  it("pass over strips of other processes and strips later than asked", () => {
    const strips = [
      paperStrip(morning(1), 0.01),
      paperStrip(morning(1), 0.02, { process: "colour-negative", stripBatch: "unknown here" }),
      paperStrip(morning(2), 0.03),
    ];
    expect(ldRed({ strips, batches, specification, asOf: morning(1) })?.rows).toEqual([0]);
  });
  it("are empty, and still there, where the process has no strips", () => {
    const series = seriesOfStrips({ strips: [], batches: [], specification });
    expect(series.length).toBe(13);
    expect(series.every((each) => each.deviations.length === 0)).toBe(true);
  });
  it("mark the first reading of a new batch, and whether a crossover led there", () => {
    const strips = [
      paperStrip(morning(1), 0.01),
      paperStrip(morning(2), 0.03, { stripBatch: "88" }),
      paperStrip(morning(3), 0.01),
    ];
    const plain = ldRed({ strips, batches: [...batches, batch("88")], specification });
    expect(plain?.batchChanges).toEqual([
      { at: 1, from: "77", to: "88", crossover: false },
      { at: 2, from: "88", to: "77", crossover: false },
    ]);
    const pairs = [
      { old: paperStrip(morning(1), 0), new: paperStrip(morning(1), 0.02, { stripBatch: "88" }) },
    ];
    const over = crossover(aimsOfBatch(batch("77")), pairs);
    const moved = ldRed({ strips, batches, crossovers: [over], specification });
    expect(moved?.batchChanges.map((change) => change.crossover)).toEqual([true, true]);
    expect(moved?.deviations).toEqual([0.01, 0.01, 0.01]);
  });
  it("leave a missing reading out, mark the gap, and see a batch change across it", () => {
    const { hd: _, ...without } = reference;
    const strips = [
      paperStrip(morning(1), 0),
      paperStrip(morning(2), 0, { patches: without }),
      paperStrip(morning(3), 0.01, { stripBatch: "88" }),
    ];
    const series = seriesOfStrips({ strips, batches: [...batches, batch("88")], specification });
    const contrast = series.find((each) => each.parameter === "hdLessLd");
    expect(contrast?.rows).toEqual([0, 2]);
    expect(contrast?.gaps).toEqual([1]);
    expect(contrast?.batchChanges.map((change) => change.at)).toEqual([1]);
    expect(series.find((each) => each.parameter === "ld")?.gaps).toEqual([]);
  });
  it("do not call a missing first reading a gap", () => {
    const { hd: _, ...without } = reference;
    const strips = [paperStrip(morning(1), 0, { patches: without }), paperStrip(morning(2), 0)];
    const series = seriesOfStrips({ strips, batches, specification });
    expect(series.find((each) => each.parameter === "hdLessLd")?.gaps).toEqual([]);
  });
  it("refuse a batch nobody registered, naming the row and the nearest batch", () => {
    const strips = [paperStrip(morning(1), 0), paperStrip(morning(2), 0, { stripBatch: "7 7" })];
    expect(() => seriesOfStrips({ strips, batches, specification })).toThrow(
      /strips\[1\]: stripBatch is "7 7"; register the batch.*registered: 77 \(did you mean "77"\?\)/,
    );
    const source = { file: "strips.csv", line: 9 };
    const read = [paperStrip(morning(1), 0, { stripBatch: "x", source })];
    expect(() => seriesOfStrips({ strips: read, batches: [], specification })).toThrow(
      /strips\.csv line 9: stripBatch is "x".*none is registered/,
    );
  });
  it("refuse a density out of range and a time that is not one, naming the place", () => {
    const wild = [paperStrip(morning(1), 0, { patches: { ...reference, ld: grey(12) } })];
    expect(() => seriesOfStrips({ strips: wild, batches, specification })).toThrow(
      /strips\[0\]: ld\.red is 12; write a finite number at least -0\.1 density/,
    );
    for (const takenAt of [
      "14.8.2026 07:10",
      "2026-08-14",
      "2026-13-14T07:10",
      "2026-08-14T24:10",
    ]) {
      const strips = [paperStrip(takenAt, 0)];
      expect(() => seriesOfStrips({ strips, batches, specification })).toThrow(
        /local time without/,
      );
    }
    const at = () => seriesOfStrips({ strips: [], batches, specification, asOf: "today" });
    expect(at).toThrow(/asOf is "today"/);
  });
});
