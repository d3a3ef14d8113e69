import { describe, expect, it } from "vitest";
import { parseProductionLog, parseStripLog } from "wetside/records";

const today = "2026-08-14";

function moment(cell: string) {
  const text = `taken_at,process,strip_batch,operator,ld_r,ld_g,ld_b\n${cell},colour-paper,P-18,MB,0.8,0.8,0.8\n`;
  return parseStripLog(text, { file: "strips.csv", today });
}

function day(cell: string) {
  const text = `date,process,format,count\n${cell},colour-paper,10x15cm,9\n`;
  return parseProductionLog(text, { file: "production.csv", today });
}

const MOMENTS: readonly (readonly [string, string])[] = [
  ["", "the cell is empty; write a time: 2026-08-14T07:10"],
  ["yesterday", "not a time; write 2026-08-14T07:10"],
  ["2026-02-30T07:10", "February 2026 has 28 days; write a day that exists"],
  ["2100-02-29T07:10", "February 2100 has 28 days; write a day that exists"],
  ["2026-04-31T07:10", "April 2026 has 30 days; write a day that exists"],
  ["2026-08-00T07:10", "August 2026 has 31 days; write a day that exists"],
  ["2026-13-01T07:10", "there is no month 13; write year-month-day"],
  ["2026-00-10T07:10", "there is no month 00; write year-month-day"],
  ["0026-08-14T07:10", "a year outside 1950 to 2100; write the right year"],
  ["2026-08-15T07:10", "a day after 2026-08-14; write the day on which it was read"],
  ["2026-08-14T24:00", "no such time of day; write hours 00 to 23 and minutes 00 to 59"],
  ["2026-08-14T07:60", "no such time of day; write hours 00 to 23 and minutes 00 to 59"],
  ["2026-08-14T7:10", "an hour of one digit; write two digits: 07:10"],
  ["2026-08-14", "the time of day is missing; write it too: 2026-08-14T07:10"],
  ["2026-08-14T07:10:30", "a time with seconds; write it to the minute"],
  [
    "2026-08-14T07:10Z",
    "a time with a zone; write local lab time without a zone: 2026-08-14T07:10",
  ],
  [
    "2026-08-14T07:10+01:00",
    "a time with a zone; write local lab time without a zone: 2026-08-14T07:10",
  ],
  ["2026-08-14 7:10 pm", "a twelve-hour time; write 24 hours: 19:10 for 7:10 pm"],
  ["14/08/2026 07:10", "a day not written as year-month-day; write 2026-08-14T07:10"],
  ["14/08/2026 07:10:00", "a day not written as year-month-day; write 2026-08-14T07:10"],
  ["2026-08-14T07:10:30.5", "a time with seconds; write it to the minute"],
  ["8/14/2026 7:10:00", "a day not written as year-month-day; write 2026-08-14T07:10"],
  [
    "5/6/2026 7:10",
    "a day not written as year-month-day; write 2026-06-05 if the day stands first, 2026-05-06 if the month does, with the time after a T: 2026-08-14T07:10",
  ],
  [
    "8/14/2026 7:10 PM",
    "a twelve-hour time; write 24 hours: 19:10 for 7:10 pm, and the day as year-month-day: 2026-08-14T19:10",
  ],
  [
    "46248.29861",
    "a spreadsheet's day number; format the column as text or as year-month-day in the spreadsheet, export again, with the time after a T: 2026-08-14T07:10",
  ],
];

const DAYS: readonly (readonly [string, string])[] = [
  ["", "the cell is empty; write a day: 2026-08-14"],
  ["14/08/2026", "a day not written as year-month-day; write 2026-08-14"],
  ["08/14/2026", "a day not written as year-month-day; write 2026-08-14"],
  [
    "3.4.2026",
    "a day not written as year-month-day; write 2026-04-03 if the day stands first, 2026-03-04 if the month does",
  ],
  ["5/5/2026", "a day not written as year-month-day; write 2026-05-05"],
  ["2026/8/4", "a day not written as year-month-day with hyphens and two digits; write 2026-08-04"],
  ["2026-8-4", "a day not written as year-month-day with hyphens and two digits; write 2026-08-04"],
  ["2026-08-14T07:10", "a time where a day belongs; write 2026-08-14"],
  ["14 Aug 2026", "not a day; write year-month-day: 2026-08-14"],
  [
    "46248",
    "a spreadsheet's day number; format the column as text or as year-month-day in the spreadsheet, export again",
  ],
  ["2027-01-01", "a day after 2026-08-14; write the day on which it was read"],
];

describe("a cell that holds a time", () => {
  for (const cell of [
    "2026-08-14T07:10",
    "2026-08-14 07:10",
    "2026-08-14T07:10:00",
    " 2026-08-14T07:10 ",
  ]) {
    it(`reads ${JSON.stringify(cell)}`, () => {
      expect(moment(cell).problems).toEqual([]);
      expect(moment(cell).rows[0]?.takenAt).toBe("2026-08-14T07:10");
    });
  }

  it("reads the 29th of February in a leap year", () => {
    expect(moment("2024-02-29T23:59").rows[0]?.takenAt).toBe("2024-02-29T23:59");
  });

  for (const [cell, message] of MOMENTS) {
    it(`refuses ${JSON.stringify(cell)} and says what to write`, () => {
      const { problems, rows } = moment(cell);
      expect(rows).toEqual([]);
      expect(problems.map((each) => `${each.problem}; ${each.advice}`)).toEqual([message]);
      expect(problems[0]).toMatchObject({ line: 2, column: "taken_at", value: cell });
    });
  }
});

describe("a cell that holds a day", () => {
  for (const [cell, message] of DAYS) {
    it(`refuses ${JSON.stringify(cell)} and says what to write`, () => {
      const { problems, rows } = day(cell);
      expect(rows).toEqual([]);
      expect(problems.map((each) => `${each.problem}; ${each.advice}`)).toEqual([message]);
      expect(problems[0]).toMatchObject({ line: 2, column: "date", value: cell });
    });
  }
});

describe("date and time in columns of their own", () => {
  const read = (date: string, time: string) =>
    parseStripLog(
      `date,time,process,strip_batch,operator,ld_r,ld_g,ld_b\n${date},${time},colour-paper,P-18,MB,0.8,0.8,0.8\n`,
      { file: "strips.csv", today },
    );

  it("are read as one time", () => {
    expect(read("2026-08-14", "07:10").rows[0]?.takenAt).toBe("2026-08-14T07:10");
    expect(read("2026-08-14", "07:10:00").rows[0]?.takenAt).toBe("2026-08-14T07:10");
  });

  it("are reported each by its own column", () => {
    const { problems } = read("14/08/2026", "7:10");
    expect(problems.map(({ column, value }) => [column, value])).toEqual([
      ["date", "14/08/2026"],
      ["time", "7:10"],
    ]);
    expect(read("2026-08-14", "25:00").problems[0]?.problem).toBe("no such time of day");
    expect(read("2026-08-14", "").problems[0]?.problem).toBe("the cell is empty");
  });
});
