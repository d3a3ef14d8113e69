import { writeFileSync } from "node:fs";
import {
  formatProductionLog,
  formatPumpLog,
  formatStripBatchRegister,
  formatStripLog,
} from "../../lib/records/index.ts";
import { type SimulatedLab, simulatedLines, simulateLab } from "../../lib/simulate/index.ts";
import { batchOfStepTest } from "../pellow-street/make/batches.ts";
import { MIXES } from "../pellow-street/make/plan.ts";

// The planned step test of the film developer's replenisher, run in the late winter before the demo
// lab's ninety days: two weeks at the usual setting, four weeks 12 % more, five weeks at the usual
// setting again. Nothing went wrong in it. Run: npx tsx data/pellow-street-step-test/make.ts
const SEED = 20260213;
const FIRST_DAY = "2026-02-02";
const DAYS = 77;
export const STEP = {
  bath: "film-developer",
  usualMl: 5,
  testMl: 5.6,
  from: 14,
  until: 42,
} as const;

/** The eleven weeks of the test, from the library's own simulator. */
export function simulateStepTest(seed: number = SEED): SimulatedLab {
  const setting = { kind: "pump-setting", bath: STEP.bath } as const;
  return simulateLab({
    seed,
    from: FIRST_DAY,
    days: DAYS,
    lines: simulatedLines
      .filter(({ id }) => id === "film")
      .map((line) => ({ ...line, batches: [batchOfStepTest] })),
    events: [
      { ...setting, day: STEP.from, settingMlPerStroke: STEP.testMl },
      { ...setting, day: STEP.until, settingMlPerStroke: STEP.usualMl },
    ],
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
    "pumps.csv": formatPumpLog(lab.pumps.filter(({ pump }) => pump === STEP.bath)),
  };
}

if (process.argv[1] === new URL(import.meta.url).pathname) {
  for (const [name, text] of Object.entries(stepTestFiles())) {
    writeFileSync(new URL(name, import.meta.url), text);
  }
}
