import { describe, expect, it } from "vitest";
import { InputError } from "wetside";
import {
  parseProductionLog,
  parseRemakesLog,
  parseStripLog,
  parseTemperatureLog,
} from "wetside/records";

const file = "production.csv";
const ROW = "2026-08-14,colour-paper,10x15cm,9";

function advice(header: string, columns?: Readonly<Record<string, string>>) {
  const options = columns === undefined ? { file } : { file, columns };
  const { problems, warnings, rows } = parseProductionLog(`${header}\n${ROW}\n`, options);
  return { told: problems.map((each) => `${each.column}: ${each.advice}`), warnings, rows };
}

describe("the columns of a log", () => {
  it("are found whatever their order, case, blanks and hyphens", () => {
    const text = "Count,FORMAT,pro-cess,Date\n9,10x15cm,colour-paper,2026-08-14\n";
    const { problems } = parseProductionLog(text, { file, columns: { process: "pro-cess" } });
    expect(problems).toEqual([]);
  });

  it("are all named at once when they are missing", () => {
    expect(advice("date,a,b,c").told).toHaveLength(3);
    expect(advice("date,a,b,c").rows).toEqual([]);
  });

  it("get a hint when a header is nearly right", () => {
    expect(advice("date,proces,format,count").told).toEqual([
      'process: rename the column "proces" if that is it, or pass columns: { process: "proces" }',
    ]);
  });

  it("are not to be renamed where their readings are in °F", () => {
    const told = (column: string) =>
      parseTemperatureLog(`read_at,bath,instrument,${column}\n2026-08-14T07:10,a,b,100\n`, {
        file: "temperatures.csv",
      }).problems.map((each) => `${each.column}: ${each.advice}`);
    for (const column of ["temperature_f", "Temperature F"]) {
      expect(told(column)).toEqual([
        `temperature_c: "${column}" seems to be in °F: turn its readings into °C, (°F − 32) / 1.8, and call the column "temperature_c"`,
      ]);
    }
    expect(told("temperature")[0]).toContain('rename the column "temperature" if that is it');
  });

  it("may be called otherwise by the lab, which the caller says", () => {
    const header = "Tag,process,format,Stück";
    const columns = { date: "Tag", count: "Stück" };
    expect(advice(header, columns).rows[0]).toMatchObject({ date: "2026-08-14", count: 9 });
    const { problems } = parseProductionLog(`${header}\n2026-08-14,colour-paper,10x15cm,x\n`, {
      file,
      columns,
    });
    expect(problems[0]?.column).toBe("Stück");
  });

  it("refuse a column name of ours that does not exist, with the nearest", () => {
    expect(() => advice("date,process,format,count", { formt: "x" })).toThrow(InputError);
    expect(() => advice("date,process,format,count", { formt: "x" })).toThrow(
      'did you mean "format"?',
    );
  });

  it("are warned of when nobody uses them, even without a name", () => {
    const text = `date,process,format,count,note,\n${ROW},fine,\n`;
    expect(parseProductionLog(text, { file }).warnings).toEqual([
      'production.csv: columns not used: "note"',
    ]);
    const unnamed = `date,,process,format,count\n2026-08-14,,colour-paper,10x15cm,9\n`;
    expect(parseProductionLog(unnamed, { file }).warnings).toEqual([
      'production.csv: columns not used: "(column 2)"',
    ]);
  });

  it("may not stand twice", () => {
    const text = "date,process,format,count,count\n2026-08-14,colour-paper,10x15cm,9,8\n";
    expect(parseProductionLog(text, { file }).problems[0]).toMatchObject({
      line: 1,
      column: "count",
      problem: "the column stands twice in the header",
    });
  });

  it("count as missing rows, none of them lost from the tally", () => {
    const log = parseProductionLog(`date,process,format\n${ROW}\n${ROW}\n`, { file });
    expect([log.rowsRead, log.rowsRefused, log.rows.length]).toEqual([2, 2, 0]);
  });
});

