import { describe, expect, it } from "vitest";
import { parseRatio } from "wetside/units";

describe("parseRatio", () => {
  it("reads one concentrate and water", () => {
    expect(parseRatio("1+9")).toEqual({
      text: "1+9",
      concentrateParts: [1],
      waterParts: 9,
      totalParts: 10,
    });
  });
  it("reads kits of two and three concentrates", () => {
    expect(parseRatio(" 1 + 1 + 18 ").concentrateParts).toEqual([1, 1]);
    expect(parseRatio("1+2+3+94").concentrateParts).toEqual([1, 2, 3]);
  });
  it("reads parts without water when told so", () => {
    expect(parseRatio("1+1", { water: "none" })).toMatchObject({
      concentrateParts: [1, 1],
      waterParts: 0,
    });
  });
  it("reads stock as undiluted", () => {
    expect(parseRatio("Stock")).toMatchObject({ concentrateParts: [1], waterParts: 0 });
  });
  it("returns a parsed ratio as it is", () => {
    for (const ratio of [parseRatio("2+5"), parseRatio("1+1", { water: "none" })]) {
      expect(parseRatio(ratio)).toEqual(ratio);
    }
  });
  it("refuses a colon and spells both readings", () => {
    expect(() => parseRatio("1:9")).toThrow('"1+9" (1 part concentrate and 9 of water)');
    expect(() => parseRatio("1:9")).toThrow('"1+8" (1 part concentrate in 9 of the whole)');
    expect(() => parseRatio("1:1:18")).toThrow('"1+1+16"');
    expect(() => parseRatio("1:1")).toThrow('"stock" (no water)');
  });
  it("reads a colon when the reading is named", () => {
    expect(parseRatio("1:9", { colon: "water" }).text).toBe("1+9");
    expect(parseRatio("1:9", { colon: "total" }).text).toBe("1+8");
    expect(parseRatio("1:1", { colon: "total" }).text).toBe("stock");
    expect(parseRatio("1:1:2", { colon: "total" }).waterParts).toBe(0);
  });
  it("refuses a named reading that leaves no water", () => {
    expect(() => parseRatio("3:2", { colon: "total" })).toThrow('as "total"');
    expect(() => parseRatio("1:0", { colon: "water" })).toThrow("1:0");
    expect(() => parseRatio("1:9", { colon: "both" as "water" })).toThrow('"total"');
  });
  it.each([
    ["0+9", "greater than 0"],
    ["1+0", '"stock"'],
    ["1+-3", "greater than 0"],
    ["-1+9", "greater than 0"],
    ["1 part + 9 parts", 'without units, "1+9"'],
    ["50 mL + 450 mL", 'without units, "50+450"'],
    ["1+9,5", '"1+9.5"'],
    ["10%", '"1+9"'],
    ["1 in 10", '"1+9"'],
    ["1/9", "ambiguous"],
    ["1 to 9", "ambiguous"],
    ["9", '"1+9" or "stock"'],
    ["neat", 'write "stock"'],
    ["100 %", 'write "stock"'],
    ["1 part to 9", "ambiguous"],
    ["1mL:9mL", '"1+9" (1 part concentrate and 9 of water) or "1+8"'],
    ["1 part in 10", '"1+9"'],
    ["1+9 mL", 'without units, "1+9"'],
    ["1+9 parts water", 'without units, "1+9"'],
    ["1+1e3", "full digits"],
    ["1+9e999", "full digits"],
    ["1+0.0000001", "0.000001"],
    ["Infinity+1", '"1+9"'],
    ["NaN", '"1+9"'],
    ["", '"1+9"'],
    ["1+", '"1+9"'],
    ["+9", '"1+9"'],
  ])("refuses %s and says what to write", (text, advice) => {
    expect(() => parseRatio(text)).toThrow(advice);
  });
  it("refuses parts too large for a number", () => {
    expect(() => parseRatio(`1+${"9".repeat(400)}`)).toThrow("1e12");
    expect(() => parseRatio(`1:${"9".repeat(30)}`, { colon: "water" })).toThrow("1e12");
  });
  it("reads full-width digits and signs, as some keyboards write them", () => {
    expect(parseRatio("１＋９").text).toBe("1+9");
  });
  it("names the function that asked", () => {
    expect(() => parseRatio("1:9", {}, "dilute")).toThrow('dilute: ratio is "1:9"; ambiguous');
  });
  it("refuses what is not text", () => {
    expect(() => parseRatio(9 as unknown as string)).toThrow('"1+9" or "stock"');
    expect(() => parseRatio(null as unknown as string)).toThrow("null");
  });
});
