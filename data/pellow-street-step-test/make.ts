import { writeFileSync } from "node:fs";
import {
  formatProductionLog,
  formatPumpLog,
  formatStripBatchRegister,
  formatStripLog,
} from "../../lib/records/index.ts";
import { type SimulatedBath, type SimulatedLab, simulateLab } from "../../lib/simulate/index.ts";
import { batchesOfStepTest } from "../pellow-street/make/batches.ts";
import { film } from "../pellow-street/make/lines.ts";
import { MIXES } from "../pellow-street/make/plan.ts";

// The film line in the winter and spring before the demo lab's ninety days, to the day before them,
// with a planned step test of the developer's replenisher: two weeks at the usual setting, four weeks
// 8 % more, four weeks 8 % less, then the usual setting again. Nothing went wrong.
// Run: node --import tsx --conditions=wetside-source data/pellow-street-step-test/make.ts
const SEED = 20260127;
const FIRST_DAY = "2026-01-19";
const DAYS = 118;
/** So that the counter ends where the ninety days begin. */
const FIRST_COUNTER_STROKES = 24_562;
export const STEPS = {
  bath: "film-developer",
  settings: [
    { day: 14, date: "2026-02-02", settingMlPerStroke: 5.4 },
    { day: 42, date: "2026-03-02", settingMlPerStroke: 4.6 },
    { day: 70, date: "2026-03-30", settingMlPerStroke: 5 },
  ],
} as const;

function withCounter(bath: SimulatedBath): SimulatedBath {
  return bath.id === STEPS.bath ? { ...bath, firstCounterStrokes: FIRST_COUNTER_STROKES } : bath;
}

/** The seventeen weeks of the test, from the library's own simulator. */
export function simulateStepTest(seed: number = SEED): SimulatedLab {
  return simulateLab({
    seed,
    from: FIRST_DAY,
    days: DAYS,
    lines: [{ ...film, baths: film.baths.map(withCounter), batches: batchesOfStepTest }],
    events: STEPS.settings.map(({ day, settingMlPerStroke }) => {
      return { kind: "pump-setting", bath: STEPS.bath, day, settingMlPerStroke } as const;
    }),
    ...MIXES,
    repeatStrips: true,
  });
}

/** The test's files by name. */
export function stepTestFiles(
  lab: SimulatedLab = simulateStepTest(),
): Readonly<Record<string, string>> {
  const decimals = 3;
  return {
    "film-strips.csv": formatStripLog(lab.strips, { decimals }),
    "strip-batches.csv": formatStripBatchRegister(lab.batches, { decimals }),
    "production.csv": formatProductionLog(lab.production),
    "pumps.csv": formatPumpLog(lab.pumps.filter(({ pump }) => pump === STEPS.bath)),
  };
}

if (process.argv[1] === new URL(import.meta.url).pathname) {
  for (const [name, text] of Object.entries(stepTestFiles())) {
    writeFileSync(new URL(name, import.meta.url), text);
  }
}