describe("the patches of a strip log", () => {
  const base = "taken_at,process,strip_batch,operator";
  const start = "2026-08-14T07:10,colour-negative,N-42,MB";
  const strips = "strips.csv";

  it("take any name, and are known by their three columns", () => {
    const text = `${base},dmin_r,dmin_g,dmin_b,retained_silver_r,retained_silver_g,retained_silver_b,grey_1_r,grey_1_g,grey_1_b\n${start},0.2,0.6,0.8,0.3,0.7,2.6,1,1,1\n`;
    const { rows, problems } = parseStripLog(text, { file: strips });
    expect(problems).toEqual([]);
    expect(Object.keys(rows[0]?.patches ?? {})).toEqual(["dMin", "retainedSilver", "grey_1"]);
  });

  it("need all three colours", () => {
    const text = `${base},ld_r,ld_g\n${start},0.4,0.8\n`;
    expect(parseStripLog(text, { file: strips }).problems.map((each) => each.column)).toEqual([
      "ld_b",
    ]);
  });

  it("are asked for when the caller states them", () => {
    const text = `${base},ld_r,ld_g,ld_b\n${start},0.4,0.8,1.1\n`;
    const patches = { "colour-negative": ["ld", "dMax"] };
    expect(
      parseStripLog(text, { file: strips, patches }).problems.map((each) => each.column),
    ).toEqual(["dmax_r", "dmax_g", "dmax_b"]);
  });

  it("that a process lacks are told once, and only if a strip of it is there", () => {
    const paper = "2026-08-14T07:20,colour-paper,P-18,MB,0.8,0.8,0.8";
    const film = (day: number) => `2026-08-${day}T07:10,colour-negative,N-42,MB,0.4,0.8,1.1`;
    const patches = { "colour-negative": ["ld", "dMax"], "colour-paper": ["ld"] };
    const read = (...rows: string[]) =>
      parseStripLog(`${[`${base},ld_r,ld_g,ld_b`, ...rows].join("\n")}\n`, {
        file: strips,
        patches,
      });
    expect(read(paper).problems).toEqual([]);
    const mixed = read(film(12), film(13), paper);
    expect(mixed.problems.map((each) => [each.line, each.column])).toEqual([
      [1, "dmax_r"],
      [1, "dmax_g"],
      [1, "dmax_b"],
    ]);
    expect(mixed.rows.map((strip) => strip.process)).toEqual(["colour-paper"]);
    expect([mixed.rowsRead, mixed.rowsRefused]).toEqual([3, 2]);
  });

  it("may be left empty where the strip's process does not ask for them, but not half empty", () => {
    const header = `${base},ld_r,ld_g,ld_b,dmax_r,dmax_g,dmax_b`;
    const patches = { "colour-negative": ["ld", "dMax"], "colour-paper": ["ld"] };
    const paper = "2026-08-14T07:20,colour-paper,P-18,MB,0.8,0.8,0.8";
    const read = (row: string) => parseStripLog(`${header}\n${row}\n`, { file: strips, patches });
    expect(read(`${paper},,,`).rows[0]?.patches).toEqual({
      ld: { red: 0.8, green: 0.8, blue: 0.8 },
    });
    expect(read(`${paper},2.4,,`).problems.map((each) => each.column)).toEqual([
      "dmax_g",
      "dmax_b",
    ]);
    expect(read(`${start},0.4,0.8,1.1,,,`).problems).toHaveLength(3);
  });

  it("may be left empty where the strip's batch has no reference reading of them", () => {
    const grey = { red: 0.8, green: 0.8, blue: 0.8 };
    const film = { id: "N-42", process: "colour-negative", reference: { ld: grey, dMax: grey } };
    const batches = [film, { id: "P-18", process: "colour-paper", reference: { ld: grey } }];
    const header = `${base},ld_r,ld_g,ld_b,dmax_r,dmax_g,dmax_b`;
    const paper = "2026-08-14T07:20,colour-paper,P-18,MB,0.8,0.8,0.8";
    const read = (row: string, known: Parameters<typeof parseStripLog>[1]["batches"] = batches) =>
      parseStripLog(`${header}\n${row}\n`, { file: strips, batches: known });
    expect(read(`${paper},,,`).rows[0]?.patches).toEqual({ ld: grey });
    expect(read(`${paper},2.4,2.4,2.4`).rows[0]?.patches.dMax?.red).toBe(2.4);
    expect(read(`${paper},2.4,,`).problems).toHaveLength(2);
    expect(read("2026-08-14T07:10,colour-negative,N-42,MB,0.4,0.8,1.1,,,").problems).toHaveLength(
      3,
    );
    const bare = batches.map(({ id, process }) => ({ id, process }));
    expect(read(`${paper},,,`, bare).problems).toHaveLength(3);
  });

  it("are not taken from a header with none: the usual three are asked for", () => {
    const { problems } = parseStripLog(`${base}\n${start}\n`, { file: strips });
    expect(problems.map((each) => each.column)).toEqual(
      ["dmin", "ld", "hd"].flatMap((patch) => [`${patch}_r`, `${patch}_g`, `${patch}_b`]),
    );
  });
});

describe("the reasons of a remakes log", () => {
  it("are those of the header and those the caller asks for", () => {
    const text = "date,prints_made,remade_too_bright\n2026-08-14,100,3\n";
    expect(parseRemakesLog(text, { file }).rows[0]?.remade).toEqual({ tooBright: 3 });
    const { problems } = parseRemakesLog(text, { file, reasons: ["tooBright", "unsharp"] });
    expect(problems.map((each) => each.column)).toEqual(["remade_unsharp"]);
  });

  it("are together no more than the prints", () => {
    const text = "date,prints_made,remade_a,remade_b\n2026-08-14,10,6,5\n2026-08-15,11,6,5\n";
    const log = parseRemakesLog(text, { file });
    expect(log.rows.map((day) => day.date)).toEqual(["2026-08-15"]);
    expect(log.problems[0]).toMatchObject({
      line: 2,
      column: "prints_made",
      value: "10",
      problem: "11 remakes of 10 prints",
    });
  });
});
