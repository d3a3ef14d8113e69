import { describe, expect, it } from "vitest";
import { InputError } from "wetside";
import { parseProductionLog } from "wetside/records";

const HEADER = "date,process,format,count";
const row = (day: number, count: number | string = day) =>
  `2026-08-${String(day).padStart(2, "0")},colour-paper,10x15cm,${count}`;
const file = "production.csv";
const read = (text: string) => parseProductionLog(text, { file });
const counts = (text: string) => read(text).rows.map((each) => each.count);

describe("the structure of a CSV file", () => {
  it("a last line without an end of line is a row like any other", () => {
    expect(counts(`${HEADER}\n${row(1)}\n${row(2)}`)).toEqual([1, 2]);
  });

  it("blank lines before the header, between rows and at the end are passed over", () => {
    const log = read(`\n\n${HEADER}\n\n${row(1)}\n   \n${row(2)}\n\n\n`);
    expect(log.rows.map((each) => each.source?.line)).toEqual([5, 7]);
    expect(log.problems).toEqual([]);
    expect(log.rowsRead).toBe(2);
  });

  it("lines of separators only are passed over and told", () => {
    const log = read(`${HEADER}\n${row(1)}\n,,,\n${row(2)}\n,,,\n`);
    expect(log.rows).toHaveLength(2);
    expect(log.warnings).toEqual(["production.csv: 2 lines hold separators only (3, 5)"]);
    const one = read(`${HEADER}\n${row(1)}\n,,,\n`).warnings;
    expect(one).toEqual(["production.csv: 1 line holds separators only (3)"]);
  });

  it("mixed ends of line are all ends of line", () => {
    expect(counts(`${HEADER}\r\n${row(1)}\n${row(2)}\r${row(3)}`)).toEqual([1, 2, 3]);
  });

  it("quoted cells may hold commas, quotation marks and ends of line", () => {
    const text = `${HEADER},note\n${row(1)},"a, ""b""\nand c"\n"2026-08-02","colour-paper","10x15cm","2",x\n`;
    const log = read(text);
    expect(log.problems).toEqual([]);
    expect(log.rows.map((each) => [each.count, each.source?.line])).toEqual([
      [1, 2],
      [2, 4],
    ]);
  });

  it("a quotation mark that is never closed costs its own line and no other", () => {
    const log = read(`${HEADER}\n${row(1)}\n"${row(2)}\n${row(3)}\n${row(4)}\n`);
    expect(log.rows.map((each) => each.count)).toEqual([1, 3, 4]);
    expect(log.problems).toEqual([
      {
        file,
        line: 3,
        column: "",
        value: `"${row(2)}`,
        problem: "the quotation marks do not pair",
        advice: 'close every cell that opens with ", and write a " inside it twice',
        rowUsed: false,
      },
    ]);
    expect([log.rowsRead, log.rowsRefused]).toEqual([4, 1]);
  });

  it("letters after a closing quotation mark cost that line only", () => {
    const log = read(
      `${HEADER}\n"2026-08-01"x,colour-paper,10x15cm,1\n${row(2)}\n"2026-08-03",colour-paper,10x15cm,3\n`,
    );
    expect(log.rows.map((each) => each.count)).toEqual([2, 3]);
    expect(log.problems.map((each) => each.line)).toEqual([2]);
  });

  it("a word that runs over several lines is refused", () => {
    const log = read(`${HEADER}\n2026-08-01,colour-paper,"10x\n15cm",1\n${row(2)}\n`);
    expect(log.problems[0]).toMatchObject({ line: 2, problem: "the cell runs over several lines" });
    expect(log.problems[0]?.advice).toContain("write it on one line");
    expect(log.rows).toHaveLength(1);
  });

  it("a broken header makes one complaint, and the rows under it count as refused", () => {
    const log = read(`date,"process,format,count\n${row(1)}\n${row(2)}\n`);
    expect(log.problems.map((each) => each.line)).toEqual([1]);
    expect([log.rowsRead, log.rowsRefused, log.rows.length]).toEqual([2, 2, 0]);
  });

  it("a long file of broken quotation marks is read line by line, not over and over", () => {
    // Reading on to the end of the file from each of these lines would take minutes.
    const LINES = 20_000;
    const lines = Array.from({ length: LINES }, (_, i) => `"${row(1 + (i % 28))}`);
    expect(read(`${HEADER}\n${lines.join("\n")}\n`).problems).toHaveLength(LINES);
  });

  it("lines are counted rightly through a long file with blank lines anywhere", () => {
    const DAYS = 12_000;
    const lines: string[] = [HEADER];
    const expected: number[] = [];
    for (let day = 0; day < DAYS; day++) {
      if (day % 3 === 0) lines.push("");
      if (day % 7 === 0) lines.push("", "");
      const date = new Date(Date.UTC(1980, 0, 1 + day)).toISOString().slice(0, 10);
      lines.push(`${date},colour-paper,10x15cm,${day}`);
      expected.push(lines.length);
    }
    for (const end of ["\n", "\r\n"]) {
      const log = read(lines.join(end));
      expect(log.rows.map((each) => each.source?.line)).toEqual(expected);
      expect(log.rows.every((each, i) => each.count === i)).toBe(true);
    }
  });

  it("more cells than the header are refused unless they are blank", () => {
    expect(counts(`${HEADER}\n${row(1)},,\n`)).toEqual([1]);
    const log = read(`${HEADER}\n2026-08-01,colour-paper,10x15cm,1,5\n`);
    expect(log.problems[0]).toMatchObject({
      problem: "the row has 5 cells, the header 4",
      advice:
        "write decimals with a point (0.32, not 0,32) and put a cell that holds a comma in quotation marks",
    });
    const semicolons = read(
      `${HEADER.replaceAll(",", ";")}\n2026-08-01;colour-paper;10x15cm;1;5\n`,
    );
    expect(semicolons.problems[0]?.advice).toBe("take out the cells too many");
  });

  it("blank columns at the end of the header are no columns", () => {
    expect(read(`${HEADER},,\n${row(1)},,\n`)).toMatchObject({ problems: [], warnings: [] });
  });

  it("a first line that states the separator is believed", () => {
    expect(
      counts(`sep=;\n${HEADER.replaceAll(",", ";")}\n${row(1).replaceAll(",", ";")}\n`),
    ).toEqual([1]);
  });

  it("letters that are not UTF-8 are told", () => {
    const log = read(`${HEADER}\n2026-08-01,colour-paper,gro\ufffd,1\n`);
    expect(log.problems[0]).toMatchObject({
      column: "format",
      problem: "letters that are not UTF-8",
      advice: "export the file as CSV, UTF-8",
    });
  });
});

