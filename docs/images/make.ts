// Draws the README's control chart from the demo lab's own logs.
// Run: node --import tsx --conditions wetside-source docs/images/make.ts
import { readFileSync, writeFileSync } from "node:fs";
import { colourNegativeProcess, crossoversOfStrips } from "../../lib/control/index.ts";
import { stripChart } from "../../lib/figures/index.ts";
import { vegaLiteSvg } from "../../lib/notebook/vega-svg.ts";
import { parseStripBatchRegister, parseStripLog, requireCleanLog } from "../../lib/records/index.ts";

const read = (name: string) => readFileSync(new URL(`../../data/pellow-street/${name}`, import.meta.url), "utf8");

/** The picture as SVG text. */
export async function controlChartSvg(): Promise<string> {
  const batches = requireCleanLog(parseStripBatchRegister(read("strip-batches.csv"), { file: "strip-batches.csv" }));
  const strips = requireCleanLog(parseStripLog(read("film-strips.csv"), { file: "film-strips.csv", batches }));
  const crossovers = crossoversOfStrips(strips, batches);
  const figure = stripChart({ strips, batches, crossovers, specification: colourNegativeProcess }, {
    title: "Pellow Street Lab, colour-negative line: control strips",
    parameters: ["dMin", "ld", "hdLessLd"],
  });
  return `${await vegaLiteSvg(figure.specification)}\n`;
}

if (process.argv[1] === new URL(import.meta.url).pathname) {
  writeFileSync(new URL("control-chart.svg", import.meta.url), await controlChartSvg());
}
