import type { Densities, Strip } from "../control/index.ts";
import type { RandomStream } from "../numerics/index.ts";
import type { ThreeDensities } from "./density-response.ts";
import type { SimulatedLine } from "./simulated-line.ts";
import { readPatches, type StripNoise } from "./strip-densities.ts";
import type { ScheduledStrip } from "./strip-schedule.ts";
import { densities, inARow } from "./three-densities.ts";

const WANDER_KEPT = 0.5;
const OPERATORS = ["MB", "OW", "TK"] as const;

/** Strips to be run through a line. */
export interface StripRun {
  readonly line: SimulatedLine;
  readonly schedule: readonly ScheduledStrip[];
  /** What the baths do to each patch of a strip, without noise. */
  readonly effectOf: (
    strip: ScheduledStrip,
    mishandled: number,
  ) => Readonly<Record<string, ThreeDensities>>;
  readonly mishandledOn: (day: number) => number;
  readonly noise: StripNoise;
  readonly random: RandomStream;
}

/** The id of the batch of strips that a simulated line uses. */
export function batchOf(line: SimulatedLine): string {
  return `${line.id.slice(0, 1).toUpperCase()}-1`;
}

/** Runs and reads all strips of a line. */
export function simulateStrips(run: StripRun): readonly Strip[] {
  const { line, noise, random } = run;
  const stripBatch = batchOf(line);
  let wander = 0;
  let lastDay = -1;
  return run.schedule.map((scheduled) => {
    const first = scheduled.day !== lastDay;
    if (first) wander = WANDER_KEPT * wander + noise.wanderSd * random.normal();
    lastDay = scheduled.day;
    const effect = run.effectOf(scheduled, first ? run.mishandledOn(scheduled.day) : 0);
    const truth = Object.entries(line.reference).map(([patch, reference]) => {
      const [red, green, blue] = inARow(reference);
      const [r, g, b] = effect[patch] ?? [0, 0, 0];
      return [patch, densities([red + r, green + g, blue + b])] as const;
    });
    const operator = OPERATORS[random.integer(0, OPERATORS.length - 1)] ?? "MB";
    return {
      takenAt: scheduled.takenAt,
      process: line.process,
      stripBatch,
      operator,
      patches: readPatches(Object.fromEntries<Densities>(truth), noise, wander, random),
    };
  });
}
