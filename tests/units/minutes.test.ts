import { describe, expect, it } from "vitest";
import { formatMinutes, parseMinutes } from "wetside/units";

describe("parseMinutes", () => {
  it.each([
    ["9:30", 9.5],
    ["0:05", 5 / 60],
    ["75:00", 75],
    ["1:05:00", 65],
    ["9 min 30 s", 9.5],
    ["9min30s", 9.5],
    ["9' 30\"", 9.5],
    ["9′30″", 9.5],
    ["9 m 30 s", 9.5],
    ["570 s", 9.5],
    ["9.5 min", 9.5],
    ["1 h 5 min", 65],
    ["2 hours", 120],
    ["9", 9],
    [" 9:30 ", 9.5],
    [9.5, 9.5],
    [0, 0],
  ])("reads %s", (time, minutes) => {
    expect(parseMinutes(time)).toBeCloseTo(minutes, 12);
  });
  it("refuses a time with a point in text, which may mean two times, and spells both", () => {
    expect(() => parseMinutes("9.30")).toThrow('"9:30" (minutes and seconds)');
    expect(() => parseMinutes("9.30")).toThrow('"9.30 min" (9:18)');
    expect(() => parseMinutes("9.5")).toThrow('"9:50"');
    expect(() => parseMinutes("9,5")).toThrow('"9.5 min" (9:30)');
  });
  it("offers only the decimal reading where seconds cannot be meant", () => {
    expect(() => parseMinutes("9.75")).toThrow('write "9.75 min" (9:45)');
  });
  it.each([
    ["9:75", "less than 60"],
    ["1:70:00", "less than 60"],
    ["9:3", '"9:03" or "9:30"'],
    ["-3", "at least 0"],
    ["9".repeat(400), "at most"],
    [`${"9".repeat(400)}:00`, "at most"],
    ["soon", '"9:30"'],
    ["", '"9:30"'],
  ])("refuses %s and says what to write", (time, advice) => {
    expect(() => parseMinutes(time)).toThrow(advice);
  });
  it("refuses numbers that are no time", () => {
    expect(() => parseMinutes(-1)).toThrow("at least 0");
    expect(() => parseMinutes(Number.NaN)).toThrow("NaN");
    expect(() => parseMinutes(null as unknown as string)).toThrow("null");
  });
});

describe("formatMinutes", () => {
  it("rounds to the second and carries", () => {
    expect(formatMinutes(9.9999)).toBe("10:00");
    expect(formatMinutes(59.9999)).toBe("1:00:00");
    expect(formatMinutes(0)).toBe("0:00");
    expect(formatMinutes(0.008)).toBe("0:00");
    expect(formatMinutes(0.009)).toBe("0:01");
  });
  it("refuses a negative time", () => {
    expect(() => formatMinutes(-0.1)).toThrow("at least 0");
  });
});
