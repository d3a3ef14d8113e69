// The densitometer of Pellow Street Lab, an invented lab: a gauge study of the LD patch, green, of ten
// strips, and the readings of its calibration patch. Everything here is made up; the sizes stand below.
// Run: node --import tsx --conditions=wetside-source data/pellow-street-gauge/make.ts
import { writeFileSync } from "node:fs";
import { seededRandom } from "wetside/numerics";

const SEED = 20260706;
/** Standard deviations and the drift, density; the answers of the notebook's gauge study. */
const STRIPS_SD = 0.008;
const REPEAT_SD = 0.003;
const OPERATOR_OFFSETS = { MB: 0, OW: 0.0035, TK: -0.002 } as const;
const ZERO_SD = 0.0015;
const ZERO_PER_DAY = -0.0003;

const DAY_MS = 86_400_000;
const minute = (ms: number) => new Date(ms).toISOString().slice(0, 16);

function gaugeRows(): string[] {
  const { normal, uniform } = seededRandom(SEED);
  const strips = Array.from({ length: 10 }, (_, i) => ({
    name: `strip ${String(i + 1).padStart(2, "0")}`,
    density: 0.748 + STRIPS_SD * normal(),
  }));
  const rows: string[] = [];
  let time = Date.UTC(2026, 6, 6, 9, 0);
  for (let round = 0; round < 3; round++) {
    for (const [operator, offset] of Object.entries(OPERATOR_OFFSETS)) {
      // Each operator reads the strips in a fresh order, so that nobody remembers a number.
      const order = strips
        .map((strip) => ({ strip, key: uniform() }))
        .toSorted((a, b) => a.key - b.key);
      for (const { strip } of order) {
        const density = strip.density + offset + REPEAT_SD * normal();
        rows.push(`${minute(time)},${operator},${strip.name},${density.toFixed(3)}`);
        time += 60_000;
      }
    }
  }
  return rows;
}

function zeroRows(): string[] {
  const { normal } = seededRandom(SEED + 1);
  const first = Date.UTC(2026, 5, 29, 7, 5);
  return Array.from({ length: 47 }, (_, day) => day)
    .filter((day) => new Date(first + day * DAY_MS).getUTCDay() !== 0)
    .map((day) => {
      const density = 0.002 + ZERO_PER_DAY * day + ZERO_SD * normal();
      const text = density.toFixed(3);
      return `${minute(first + day * DAY_MS)},MB,calibration white,${text === "-0.000" ? "0.000" : text}`;
    });
}

/** The two files by name. */
export function gaugeFiles(): Readonly<Record<string, string>> {
  const text = (rows: readonly string[]) =>
    `${["read_at,operator,patch,density", ...rows].join("\n")}\n`;
  return { "gauge-study.csv": text(gaugeRows()), "zero.csv": text(zeroRows()) };
}

if (process.argv[1] === new URL(import.meta.url).pathname) {
  for (const [name, text] of Object.entries(gaugeFiles())) {
    writeFileSync(new URL(name, import.meta.url), text);
  }
}
