import { describe, expect, it } from "vitest";
import {
  cautionsFor,
  everySheetCautions,
  hazardClasses,
  incompatibilities,
  mustNotMeet,
} from "wetside/solutions";

const text = (...names: string[]) => cautionsFor(names).join("\n");

describe("the caution data", () => {
  it("pair only classes that exist, and every class serves something", () => {
    const ids = hazardClasses.map(({ id }) => id);
    const paired = incompatibilities.flatMap(({ first, second }) => [first, second]);
    expect(new Set(ids).size).toBe(ids.length);
    expect(paired.filter((id) => !ids.includes(id))).toEqual([]);
    for (const { id, words, names = [], cautions } of hazardClasses) {
      expect(words.length + names.length, id).toBeGreaterThan(0);
      expect(cautions.length > 0 || paired.includes(id), id).toBe(true);
      for (const word of [...words, ...names]) expect(word, id).toBe(word.toLowerCase());
    }
  });
});

describe("cautionsFor", () => {
  it("says for every mix: data sheet, goggles, local codes", () => {
    expect(cautionsFor(["water"])).toEqual(everySheetCautions);
    expect(text("water")).toMatch(/safety data sheet[\s\S]*goggles[\s\S]*local codes/);
  });
  it("says acid into water for every acid, and what the strong ones do otherwise", () => {
    expect(text("sulfuric acid 98 %")).toContain("throw acid out");
    expect(text("acetic-acid-glacial", "glacial acetic acid")).toContain("throw acid out");
    expect(text("acetic acid 28 %")).toContain("acid into water");
    expect(text("acetic acid 28 %")).not.toContain("throw acid out");
  });
  it("keeps hydroxide out of aluminium and zinc, and says what hydroxylamine does", () => {
    expect(text("caustic soda")).toContain("hydrogen free");
    expect(text("hydroxylamine sulfate")).toContain("cancer");
  });
  it("says each sentence once", () => {
    const all = cautionsFor(["sodium hydroxide", "potassium hydroxide", "sodium-hydroxide"]);
    expect(new Set(all).size).toBe(all.length);
  });
  it("knows names as ids are written", () => {
    expect(text("sodium-hydroxide")).toContain("cold water");
    expect(text("potassium-dichromate")).toContain("cancer");
  });
});

describe("mustNotMeet", () => {
  it.each([
    [["household bleach", "acetic acid 28 %"], "chlorine gas"],
    [["ammonium thiosulfate fixer", "laundry bleach"], "chloramines"],
    [["sodium thiosulfate", "sulfuric acid"], "sulfur dioxide"],
    [["potassium ferricyanide", "hydrochloric acid"], "hydrogen cyanide"],
    [["sodium sulfide toner", "stop bath"], "hydrogen sulfide"],
    [["ammonium thiosulfate", "sodium hydroxide"], "ammonia"],
    [["potassium permanganate", "hydrochloric acid"], "chlorine"],
    [["silver nitrate", "ammonia solution"], "explosive"],
    [["sodium hydroxide", "sulfuric acid"], "violent heat"],
    [["nitric acid", "isopropyl alcohol"], "explosion"],
    [["bleach", "acid"], "chlorine gas"],
    [["bleach", "ammonium thiosulfate"], "chloramines"],
    [["sodium metabisulfite", "citric acid"], "sulfur dioxide"],
    [["potassium disulphite", "stop bath"], "sulfur dioxide"],
    [["potassium dichromate", "sulphuric acid"], "chromic acid"],
    [["hot acid", "potassium ferricyanide"], "hydrogen cyanide"],
    [["acid", "hypo"], "sulfur dioxide"],
    [["household bleach", "acetone"], "chloroform"],
    [["Javel water", "hydrogen peroxide"], "bursts"],
    [["phosphoric acid", "sodium thiosulfate"], "sulfur dioxide"],
    [["rapid fixer", "household bleach"], "chloramines"],
    [["selenium toner", "household bleach"], "chloramines"],
    [["sepia toner", "stop bath"], "hydrogen sulfide"],
    [["potassium permanganate", "glycerol"], "flame"],
    [["hydrogen peroxide", "acetone"], "explosive"],
    [["hydrogen peroxide", "acetic acid 28 %"], "peracids"],
    [["hydroxylamine sulfate", "ammonium persulfate"], "explosion"],
    [["gold chloride", "ammonia solution"], "fulminating"],
  ])("warns of %j", (names, danger) => {
    const found = mustNotMeet(names).map(({ caution }) => caution);
    expect(found.join("\n")).toContain(danger);
    expect(mustNotMeet([...names].reverse()).map(({ caution }) => caution)).toEqual(found);
    expect(cautionsFor(names)[0]).toBe(found[0]);
  });
  it("does not take ferricyanide for cyanide", () => {
    const found = mustNotMeet(["potassium ferricyanide", "acetic acid 28 %"]);
    expect(found.map(({ first }) => first)).not.toContain("cyanide");
  });
  it("does not take every name with acid or bleach in it for a hazard", () => {
    expect(mustNotMeet(["ascorbic acid", "sodium sulfite"])).toEqual([]);
    expect(mustNotMeet(["ferric EDTA bleach", "stop bath"])).toEqual([]);
  });
  it("finds nothing in one bottle, or in water", () => {
    expect(mustNotMeet(["sodium thiosulfate"])).toEqual([]);
    expect(mustNotMeet(["water", "sodium thiosulfate"])).toEqual([]);
    expect(mustNotMeet([])).toEqual([]);
  });
  it("refuses what is not a list of names", () => {
    expect(() => mustNotMeet("fixer" as unknown as string[])).toThrow("list of names");
    expect(() => cautionsFor([3 as unknown as string])).toThrow("list of names");
  });
});
