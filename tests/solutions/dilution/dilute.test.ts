import { describe, expect, it } from "vitest";
import {
  chainedRatio,
  dilute,
  mostFromStock,
  ratioFromStrength,
  ratioStrength,
  redilute,
} from "wetside/solutions";

describe("dilute", () => {
  it("divides the total by the parts", () => {
    const mix = dilute({ ratio: "1+9", totalMl: 500 });
    expect(mix.concentrates).toEqual([{ what: "concentrate", volumeMl: 50 }]);
    expect(mix.waterMl).toBe(450);
    expect(mix.assumptions).toHaveLength(1);
  });
  it("names the parts of a kit, or takes the names given", () => {
    const names = (given: { names?: string[] }) =>
      dilute({ ratio: "1+1+1+7", totalMl: 1000, ...given }).concentrates.map(({ what }) => what);
    expect(names({})).toEqual(["part A", "part B", "part C"]);
    expect(names({ names: ["x", "y", "z"] })).toEqual(["x", "y", "z"]);
    expect(() => names({ names: ["x"] })).toThrow("write 3, one for each concentrate");
  });
  it("pours stock undiluted and assumes nothing", () => {
    expect(dilute({ ratio: "stock", totalMl: 300 })).toMatchObject({
      concentrates: [{ volumeMl: 300 }],
      waterMl: 0,
      assumptions: [],
    });
  });
  it("carries the cautions of what is diluted", () => {
    const acid = dilute({ ratio: "3+8", totalMl: 1100, names: ["glacial acetic acid"] });
    expect(acid.cautions.join()).toContain("acid into water");
    const kit = dilute({ ratio: "1+1+8", totalMl: 1000, names: ["household bleach", "stop bath"] });
    expect(kit.cautions[0]).toContain("chlorine gas");
  });
  it("names itself where a ratio is refused", () => {
    expect(() => dilute({ ratio: "1:9", totalMl: 500 })).toThrow(/^dilute: ratio is "1:9"/);
  });
  it("reads a colon only when told how", () => {
    expect(() => dilute({ ratio: "1:9", totalMl: 1000 })).toThrow("ambiguous");
    expect(dilute({ ratio: "1:9", colon: "total", totalMl: 900 }).waterMl).toBe(800);
  });
  it("refuses a total that is not a positive volume", () => {
    for (const totalMl of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => dilute({ ratio: "1+9", totalMl })).toThrow("totalMl");
    }
  });
});

describe("mostFromStock", () => {
  it("names the bottle that runs out first and what the others keep", () => {
    const most = mostFromStock({ ratio: "1+1+18", availableMl: [120, 80] });
    expect(most).toMatchObject({ totalMl: 1600, limitedBy: "part B" });
    expect(most.left).toEqual([
      { what: "part A", volumeMl: 40 },
      { what: "part B", volumeMl: 0 },
    ]);
  });
  it("weighs the bottles by their parts", () => {
    expect(mostFromStock({ ratio: "2+1+7", availableMl: [100, 80] }).limitedBy).toBe("part A");
  });
  it("pours out all of a stock", () => {
    expect(mostFromStock({ ratio: "stock", availableMl: [700] }).totalMl).toBe(700);
  });
  it("refuses an empty, a missing or a negative bottle", () => {
    expect(() => mostFromStock({ ratio: "1+9", availableMl: [0] })).toThrow("nothing can be made");
    expect(() => mostFromStock({ ratio: "1+1+8", availableMl: [5] })).toThrow("list of 2 volumes");
    expect(() => mostFromStock({ ratio: "1+9", availableMl: [-5] })).toThrow("availableMl[0]");
  });
});

describe("ratioStrength and ratioFromStrength", () => {
  it("undo each other", () => {
    for (const text of ["1+9", "1+1", "1+99", "stock", "1+0.5"]) {
      expect(ratioFromStrength(ratioStrength(text)).text).toBe(text);
    }
  });
  it("give each concentrate of a kit its own", () => {
    expect(ratioStrength("1+2+7", { part: 1 })).toBe(0.2);
    expect(() => ratioStrength("1+9", { part: 1 })).toThrow("at most 0");
  });
  it("refuse a strength outside 0 to 1", () => {
    for (const wrong of [0, -0.1, 1.1, Number.NaN]) {
      expect(() => ratioFromStrength(wrong)).toThrow("strength");
    }
  });
});

describe("chainedRatio", () => {
  it("multiplies the dilutions", () => {
    expect(chainedRatio(["1+3", "1+7"]).text).toBe("1+31");
    expect(chainedRatio(["stock", "1+4"]).text).toBe("1+4");
    expect(chainedRatio(["1+9"]).text).toBe("1+9");
  });
  it("turns dilutions of a stock that is itself 1+3 into dilutions of the syrup", () => {
    // The dilutions in use for one syrup concentrate are from memory; the arithmetic is exact.
    const fromStock = ["1+3", "1+7", "1+4", "1+9", "1+11", "1+19"];
    const fromSyrup = fromStock.map((ratio) => chainedRatio(["1+3", ratio]).text);
    expect(fromSyrup).toEqual(["1+15", "1+31", "1+19", "1+39", "1+47", "1+79"]);
  });
  it("refuses a kit and an empty list", () => {
    expect(() => chainedRatio(["1+1+18", "1+1"])).toThrow("one concentrate");
    expect(() => chainedRatio([])).toThrow("write a list");
  });
});

describe("redilute", () => {
  it("adds water when the wanted solution is weaker", () => {
    expect(redilute({ from: "1+4", to: "1+9", totalMl: 1000 })).toMatchObject({
      fromMl: 500,
      waterMl: 500,
      concentrateMl: 0,
    });
    expect(redilute({ from: "1+4", to: "1+9", fromMl: 300 }).totalMl).toBe(600);
  });
  it("adds concentrate when it is stronger", () => {
    const up = redilute({ from: "1+9", to: "1+4", totalMl: 900 });
    expect(up.fromMl).toBeCloseTo(800, 9);
    expect(up.concentrateMl).toBeCloseTo(100, 9);
    expect(up.waterMl).toBe(0);
  });
  it("adds nothing when it is the same", () => {
    expect(redilute({ from: "1+4", to: "1+4", totalMl: 500 })).toMatchObject({
      fromMl: 500,
      waterMl: 0,
      concentrateMl: 0,
    });
  });
  it("dilutes from stock as dilute does", () => {
    expect(redilute({ from: "stock", to: "1+9", totalMl: 500 }).fromMl).toBe(50);
  });
  it("wants exactly one volume and one concentrate", () => {
    expect(() => redilute({ from: "1+4", to: "1+9" })).toThrow("either totalMl");
    expect(() => redilute({ from: "1+4", to: "1+9", totalMl: 1, fromMl: 1 })).toThrow("either");
    expect(() => redilute({ from: "1+1+8", to: "1+9", totalMl: 1 })).toThrow("one concentrate");
    expect(() => redilute({ from: "1+4", to: "stock", fromMl: 1 })).toThrow("undiluted");
  });
});
