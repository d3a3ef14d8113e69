import { describe, expect, it } from "vitest";
import { parseNumber } from "wetside/units";

describe("parseNumber", () => {
  it.each([
    ["12", 12],
    [" -0.5 ", -0.5],
    ["+.25", 0.25],
    ["−0.02", -0.02],
    ["1e-3", 0.001],
    ["5.", 5],
  ])("reads %s", (text, value) => {
    expect(parseNumber(text)).toBe(value);
  });
  it.each([
    ["1,5", "write 1.5, with a decimal point"],
    ["1,234", "write 1234 or 1.234"],
    ["12 500", "write 12500"],
    ["1,234,567.5", "write 1234567.5"],
    ["1/2", "write 0.5"],
    ["12 mL", "write the number alone, 12"],
    ["twelve", "write digits"],
    ["", "write digits"],
    ["NaN", "write digits"],
    ["Infinity", "write digits"],
    ["1e999", "below 1.8e308"],
    ["1/0", "write digits"],
    ["--1", "write digits"],
  ])("refuses %s and says what to write", (text, advice) => {
    expect(() => parseNumber(text)).toThrow(advice);
  });
  it("refuses what is not text", () => {
    expect(() => parseNumber(5 as unknown as string)).toThrow("as text");
  });
});
