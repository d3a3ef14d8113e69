import { describe, expect, it } from "vitest";
import { inspectValue, numberText } from "../../lib/notebook/inspect-value.ts";

describe("a value as text", () => {
  it("shows numbers without digits that say nothing", () => {
    expect(inspectValue(0.1 + 0.2)).toBe("0.3");
    expect(inspectValue(1.1283791670955126)).toBe("1.1283791671");
    expect(inspectValue(-0)).toBe("0");
    expect(inspectValue(12345678901234)).toBe("12345678901234");
    expect(inspectValue(1e-12)).toBe("1e-12");
    expect(numberText(Number.NaN)).toBe("NaN");
    expect(inspectValue(Number.POSITIVE_INFINITY)).toBe("Infinity");
  });
  it("shows a text as it is and a text inside an object in quotes", () => {
    expect(inspectValue("film may go in")).toBe("film may go in");
    expect(inspectValue(["a\nb"])).toBe('["a\\nb"]');
  });
  it("puts short objects on one line and long ones on many", () => {
    expect(inspectValue({ bath: "stop", "pH value": 4.5 })).toBe(
      '{ bath: "stop", "pH value": 4.5 }',
    );
    const long = inspectValue({ a: "x".repeat(50), b: "y".repeat(50) });
    expect(long).toBe(`{\n  a: "${"x".repeat(50)}",\n  b: "${"y".repeat(50)}"\n}`);
  });
  it("packs long lists of numbers into lines of at most 78 characters", () => {
    const lines = inspectValue(Array.from({ length: 60 }, (_, i) => i / 3)).split("\n");
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(78);
    expect(lines.length).toBeLessThan(20);
    expect(lines.join(" ").match(/\d+(\.\d+)?/g)).toHaveLength(60);
  });
  it("says how many items it left out", () => {
    expect(inspectValue(Array.from({ length: 103 }, () => 1))).toContain("… 3 more");
  });
  it("survives circles, depth, maps, sets, dates, errors, functions and typed arrays", () => {
    const circle: { self?: unknown } = {};
    circle.self = circle;
    expect(inspectValue(circle)).toBe("{ self: [circular] }");
    expect(inspectValue({ a: { b: { c: { d: { e: { f: { g: 1 } } } } } } })).toContain("{…}");
    expect(inspectValue(new Map([["a", 1]]))).toBe('Map(1) { "a" → 1 }');
    expect(inspectValue(new Set([1]))).toBe("Set(1) { 1 }");
    expect(inspectValue([new Date(0), new Date(Number.NaN)])).toBe(
      "[1970-01-01T00:00:00.000Z, Invalid Date]",
    );
    expect(inspectValue(new RangeError("no"))).toBe("RangeError: no");
    expect(inspectValue(function bath() {})).toBe("[function bath]");
    expect(inspectValue(Float64Array.of(0.5, 1))).toBe("Float64Array(2) [0.5, 1]");
    expect(inspectValue(Promise.resolve(1))).toContain("write await");
    expect(inspectValue([null, undefined, true, 5n, Symbol("s")])).toBe(
      "[null, undefined, true, 5n, Symbol(s)]",
    );
    expect(inspectValue([])).toBe("[]");
    expect(inspectValue({})).toBe("{}");
  });
});
