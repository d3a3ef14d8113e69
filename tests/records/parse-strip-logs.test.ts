import { describe, expect, it } from "vitest";
import { parseStripLog, parseStripLogs, problemMessage, requireCleanLog } from "wetside/records";

const header = "taken_at,process,strip_batch,operator,ld_r,ld_g,ld_b";
const row = (time: string, process: string, ld = "0.80") =>
  `2026-08-14T${time},${process},P-7,MB,${ld},0.81,0.79`;
const film = { file: "film.csv", text: [header, row("07:10", "colour-negative")].join("\n") };
const paper = { file: "paper.csv", text: [header, row("07:10", "colour-paper")].join("\n") };

describe("the strip logs of several lines", () => {
  it("are one log, the files in the order given", () => {
    const log = parseStripLogs([film, paper]);
    expect(log.rows.map((one) => one.process)).toEqual(["colour-negative", "colour-paper"]);
    expect([log.file, log.rowsRead, log.rowsRefused]).toEqual(["film.csv and paper.csv", 2, 0]);
    expect(requireCleanLog(log)).toHaveLength(2);
  });
  it("are for one file what parseStripLog gives", () => {
    expect(parseStripLogs([film])).toEqual(parseStripLog(film.text, { file: "film.csv" }));
  });
  it("do not count a file twice that is named twice", () => {
    expect(parseStripLogs([film, film]).rows).toHaveLength(1);
  });
  it("report a strip that stands in two files, which would pass for its own repeat", () => {
    const copy = { file: "copy.csv", text: `${film.text}\n${row("07:25", "colour-negative")}` };
    const log = parseStripLogs([film, copy]);
    expect([log.rows.length, log.rowsRead, log.rowsRefused]).toEqual([2, 3, 1]);
    expect(problemMessage(log)).toBe(
      [
        "film.csv and copy.csv: 1 problem; 1 of 3 rows cannot be used",
        '  copy.csv, line 2, taken_at "2026-08-14T07:10": a strip of colour-negative at this minute is also on line 2 of film.csv; keep each strip in one file only',
      ].join("\n"),
    );
  });
  it("name the file of every wrong cell", () => {
    const bad = { file: "bad.csv", text: [header, row("07:10", "colour-paper", "12")].join("\n") };
    expect(problemMessage(parseStripLogs([film, bad]))).toMatch(
      /\n {2}bad\.csv, line 2, ld_r "12"/,
    );
    expect(problemMessage(parseStripLogs([bad]))).toMatch(/\n {2}line 2, ld_r "12"/);
  });
  it("pass over a file that is not there and say so, and one that has no name in silence", () => {
    const log = parseStripLogs([
      film,
      { file: "paper.csv", text: undefined },
      { file: "", text: undefined },
    ]);
    expect(log.warnings).toEqual(["paper.csv is not there; it was passed over"]);
    expect([log.file, log.rows.length]).toEqual(["film.csv", 1]);
  });
  it("are a problem when none of them is there", () => {
    const log = parseStripLogs([{ file: "film.csv", text: undefined }]);
    expect(() => requireCleanLog(log)).toThrow(/film\.csv.*\n.*no file to read/);
    expect(() => requireCleanLog(parseStripLogs([]))).toThrow(/no file to read/);
  });
  it("hand the options on", () => {
    const batches = [{ id: "P-8", process: "colour-paper" }];
    expect(parseStripLogs([paper], { batches }).problems[0]?.value).toBe("P-7");
  });
});
