import { describe, expect, it } from "vitest";
import {
  closestWord,
  InputError,
  requireEntries,
  requireFunction,
  requireNumber,
  requireObject,
  requireOneOf,
} from "../../lib/input/index.ts";

describe("requireNumber", () => {
  it("lets a number in at its inclusive bounds and returns it", () => {
    expect(requireNumber("f", "x", 0, { min: 0, max: 0 })).toBe(0);
    expect(requireNumber("f", "x", -2)).toBe(-2);
  });
  it("turns back the bounds themselves where they are exclusive", () => {
    expect(() => requireNumber("f", "x", 0, { above: 0 })).toThrow(
      "f: x is 0; write a finite number greater than 0",
    );
    expect(() => requireNumber("f", "x", 1, { below: 1 })).toThrow("less than 1");
  });
  it("turns back whatever is not a finite number", () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, "3", null, undefined, [1]]) {
      expect(() => requireNumber("f", "x", value)).toThrow(InputError);
    }
  });
  it("says unit and hint", () => {
    const bounds = { max: 60, unit: "°C", hint: "98 looks like °F" };
    expect(() => requireNumber("f", "temperatureC", 98, bounds)).toThrow(
      "f: temperatureC is 98; write a finite number at most 60 °C (98 looks like °F)",
    );
  });
  it("says what to write for a number that came as text", () => {
    const message = (value: string) => () => requireNumber("f", "x", value, { min: 0, unit: "mL" });
    expect(message("5")).toThrow(
      'x is "5"; write a finite number at least 0 mL (a number, not text: 5)',
    );
    expect(message("20,5")).toThrow("not text: 20.5)");
    expect(message("1,500")).toThrow("with a point for decimals");
    expect(message("600 mL/m2")).toThrow("without its unit");
    expect(message("2026-03-02")).toThrow(/0 mL$/);
    expect(message("much")).toThrow(/0 mL$/);
  });
  it("asks for whole numbers where only those make sense", () => {
    expect(() => requireNumber("f", "n", 1.5, { whole: true })).toThrow("a whole number");
  });
});

describe("requireOneOf", () => {
  it("lists the words and names the closest", () => {
    expect(() => requireOneOf("f", "kind", "fixr", ["developer", "fixer"])).toThrow(
      'f: kind is "fixr"; write one of "developer", "fixer" (did you mean "fixer"?)',
    );
  });
  it("names none when none is near", () => {
    expect(closestWord("zzz", ["developer", "fixer"])).toBeUndefined();
    expect(closestWord("FIXER", ["developer", "fixer"])).toBe("fixer");
    expect(closestWord("x", [])).toBeUndefined();
  });
});

describe("InputError", () => {
  it("keeps argument and value for programs and shortens long ones for people", () => {
    const error = new InputError("f", "list", new Array(200).fill(1), "write less");
    expect(error.argument).toBe("list");
    expect(error.message.length).toBeLessThan(120);
    expect(new InputError("f", "x", undefined, "write it").message).toBe(
      "f: x is missing; write it",
    );
  });
});

describe("the shapes at the door", () => {
  it("lets an object, a list and a function in and returns the same one", () => {
    const object = Object.freeze({ a: 1 });
    const list = Object.freeze([1]);
    const double = (x: number) => 2 * x;
    expect(requireObject("f", "input", object)).toBe(object);
    expect(requireEntries("f", "rows", list)).toBe(list);
    expect(requireFunction("f", "g", double)).toBe(double);
  });
  it("turns back everything else and says what to write", () => {
    for (const value of [undefined, null, 3, "x", Number.NaN, [1]]) {
      expect(() => requireObject("f", "input", value)).toThrow(InputError);
    }
    for (const value of [undefined, null, 3, "x", { length: 1 }]) {
      expect(() => requireEntries("f", "rows", value)).toThrow(InputError);
    }
    expect(() => requireFunction("f", "g", "x * x", "a function of x")).toThrow(
      'f: g is "x * x"; write a function of x',
    );
    expect(() => requireObject("f", "input", undefined)).toThrow(
      "f: input is missing; write an object, { … }",
    );
  });
  it("finds no closest word to what is no word", () => {
    expect(closestWord(4117 as unknown as string, ["4117"])).toBeUndefined();
    expect(closestWord("fixr", [7 as unknown as string, "fixer"])).toBe("fixer");
  });
});
