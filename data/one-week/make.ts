// A small lab's log for trying a notebook on another file: the first eight days of the demo lab's
// paper line, with the batch of strips they came from. Run: node --import tsx data/one-week/make.ts
import { readFileSync, writeFileSync } from "node:fs";

const read = (name: string) =>
  readFileSync(new URL(`../pellow-street/${name}`, import.meta.url), "utf8");

/** The two files by name. */
export function oneWeek(): Readonly<Record<string, string>> {
  const [header = "", ...rows] = read("paper-strips.csv").trimEnd().split("\n");
  const days = [...new Set(rows.map((row) => row.slice(0, 10)))].slice(0, 8);
  const week = rows.filter((row) => days.includes(row.slice(0, 10)));
  const batches = new Set(week.map((row) => row.split(",")[2]));
  const [heading = "", ...register] = read("strip-batches.csv").trimEnd().split("\n");
  const used = register.filter((row) => batches.has(row.split(",")[0]));
  const text = (lines: readonly string[]) => `${lines.join("\n")}\n`;
  return { "strips.csv": text([header, ...week]), "strip-batches.csv": text([heading, ...used]) };
}

if (process.argv[1] === new URL(import.meta.url).pathname) {
  for (const [name, text] of Object.entries(oneWeek())) {
    writeFileSync(new URL(name, import.meta.url), text);
  }
}
