import { describe, expect, it } from "vitest";
import { parseProductionLog, parseStripLog, parseTemperatureLog } from "wetside/records";

/** Reads one cell as the red density of LD, in a tab-separated file so that commas may occur. */
function density(cell: string, decimalComma = false) {
  const header = "taken_at\tprocess\tstrip_batch\toperator\tld_r\tld_g\tld_b";
  const point = decimalComma ? "0,80" : "0.80";
  const row = `2026-08-14T07:10\tcolour-paper\tP-18\tMB\t${cell}\t${point}\t${point}`;
  return parseStripLog(`${header}\n${row}\n`, { file: "strips.csv", decimalComma });
}

function problemOf(cell: string, decimalComma = false) {
  const { problems, rows, rowsRead, rowsRefused } = density(cell, decimalComma);
  expect({ rows: rows.length, rowsRead, rowsRefused }).toEqual({
    rows: 0,
    rowsRead: 1,
    rowsRefused: 1,
  });
  expect(problems).toHaveLength(1);
  expect(problems[0]).toMatchObject({ file: "strips.csv", line: 2, column: "ld_r", value: cell });
  return `${problems[0]?.problem}; ${problems[0]?.advice}`;
}

const READ: readonly (readonly [string, number])[] = [
  ["0", 0],
  ["4.5", 4.5],
  ["0.32", 0.32],
  [".32", 0.32],
  ["+0.32", 0.32],
  ["  0.32 ", 0.32],
  ["\u00a00.32", 0.32],
  ["-0.0", 0],
  ["0.123456789", 0.123456789],
];

const EMPTY = "the cell is empty; write the density, or leave out the row";
const TEXT = "text where a number belongs; write the density, or leave out the row";
const RANGE = "outside the range of a density; write a number from 0 to 4.5";
const COMMA_ADVICE = "or pass decimalComma: true if the whole file is written so";

const REFUSED: readonly (readonly [string, string])[] = [
  ["", EMPTY],
  ["   ", EMPTY],
  ["n/a", TEXT],
  ["-", TEXT],
  ["?", TEXT],
  ["NaN", TEXT],
  ["Infinity", TEXT],
  ["0x1F", TEXT],
  ["1.2O", "letters among the digits; write 1.20"],
  ["4.51", RANGE],
  ["12", `${RANGE}; is it 1.2 or 0.12 without its point?`],
  ["80", `${RANGE}; is it 0.8 without its point?`],
  ["4500", RANGE],
  ["999999999999999999999", RANGE],
  ["-0.01", "a density is not negative; write a number from 0 to 4.5"],
  ["0,76", `a decimal comma; write 0.76, ${COMMA_ADVICE}`],
  [",76", `a decimal comma; write 0.76, ${COMMA_ADVICE}`],
  ["-,76", `a decimal comma; write -0.76, ${COMMA_ADVICE}`],
  ["0,800", `a decimal comma; write 0.800, ${COMMA_ADVICE}`],
  ["1,234", `a decimal comma; write 1.234, ${COMMA_ADVICE}`],
  ["1,234,567", "a number with its thousands set apart; write 1234567"],
  ["1 234.5", "a number with its thousands set apart; write 1234.5"],
  ["1'234", "a number with its thousands set apart; write 1234"],
  ["1.2.3", "more than one decimal point; write one decimal point"],
  ["1..2", "more than one decimal point; write one decimal point"],
  ["\u22120.02", "a typographic minus; write -0.02"],
  [
    "#DIV/0!",
    "a spreadsheet's error, not a number; mend the formula or widen the column in the spreadsheet and export again",
  ],
  [
    "####",
    "a spreadsheet's error, not a number; mend the formula or widen the column in the spreadsheet and export again",
  ],
  ["7.6E-01", "a number in powers of ten; write 0.76 in full"],
  ["0.76 D", "a number with a unit; write the number alone: 0.76"],
  ["O.76", "letters among the digits; write 0.76"],
  ["0.8l", "a number with a unit; write the number alone: 0.8"],
];

