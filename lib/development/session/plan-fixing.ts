import { type FixerState, type FixingTime, fixingTime } from "./fixing-time.ts";
import type { PlannedBatch } from "./plan-batches.ts";
import type { ReadSession } from "./read-session.ts";
import { requireKnownKeys, requireYesNo } from "./require-shape.ts";
import { washRules } from "./wash-rules.ts";

const KEYS = [
  "clearingTimeFreshS",
  "clearingTimeNowS",
  "testedAtC",
  "temperatureC",
  "modernFilm",
] satisfies readonly (keyof FixerState)[];

/** Clearing time taken where none was measured, s; common practice, and said. */
const ASSUMED_CLEARING_S = 60;

/**
 * Fixing time of a batch. Each film brings the clearing time nearer to twice the fresh one, in a
 * straight line, so that it arrives there when the fixer's capacity is spent.
 */
export function planFixing(
  batch: PlannedBatch,
  session: ReadSession,
  filmsThisSession: number,
): FixingTime {
  const given = session.request.fixer ?? { clearingTimeFreshS: ASSUMED_CLEARING_S };
  requireKnownKeys("planSession", "fixer", given, KEYS);
  requireYesNo("planSession", "fixer.modernFilm", given.modernFilm);
  const bottle = session.bottles.find((each) => each.bath === "fixer");
  const capacity = ((bottle?.capacityFilmsPerL ?? 0) * (bottle?.volumeMl ?? 0)) / 1000;
  const fresh = given.clearingTimeFreshS;
  // A test of today has the films of earlier evenings in it already.
  const earlier = given.clearingTimeNowS === undefined ? (bottle?.filmsDone ?? 0) : 0;
  const grown =
    capacity > 0 && !bottle?.oneShot
      ? (fresh * (washRules.fixing.exhaustedAt - 1) * (earlier + filmsThisSession)) / capacity
      : 0;
  const fixing = fixingTime({
    ...given,
    clearingTimeNowS: (given.clearingTimeNowS ?? fresh) + grown,
    temperatureC: session.temperatures.fixerC,
    modernFilm: (given.modernFilm ?? false) || batch.films.some((each) => each.film.modernFilm),
  });
  const assumptions = [...fixing.assumptions];
  if (grown > 0) {
    assumptions.push(
      "the clearing time grows in a straight line to twice the fresh one at the fixer's capacity",
    );
  }
  const warnings =
    session.request.fixer === undefined
      ? [
          `no clearing time was given: ${ASSUMED_CLEARING_S} s is assumed; clear a scrap and time it`,
        ]
      : [];
  return { ...fixing, assumptions, warnings: [...warnings, ...fixing.warnings] };
}
