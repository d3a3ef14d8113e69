// Draws the README's control chart from the demo lab's own logs.
// Run: node --import tsx --conditions wetside-source docs/images/make.ts
import { readFileSync, writeFileSync } from "node:fs";
import { aimsOfBatch, colourNegativeProcess, crossover, seriesOfStrips, stripPairs, verdictHistory } from "../../lib/control/index.ts";
import { controlChartFigure } from "../../lib/figures/index.ts";
import { vegaLiteSvg } from "../../lib/notebook/vega-svg.ts";
import { parseStripBatchRegister, parseStripLog, requireCleanLog } from "../../lib/records/index.ts";

const read = (name: string) => readFileSync(new URL(`../../data/pellow-street/${name}`, import.meta.url), "utf8");

/** The picture as SVG text. */
export async function controlChartSvg(): Promise<string> {
  const batches = requireCleanLog(parseStripBatchRegister(read("strip-batches.csv"), { file: "strip-batches.csv" }));
  const strips = requireCleanLog(parseStripLog(read("film-strips.csv"), { file: "film-strips.csv", batches }));
  const [first, second] = batches.filter((batch) => batch.process === "colour-negative").map(aimsOfBatch);
  if (first === undefined || second === undefined) throw new Error("two batches of film strips are expected");
  const pairs = stripPairs(strips, { process: "colour-negative", from: first.stripBatch, to: second.stripBatch });
  const crossovers = [crossover(first, pairs, { ownAims: second })];
  const history = { strips, batches, crossovers, specification: colourNegativeProcess };
  const course = verdictHistory(history);
  const held = new Set(course.filter((one) => one.verdict === "hold").map((one) => one.day));
  const figure = controlChartFigure({
    title: "Pellow Street Lab, colour-negative line: control strips",
    series: seriesOfStrips(history).filter((one) => ["dMin", "ld", "hdLessLd"].includes(one.parameter)),
    repeats: course.filter((_, i) => course[i - 1]?.workMayRun === false).map((one) => one.takenAt),
    flagged: [...held].map((day) => ({ time: day, label: "line held" })),
  });
  return `${await vegaLiteSvg(figure.specification)}\n`;
}

if (process.argv[1] === new URL(import.meta.url).pathname) {
  writeFileSync(new URL("control-chart.svg", import.meta.url), await controlChartSvg());
}
