import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import {
  colourPaperProcess,
  controlCharts,
  cusumRunLength,
  designEwma,
  driftRunLength,
  ewmaRunLength,
  individualsChart,
  individualsMovingRangeRunLength,
  nelsonRules,
  nelsonZoneRules,
  parseStripLog,
  risingRunLength,
  seriesOfStrips,
  statisticalLimits,
  westernElectricZoneRules,
  zoneRulesRunLength,
} from "wetside";
import { seededRandom } from "wetside/numerics";

// Speed of what a lab does daily, and how it grows. Run: npm run bench

const root = fileURLToPath(new URL("../../", import.meta.url));

function timed<T>(work: () => T): { readonly seconds: number; readonly result: T } {
  const begin = performance.now();
  const result = work();
  return { seconds: (performance.now() - begin) / 1000, result };
}

function perSecond(count: number, seconds: number): string {
  return `${Math.round(count / seconds).toLocaleString("en")} a second (${seconds.toFixed(2)} s)`;
}

const columns = ["dmin", "ld", "hd", "dmax"].flatMap((patch) =>
  ["r", "g", "b"].map((c) => `${patch}_${c}`),
);
const level = [0.1, 0.1, 0.1, 0.8, 0.8, 0.8, 1.6, 1.6, 1.6, 2.4, 2.4, 2.4];
const all = (density: number) => ({ red: density, green: density, blue: density });
const batches = [
  {
    id: "P-17",
    process: "colour-paper",
    reference: { dMin: all(0.1), ld: all(0.8), hd: all(1.6), dMax: all(2.4) },
    correction: {},
  },
];

/** A strip every ten minutes from 2000 on. */
function stripLog(strips: number): string {
  const { normal } = seededRandom(1);
  const lines = [`taken_at,process,strip_batch,operator,${columns.join(",")}`];
  for (let i = 0; i < strips; i++) {
    const at = new Date(Date.UTC(2000, 0, 1) + i * 600_000).toISOString().slice(0, 16);
    const densities = level.map((d) => Math.max(0, d + 0.012 * normal()).toFixed(3));
    lines.push(`${at},colour-paper,P-17,MB,${densities.join(",")}`);
  }
  return `${lines.join("\n")}\n`;
}

console.log("records and control, strips of 12 densities");
for (const strips of [10_000, 100_000, 1_000_000]) {
  const text = stripLog(strips);
  const parsed = timed(() => parseStripLog(text, { file: "bench.csv", batches }));
  const { rows, problems } = parsed.result;
  if (rows.length !== strips || problems.length > 0) throw new Error("the bench log is not clean");
  const history = { strips: rows, batches, specification: colourPaperProcess };
  const series = timed(() => seriesOfStrips(history));
  const firstMonth = { from: "2000-01-01", to: "2000-01-31" };
  const charts = timed(() => controlCharts(history, { basePeriod: firstMonth }));
  console.log(`  ${strips.toLocaleString("en")} strips`);
  console.log(`    reading the log       ${perSecond(strips, parsed.seconds)}`);
  console.log(`    deviations            ${perSecond(strips, series.seconds)}`);
  console.log(`    all charts, all rules ${perSecond(strips, charts.seconds)}`);
}

console.log("individuals chart with Nelson's eight rules, one series");
for (const readings of [10_000, 100_000, 1_000_000, 10_000_000]) {
  const { normal } = seededRandom(2);
  const values = Float64Array.from({ length: readings }, normal);
  const limits = statisticalLimits(values.subarray(0, 1000));
  const { seconds } = timed(() => {
    return individualsChart(values, { limits, runRules: { rules: nelsonRules } });
  });
  console.log(
    `  ${readings.toLocaleString("en").padStart(10)} readings: ${perSecond(readings, seconds)}`,
  );
}

console.log("run lengths, median processor time after warming up");
const ewma = { lambda: 0.1, limitWidth: 2.7 };
const runLengths: readonly [string, () => unknown][] = [
  ["CUSUM 0.5, 5", () => cusumRunLength({ referenceValue: 0.5, decisionInterval: 5 })],
  ["EWMA 0.1, 2.7", () => ewmaRunLength(ewma, { shift: 1 })],
  ["EWMA 0.1, 2.7, limits that widen", () => ewmaRunLength(ewma, { shift: 1, limits: "exact" })],
  ["EWMA 0.05, 2.7, limits that widen", () => exactSlow()],
  ["four zone rules", () => zoneRulesRunLength(westernElectricZoneRules, { shift: 1 })],
  ["six zone rules", () => zoneRulesRunLength(nelsonZoneRules, { shift: 1 })],
  ["individuals with moving range", () => individualsMovingRangeRunLength()],
  ["six rising", () => risingRunLength(6)],
  ["drift 0.02, EWMA 0.1, 2.7", () => driftRunLength({ chart: "ewma", ...ewma }, 0.02)],
  ["EWMA designed for a shift", () => designEwma({ inControlRunLength: 370, shift: 1 })],
  [
    "EWMA designed for a drift",
    () => designEwma({ inControlRunLength: 370, driftPerReading: 0.02 }),
  ],
];
function exactSlow() {
  return ewmaRunLength({ lambda: 0.05, limitWidth: 2.7 }, { limits: "exact" });
}
for (const [name, compute] of runLengths) {
  const begin = performance.now();
  compute();
  const first = performance.now() - begin;
  for (let i = 0; i < 20; i++) compute();
  const times = Array.from({ length: 25 }, () => {
    const used = process.cpuUsage();
    for (let i = 0; i < 8; i++) compute();
    const { user, system } = process.cpuUsage(used);
    return (user + system) / 8000;
  }).sort((a, b) => a - b);
  console.log(
    `  ${name.padEnd(34)} ${times[12]?.toFixed(2)} ms (the first one ${first.toFixed(1)} ms)`,
  );
}

console.log("size and start");
const bundle = await build({
  entryPoints: [`${root}lib/index.ts`],
  bundle: true,
  minify: true,
  format: "esm",
  write: false,
  conditions: ["wetside-source"],
  platform: "browser",
});
const bytes = bundle.outputFiles[0]?.contents ?? new Uint8Array();
console.log(
  `  core with all it needs, minified: ${(bytes.length / 1024).toFixed(0)} KiB, gzipped ${(gzipSync(bytes).length / 1024).toFixed(0)} KiB`,
);
if (existsSync(`${root}dist/index.js`)) {
  const script = `const t = performance.now(); await import(${JSON.stringify(`${root}dist/index.js`)}); console.log(performance.now() - t);`;
  const times = Array.from({ length: 5 }, () =>
    Number(
      execFileSync(process.execPath, ["--input-type=module", "-e", script], { encoding: "utf8" }),
    ),
  );
  console.log(`  import of the built core: ${Math.min(...times).toFixed(0)} ms`);
}
