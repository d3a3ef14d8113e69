import { describe, expect, it } from "vitest";
import { type DevelopingTank, developingTank, InputError, packBatches } from "wetside";

const two = developingTank("plastic, 2 reels");
const three = developingTank("plastic, 3 reels");
const spiral = (tank: DevelopingTank, format: string) => {
  const found = tank.spirals.find((each) => each.formats.includes(format));
  if (found === undefined) throw new Error(`no spiral for ${format}`);
  return found;
};
const kind = (tank: DevelopingTank, format: string, films: number, leastMl = 0) => ({
  spiral: spiral(tank, format),
  films,
  leastMl,
});

describe("packBatches", () => {
  it("needs no batch for no film", () => {
    expect(packBatches([kind(two, "135-36", 0)], two).batches).toEqual([]);
    expect(packBatches([], two).batches).toEqual([]);
  });

  it("fills tanks first and leaves the rest for the last", () => {
    const { batches, proven } = packBatches([kind(two, "135-36", 5)], two);
    expect(batches.map((each) => each.films)).toEqual([[2], [2], [1]]);
    expect(batches.map((each) => each.volumeMl)).toEqual([580, 580, 290]);
    expect(proven).toBe(true);
  });

  it("mixes formats only where that saves a batch", () => {
    const apart = packBatches([kind(three, "135-36", 3), kind(three, "120", 2)], three);
    expect(apart.batches.map((each) => each.films)).toContainEqual([3, 0]);
    expect(apart.batches.length).toBe(2);
    const together = packBatches([kind(three, "135-36", 1), kind(three, "120", 1)], three);
    expect(together.batches.map((each) => each.films)).toEqual([[1, 1]]);
    expect(together.batches[0]?.volumeMl).toBe(290 + 480);
  });

  it("takes fewer films where each must have more solution than covers it", () => {
    const { batches } = packBatches([kind(two, "135-36", 3, 400)], two);
    expect(batches.map((each) => each.films)).toEqual([[1], [1], [1]]);
    expect(batches[0]?.volumeMl).toBe(400);
  });

  it("needs as few batches as trying every placement finds", () => {
    const tank: DevelopingTank = {
      ...two,
      id: "own",
      columnHeightMm: 10,
      fullMl: 1000,
      spirals: [6, 5, 4, 3].map((heightMm) => ({
        name: `${heightMm}`,
        formats: [],
        heightMm,
        coverMl: 1,
        filmsPerSpiral: 1,
      })),
    };
    for (const counts of [
      [1, 2, 1, 1],
      [2, 0, 2, 3],
      [1, 1, 3, 2],
      [3, 3, 0, 1],
    ]) {
      const kinds = tank.spirals.map((each, i) => ({
        spiral: each,
        leastMl: 0,
        films: counts[i] ?? 0,
      }));
      const heights = tank.spirals.flatMap((each, i) =>
        new Array<number>(counts[i] ?? 0).fill(each.heightMm),
      );
      expect(packBatches(kinds, tank).batches.length).toBe(fewestBins(heights, 10));
    }
  });

  it("puts several sheets on one holder", () => {
    const sheets = developingTank("sheet tank, 6 sheets 4x5");
    const { batches } = packBatches([kind(sheets, "4x5in-sheet", 8)], sheets);
    expect(batches.map((each) => each.films)).toEqual([[6], [2]]);
  });

  it("still packs a great many films of several kinds, and says when that is not proven", () => {
    const tank = developingTank("plastic, 5 reels");
    const kinds = [0, 1, 2, 3, 4, 5].map((i) => kind(tank, "135-36", 40, i));
    const { batches, proven } = packBatches(kinds, tank);
    expect(proven).toBe(false);
    expect(batches.reduce((sum, each) => sum + each.films.reduce((a, b) => a + b, 0), 0)).toBe(240);
    expect(batches.length).toBe(48);
  });

  it("refuses a tank smaller than one film, and says by how much", () => {
    const one = developingTank("plastic, 1 reel");
    expect(() => packBatches([{ spiral: spiral(two, "120"), films: 1, leastMl: 0 }], one)).toThrow(
      "write a bigger tank: one 120 spiral is 68 mm high and takes 500 mL",
    );
    expect(() => packBatches([kind(two, "135-36", 1, 700)], two)).toThrow("stronger dilution");
    expect(() => packBatches([kind(two, "135-36", -1)], two)).toThrow(InputError);
    expect(() => packBatches([kind(two, "135-36", 1.5)], two)).toThrow(InputError);
  });
});

/** Fewest bins by trying every placement, the item order kept. */
function fewestBins(items: readonly number[], size: number): number {
  let best = items.length;
  const place = (i: number, bins: readonly number[]) => {
    if (bins.length >= best) return;
    if (i === items.length) {
      best = bins.length;
      return;
    }
    const item = items[i] ?? 0;
    bins.forEach((used, j) => {
      if (used + item <= size)
        place(
          i + 1,
          bins.map((b, k) => (k === j ? b + item : b)),
        );
    });
    place(i + 1, [...bins, item]);
  };
  place(0, []);
  return best;
}
