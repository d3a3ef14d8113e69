import { readFileSync, writeFileSync } from "node:fs";
import { coverageCell, coverageCells, falseAlarmCells } from "./tuning-labs.ts";
import { coverageTables } from "./tuning-tables.ts";

// How often the intervals of rateChange hold the truth, and how often it speaks of a change where
// there is none, on simulated labs. Writes the tables into docs/tuning.md between its markers.
//
//   npm run tuning-coverage            2,000 labs a cell, 40,000 where nothing changes
//   npm run tuning-coverage -- 200     fewer, without writing

const labs = Number(process.argv[2] ?? 2000);
const started = Date.now();
const cells = [...falseAlarmCells(), ...coverageCells()];
const results = cells.map((cell, i) => {
  const result = coverageCell(cell, cell.error === 0 ? 20 * labs : labs, 1 + i * 1_000_003);
  const share = (count: number) => (count / result.labs).toFixed(3);
  console.log(
    `${i + 1}/${cells.length}  error ${cell.error}  change at ${cell.changeAt.toFixed(2)} of ${cell.turnovers}  noise ${cell.noiseSd}  ${cell.stripsPerTurnover} strips a turnover:  error ${share(result.errorHeld)}  moment ${share(result.momentHeld)}  called changed ${share(result.calledChanged)}  (${((Date.now() - started) / 1000).toFixed(0)} s)`,
  );
  return result;
});
const text = coverageTables(results);
console.log(text);
if (labs >= 1000) {
  const page = new URL("../../docs/tuning.md", import.meta.url);
  const [start, end] = ["<!-- coverage: start -->", "<!-- coverage: end -->"];
  const before = readFileSync(page, "utf8");
  const from = before.indexOf(start);
  const to = before.indexOf(end);
  if (from < 0 || to < from) throw new Error(`docs/tuning.md lacks the markers ${start} ${end}`);
  writeFileSync(page, `${before.slice(0, from + start.length)}\n\n${text}\n\n${before.slice(to)}`);
}