describe("a cell that holds a number", () => {
  for (const [cell, value] of READ) {
    it(`reads ${JSON.stringify(cell)} as ${value}`, () => {
      const { rows, problems } = density(cell);
      expect(problems).toEqual([]);
      expect(rows[0]?.patches.ld?.red).toBeCloseTo(value, 12);
    });
  }

  for (const [cell, message] of REFUSED) {
    it(`refuses ${JSON.stringify(cell)} and says what to write`, () => {
      expect(problemOf(cell)).toBe(message);
    });
  }

  it("reads a decimal comma only where the caller has stated it", () => {
    expect(density("0,76", true).rows[0]?.patches.ld?.red).toBe(0.76);
    expect(problemOf("0.76", true)).toBe(
      "a decimal point in a file said to use decimal commas; write 0,76, or leave out decimalComma: true",
    );
  });

  it("reports every wrong cell of a row, not only the first", () => {
    const text =
      "taken_at,process,strip_batch,operator,ld_r,ld_g,ld_b\n2026-02-30T07:10,colour-papr,,MB,x,5,-1\n";
    const { problems } = parseStripLog(text, { file: "strips.csv" });
    expect(problems.map((each) => each.column)).toEqual([
      "taken_at",
      "process",
      "strip_batch",
      "ld_r",
      "ld_g",
      "ld_b",
    ]);
  });

  it("wants whole numbers where things are counted", () => {
    const row = (count: string) =>
      parseProductionLog(`date,process,format,count\n2026-08-14,colour-paper,10x15cm,${count}\n`, {
        file: "production.csv",
      }).problems[0];
    expect(row("12")).toBeUndefined();
    expect(row("12.5")?.problem).toBe("a count is a whole number");
    expect(row("-3")?.problem).toBe("a count is not negative");
    expect(row("-3")?.advice).toBe("write a number 0 or more");
    expect(row('"1,200"')?.advice).toBe("write 1200, or 1.200 if the comma marks the decimals");
  });
});

describe("a cell that holds a temperature", () => {
  const baths = [
    { id: "film-developer", setTemperatureC: 37.8 },
    { id: "paper-dryer", setTemperatureC: 71 },
  ];
  const problem = (bath: string, cell: string, registered = true) =>
    parseTemperatureLog(
      `read_at,bath,instrument,temperature_c\n2026-08-14T07:05,${bath},controller,${cell}\n`,
      { file: "temperatures.csv", ...(registered ? { baths } : {}) },
    ).problems[0];

  it("tells a reading in Fahrenheit by its size and gives it in Celsius", () => {
    expect(problem("film-developer", "98")).toMatchObject({
      problem: "outside the range of a temperature in °C",
      advice: "write a number from 17.8 to 57.8; 98 °F is 36.7 °C",
    });
    expect(problem("film-developer", "100", false)?.advice).toBe(
      "write a number from 0 to 60; 100 °F is 37.8 °C",
    );
  });

  it("converts a reading that says it is in Fahrenheit", () => {
    expect(problem("film-developer", "100 °F")).toMatchObject({
      problem: "a temperature in Fahrenheit",
      advice: "write degrees Celsius: 37.8",
    });
    expect(problem("film-developer", "37.8 °C")?.advice).toBe("write the number alone: 37.8");
  });

  it("lets a dryer be hot once it is registered, and no bath otherwise", () => {
    expect(problem("paper-dryer", "71.2")).toBeUndefined();
    expect(problem("paper-dryer", "160")?.advice).toBe(
      "write a number from 51 to 91; 160 °F is 71.1 °C",
    );
    expect(problem("paper-dryer", "71.2", false)?.problem).toBe(
      "outside the range of a temperature in °C",
    );
  });

  it("says which bath nobody registered and which is near", () => {
    expect(problem("film-develper", "37.8")).toMatchObject({
      column: "bath",
      problem: "a bath nobody registered",
      advice: "write film-developer, or add it to the list of baths",
    });
  });
});

describe("a comma before three digits", () => {
  it("is thousands set apart or a decimal comma where both would be in range", () => {
    const text = 'date,process,format,count\n2026-08-14,colour-paper,10x15cm,"1,234"';
    const [problem] = parseProductionLog(text, { file: "production.csv" }).problems;
    expect(`${problem?.problem}; ${problem?.advice}`).toBe(
      "a number with its thousands set apart; write 1234, or 1.234 if the comma marks the decimals",
    );
  });
});
