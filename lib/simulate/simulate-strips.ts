import type { Densities, Strip } from "../control/index.ts";
import type { RandomStream } from "../numerics/index.ts";
import { beyondControl } from "./beyond-control.ts";
import type { ThreeDensities } from "./density-response.ts";
import { readPatches, type StripNoise } from "./strip-densities.ts";
import { later, type PlannedStrip } from "./strip-plan.ts";
import type { ScheduledStrip } from "./strip-schedule.ts";
import { densities, inARow } from "./three-densities.ts";

const WANDER_KEPT = 0.5;
const OPERATORS = ["MB", "OW", "TK"] as const;
/** Minutes from a strip to its repeat. */
const REPEAT_MIN = 13;
const NONE: ThreeDensities = [0, 0, 0];

/** Strips to be run through a line. */
export interface StripRun {
  readonly process: string;
  readonly planned: readonly PlannedStrip[];
  /** What the baths do to each patch of a strip, without noise. */
  readonly effectOf: (
    strip: ScheduledStrip,
    mishandled: number,
  ) => Readonly<Record<string, ThreeDensities>>;
  readonly mishandledOn: (day: number) => number;
  /** Whether a strip beyond a control limit is run again. */
  readonly repeat: boolean;
  readonly noise: StripNoise;
  readonly random: RandomStream;
}

/** Runs and reads all strips of a line. */
export function simulateStrips(run: StripRun): readonly Strip[] {
  const { noise, random } = run;
  const strips: Strip[] = [];
  const minutes = new Set(run.planned.map(({ takenAt }) => takenAt));
  let wander = 0;
  let lastDay = -1;
  for (const planned of run.planned) {
    const first = planned.day !== lastDay;
    if (first) wander = WANDER_KEPT * wander + noise.wanderSd * random.normal();
    lastDay = planned.day;
    const strip = readStrip(run, planned, first ? run.mishandledOn(planned.day) : 0, wander);
    strips.push(strip);
    if (run.repeat && beyondControl(strip, planned.batch)) {
      const takenAt = `${planned.takenAt.slice(0, 11)}${later(planned, REPEAT_MIN)}`;
      // A strip that is due at that minute anyway is the repeat.
      if (minutes.has(takenAt)) continue;
      minutes.add(takenAt);
      strips.push(readStrip(run, { ...planned, takenAt }, 0, wander));
    }
  }
  return strips.sort((a, b) => (a.takenAt < b.takenAt ? -1 : a.takenAt > b.takenAt ? 1 : 0));
}

function readStrip(
  { process, effectOf, noise, random }: StripRun,
  planned: PlannedStrip,
  mishandled: number,
  wander: number,
): Strip {
  const { id, reference, correction, aimsOff = {} } = planned.batch;
  const effect = effectOf(planned, mishandled);
  const truth = Object.entries(reference).map(([patch, read]) => {
    const parts = [correction, aimsOff].map((by) => by[patch]).filter((by) => by !== undefined);
    const sums = [inARow(read), ...parts.map(inARow), effect[patch] ?? NONE];
    const sum = (at: 0 | 1 | 2) => sums.reduce((total, three) => total + three[at], 0);
    return [patch, densities([sum(0), sum(1), sum(2)])] as const;
  });
  const operator = OPERATORS[random.integer(0, OPERATORS.length - 1)] ?? "MB";
  const patches = readPatches(Object.fromEntries<Densities>(truth), noise, wander, random);
  return { takenAt: planned.takenAt, process, stripBatch: id, operator, patches };
}
