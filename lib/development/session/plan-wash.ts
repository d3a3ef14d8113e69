import { requireNumber, requireOneOf } from "../../input/index.ts";
import type { PlannedBatch } from "./plan-batches.ts";
import type { ReadSession } from "./read-session.ts";
import { requireKnownKeys, requireYesNo } from "./require-shape.ts";
import type { SessionWash } from "./session-request.ts";
import { type FilmWash, type FilmWashResult, washByChanges, washByFlow } from "./wash-film.ts";
import { washChangesNeeded, washMinutesNeeded } from "./wash-needed.ts";
import { washRules } from "./wash-rules.ts";

/** The wash of a batch: how long, in how many changes, and what it leaves. */
export interface PlannedWash {
  readonly by: "changes" | "flow";
  readonly changes: number;
  readonly minutesEach: number;
  /** Flow through the tank, mL/min; null for changes. */
  readonly flowMlPerMin: number | null;
  readonly result: FilmWashResult;
}

const KEYS = [
  "by",
  "minutesEach",
  "changes",
  "flowMlPerMin",
  "minutes",
  "aid",
  "thiosulfateGPerL",
  "carriedMlPerM2",
] satisfies readonly (keyof SessionWash)[];

/** Flow where none was given: the tank's volume twice a minute; common practice. */
const FLOW_TANKS_PER_MIN = 2;

/** Washes until residual thiosulfate is half the limit, and never less than was asked for. */
export function planWash(batch: PlannedBatch, session: ReadSession): PlannedWash {
  const asked: SessionWash = session.request.wash ?? { by: "changes" };
  requireKnownKeys("planSession", "wash", asked, KEYS);
  requireYesNo("planSession", "wash.aid", asked.aid);
  const by = requireOneOf("planSession", "wash.by", asked.by, ["changes", "flow"]);
  const wash: FilmWash = {
    areaM2: batch.films.reduce((sum, film) => sum + film.areaM2, 0),
    waterMl: batch.volumeMl,
    temperatureC: session.temperatures.washC,
    washAid: asked.aid ?? false,
    ...(asked.thiosulfateGPerL === undefined ? {} : { thiosulfateGPerL: asked.thiosulfateGPerL }),
    ...(asked.carriedMlPerM2 === undefined ? {} : { carriedMlPerM2: asked.carriedMlPerM2 }),
  };
  if (by === "flow") {
    const mlPerMin = asked.flowMlPerMin ?? FLOW_TANKS_PER_MIN * batch.volumeMl;
    const { washMin, washWithoutAidMin } = washRules.washAid;
    const least = asked.minutes ?? (asked.aid ? washMin : washWithoutAidMin);
    requireNumber("planSession", "wash.minutes", least, { above: 0, max: 600, unit: "min" });
    const needed = Math.ceil(washMinutesNeeded(wash, { mlPerMin }));
    const minutes = Math.max(least, needed);
    return {
      by: "flow",
      changes: 1,
      minutesEach: minutes,
      flowMlPerMin: mlPerMin,
      result: washByFlow(wash, { mlPerMin, minutes }),
    };
  }
  const minutesEach = asked.minutesEach ?? washRules.changeEveryMin.minutes;
  const atLeast = { min: 1, max: 40, whole: true };
  requireNumber("planSession", "wash.changes", asked.changes ?? 1, atLeast);
  const changes = Math.max(asked.changes ?? 1, washChangesNeeded(wash, { minutesEach }));
  const stands = new Array<number>(changes).fill(minutesEach);
  return {
    by: "changes",
    changes,
    minutesEach,
    flowMlPerMin: null,
    result: washByChanges(wash, stands),
  };
}
