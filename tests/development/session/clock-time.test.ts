import { describe, expect, it } from "vitest";
import { clockAfter, InputError, parseClockTime } from "wetside";

describe("parseClockTime", () => {
  it("reads a time of day with and without seconds and a date", () => {
    expect(parseClockTime("0:00")).toEqual({ date: null, secondsOfDay: 0 });
    expect(parseClockTime(" 23:59:59 ")).toEqual({ date: null, secondsOfDay: 86_399 });
    expect(parseClockTime("2024-02-29T07:05")).toEqual({
      date: "2024-02-29",
      secondsOfDay: 25_500,
    });
    expect(parseClockTime("2024-02-29 07:05")).toEqual({
      date: "2024-02-29",
      secondsOfDay: 25_500,
    });
  });

  it.each([
    ["7:30 pm", 'did you mean "19:30"'],
    ["12 am", 'did you mean "00:00"'],
    ["1930", 'did you mean "19:30"'],
    ["19.30", 'did you mean "19:30"'],
    ["2025-03-14T19:30Z", "leave the time zone out"],
    ["2025-03-14T19:30+01:00", "leave the time zone out"],
    ["24:00", "hours run from 0 to 23"],
    ["19:60", "minutes and seconds from 0 to 59"],
    ["2025-02-29T10:00", "not in the calendar"],
    ["tonight", 'write a local time such as "19:30"'],
    ["", 'write a local time such as "19:30"'],
  ])("refuses %j and says what to write", (text, advice) => {
    expect(() => parseClockTime(text)).toThrow(InputError);
    expect(() => parseClockTime(text)).toThrow(advice);
  });

  it("refuses what is not text", () => {
    expect(() => parseClockTime(1930 as unknown as string)).toThrow(InputError);
  });
});

describe("clockAfter", () => {
  it("counts midnights and keeps the calendar", () => {
    const start = parseClockTime("2024-02-28T23:59:50");
    expect(clockAfter(start, 10)).toEqual({
      clock: "00:00:00",
      dayOffset: 1,
      dateTime: "2024-02-29T00:00:00",
    });
    expect(clockAfter(start, 86_410).dateTime).toBe("2024-03-01T00:00:00");
    expect(clockAfter(start, 0)).toEqual({
      clock: "23:59:50",
      dayOffset: 0,
      dateTime: "2024-02-28T23:59:50",
    });
  });

  it("gives no date when the start had none", () => {
    expect(clockAfter(parseClockTime("23:00"), 7200)).toEqual({
      clock: "01:00:00",
      dayOffset: 1,
      dateTime: null,
    });
  });

  it("refuses negative and broken seconds", () => {
    const start = parseClockTime("10:00");
    for (const elapsed of [-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => clockAfter(start, elapsed)).toThrow(InputError);
    }
  });
});