describe("files that are no CSV", () => {
  const problem = (text: string) => read(text).problems[0]?.problem;

  it.each([
    ["", "the file is empty"],
    ["\ufeff", "the file is empty"],
    [" \r\n\t\n", "the file is empty"],
    ["PK\u0003\u0004\u0014\0", "the file is a spreadsheet (or another ZIP archive), not CSV"],
    ["\u00d0\u00cf\u0011\u00e0\u00a1", "the file is an old binary spreadsheet, not CSV"],
    ["\ufffd\ufffd\u0011\u0871\u001a\ufffd", "the file is an old binary spreadsheet, not CSV"],
    ["\ufffd\ufffdd\0a\0t\0e\0", "the file is UTF-16 text, not UTF-8"],
    ["d\0a\0t\0e\0", "the file is UTF-16 text, not UTF-8"],
    ["\0d\0a\0t\0e", "the file is UTF-16 text, not UTF-8"],
    ["%PDF-1.7\n", "the file is a PDF document, not CSV"],
    ["{\\rtf1 date", "the file is a word processor's document, not CSV"],
    ["date,process\0", "the file is binary, not text"],
    ["<!DOCTYPE html><table>", "the file is XML or HTML, not CSV"],
    ['<?xml version="1.0"?>', "the file is XML or HTML, not CSV"],
  ])("%j is told as what it is", (text, expected) => {
    expect(problem(text)).toBe(expected);
  });

  it.each([
    ["a text", "Dear lab,\nhere are the readings.\n", 1, "Dear lab,"],
    ["a header pushed down by a title", `Films,,,\n${HEADER}\n${row(1)}\n`, 1, "Films,,,"],
    ["rows without a header", `\n${row(1)}\n${row(2)}\n`, 2, row(1)],
  ])("%s is told once, with the header to write", (_, text, line, value) => {
    const { problems, rows } = read(text);
    expect(rows).toEqual([]);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ line, column: "", value });
    expect(problems[0]?.problem).toContain("should be the header");
    expect(problems[0]?.advice).toContain("no title above it: date,process,format,count;");
    expect(problems[0]?.advice).toContain('pass columns: { date: "…" }');
  });
});

describe("arguments that cannot be meant", () => {
  it("are refused with an InputError", () => {
    expect(() => parseProductionLog(undefined as never, { file })).toThrow(InputError);
    expect(() => parseProductionLog(HEADER, {} as never)).toThrow("name the file");
    expect(() => parseProductionLog(HEADER, { file: " " })).toThrow(InputError);
    expect(() => parseProductionLog(HEADER, { file, today: "14/08/2026" })).toThrow(
      'write a day: "2026-08-14"',
    );
  });
});
