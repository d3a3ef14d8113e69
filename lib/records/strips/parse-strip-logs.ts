import type { Strip } from "../../control/strip.ts";
import { requireEntries } from "../../input/index.ts";
import type { LogProblem, ParsedLog } from "../reading/log-problem.ts";
import { parseStripLog, type StripLogOptions } from "./strip-log.ts";

/** A file of strips; without a text it is not there. */
export interface StripLogFile {
  readonly file: string;
  readonly text: string | undefined;
}

/**
 * Reads the control-strip logs of a lab that keeps one file a line, as one log.
 *
 * A file without a text is passed over, with a warning; a file that is named twice is read once. Two
 * strips of one process at one minute in two files are reported and the second is left out: a strip
 * counted twice would pass for its own repeat.
 *
 * @param files the files in the order in which they are to be read
 * @param options as for `parseStripLog`, without `file`
 * @returns the good strips of all files, everything wrong by file, line and column, and warnings
 * @throws InputError as `parseStripLog`
 *
 * @example
 * const text = "taken_at,process,strip_batch,operator,ld_r,ld_g,ld_b\n2026-08-14T07:10,colour-paper,P-7,MB,0.80,0.81,0.79";
 * const log = parseStripLogs([{ file: "paper.csv", text }, { file: "film.csv", text: undefined }]);
 * log.warnings // => ["film.csv is not there; it was passed over"]
 */
export function parseStripLogs(
  files: readonly StripLogFile[],
  options: Omit<StripLogOptions, "file"> = {},
): ParsedLog<Strip> {
  requireEntries("parseStripLogs", "files", files);
  const once = files.filter((one, i) => files.findIndex((each) => each.file === one.file) === i);
  const there = once.flatMap(({ file, text }) => (text === undefined ? [] : [{ file, text }]));
  const logs = there.map(({ file, text }) => parseStripLog(text, { ...options, file }));
  const { rows, problems } = withoutTwins(logs.flatMap((log) => log.rows));
  const total = (count: (log: ParsedLog<Strip>) => number) =>
    logs.reduce((sum, log) => sum + count(log), 0);
  return {
    file: (there.length > 0 ? there : once).map((one) => one.file).join(" and "),
    rows,
    problems: [...logs.flatMap((log) => log.problems), ...noneThere(once, there), ...problems],
    warnings: [
      ...logs.flatMap((log) => log.warnings),
      ...once
        .filter((one) => one.text === undefined && one.file !== "")
        .map(({ file }) => `${file} is not there; it was passed over`),
    ],
    rowsRead: total((log) => log.rowsRead),
    rowsRefused: total((log) => log.rowsRefused) + problems.length,
  };
}

function noneThere(files: readonly StripLogFile[], there: readonly unknown[]): LogProblem[] {
  if (there.length > 0) return [];
  const file = files[0]?.file ?? "";
  const advice = "name at least one strip log that is there";
  return [
    { file, line: 1, column: "", value: "", problem: "no file to read", advice, rowUsed: false },
  ];
}

function withoutTwins(strips: readonly Strip[]) {
  const first = new Map<string, Strip>();
  const problems: LogProblem[] = [];
  const rows = strips.filter((strip) => {
    const key = `${strip.process}\n${strip.takenAt}`;
    const twin = first.get(key);
    if (twin === undefined) {
      first.set(key, strip);
      return true;
    }
    problems.push({
      file: strip.source?.file ?? "",
      line: strip.source?.line ?? 0,
      column: "taken_at",
      value: strip.takenAt,
      problem: `a strip of ${strip.process} at this minute is also on line ${twin.source?.line ?? 0} of ${twin.source?.file ?? ""}`,
      advice: "keep each strip in one file only",
      rowUsed: false,
    });
    return false;
  });
  return { rows, problems };
}
