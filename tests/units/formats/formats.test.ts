import { describe, expect, it } from "vitest";
import {
  formatAreaM2,
  photoFormat,
  photoFormats,
  productionAreaM2,
  rectangleAreaM2,
} from "wetside/units";

describe("photoFormats", () => {
  it("have names of their own, sizes and a source", () => {
    expect(new Set(photoFormats.map(({ id }) => id)).size).toBe(photoFormats.length);
    for (const format of photoFormats) {
      expect(format.widthMm, format.id).toBeGreaterThan(0);
      expect(format.lengthMm, format.id).toBeGreaterThan(0);
      expect(["film", "paper"], format.id).toContain(format.kind);
      expect(["roll", "sheet", "length"], format.id).toContain(format.form);
      expect(format.source, format.id).not.toBe("");
      expect(format.howObtained, format.id).not.toBe("");
      expect(format.tradeIn2 === null, format.id).toBe(format.form !== "roll");
      if (format.form === "length") expect(format.lengthMm, format.id).toBe(1000);
    }
  });
  it("are found by name, and a wrong name gets the closest", () => {
    expect(photoFormat("135-36").widthMm).toBe(35);
    expect(() => photoFormat("135/36")).toThrow('did you mean "135-36"');
    expect(() => photoFormat("4 x 6")).toThrow("4x6in");
    expect(() => photoFormat(undefined as unknown as string)).toThrow("missing");
  });
});

describe("formatAreaM2", () => {
  it("counts a roll by dimensions or as the trade does", () => {
    expect(formatAreaM2("135-36")).toBeCloseTo(0.035 * 1.62, 12);
    expect(formatAreaM2("135-36", { reading: "trade" })).toBe(0.0516128);
    expect(formatAreaM2("120", { reading: "trade" })).toBe(0.0516128);
  });
  it("shows that the trade understates a 36-exposure film by 8 to 11 %", () => {
    const short = 1 - formatAreaM2("135-36", { reading: "trade" }) / formatAreaM2("135-36");
    expect(short).toBeGreaterThan(0.08);
    expect(short).toBeLessThan(0.11);
  });
  it("counts sheets by nominal size either way: four 4x5 in are one 8x10 in", () => {
    const one = formatAreaM2("8x10in", { reading: "trade" });
    expect(one).toBeCloseTo(0.0516128, 12);
    expect(4 * formatAreaM2("4x5in-sheet", { reading: "trade" })).toBeCloseTo(one, 12);
    expect(formatAreaM2("4x6in", { reading: "trade" })).toBe(formatAreaM2("4x6in"));
  });
  it("refuses an unknown reading", () => {
    expect(() => formatAreaM2("120", { reading: "area" as "trade" })).toThrow('"dimensions"');
  });
});

describe("productionAreaM2", () => {
  it("is zero for nothing", () => {
    expect(productionAreaM2([])).toEqual({ areaM2: 0, lines: [] });
    expect(productionAreaM2([{ format: "120", count: 0 }]).areaM2).toBe(0);
  });
  it("sums its lines", () => {
    const made = productionAreaM2([
      { format: "135-36", count: 10 },
      { format: "4x6in", count: 360 },
    ]);
    expect(made.areaM2).toBeCloseTo(0.567 + 360 * 0.01548384, 12);
    expect(made.lines.map(({ count }) => count)).toEqual([10, 360]);
  });
  it("refuses a negative count, an unknown format and what is not a list", () => {
    expect(() => productionAreaM2([{ format: "120", count: -1 }])).toThrow("count of 120");
    expect(() => productionAreaM2([{ format: "121", count: 1 }])).toThrow('did you mean "120"');
    expect(() => productionAreaM2({} as [])).toThrow("write a list");
  });
});

describe("rectangleAreaM2", () => {
  it("refuses a side that is not positive", () => {
    expect(rectangleAreaM2({ widthMm: 1000, lengthMm: 1000 })).toBe(1);
    expect(() => rectangleAreaM2({ widthMm: 0, lengthMm: 1 })).toThrow("widthMm");
    expect(() => rectangleAreaM2({ widthMm: 1, lengthMm: -1 })).toThrow("lengthMm");
  });
});
