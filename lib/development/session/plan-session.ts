import { batchSteps, type TimedBatch } from "./batch-steps.ts";
import { bottlesLeft, filmsOf } from "./bottle-ledger.ts";
import { clockAfter } from "./clock-time.ts";
import { groupFilms } from "./group-films.ts";
import { type PlannedBatch, packGroup, shareStock } from "./plan-batches.ts";
import { planColourDevelopment } from "./plan-colour-development.ts";
import { planDevelopment } from "./plan-development.ts";
import { planFixing } from "./plan-fixing.ts";
import { planWash } from "./plan-wash.ts";
import { type ReadSession, readSession } from "./read-session.ts";
import { sessionAssumptions } from "./session-assumptions.ts";
import { sessionCautions } from "./session-cautions.ts";
import type { SessionRequest } from "./session-request.ts";
import type { Session, SessionBatch } from "./session-result.ts";
import { sessionStock } from "./session-stock.ts";
import { placeSteps } from "./session-timeline.ts";
import { sessionWarnings, waitingWarnings } from "./session-warnings.ts";

/**
 * Plans an evening at the sink: which films share a tank, what to measure, when to pour in and out,
 * and what is left afterwards.
 *
 * Films that differ in developer or time are kept apart; each group goes into the fewest tanks.
 * Developing times are corrected for re-use, temperature and drift (`developUntil`), fixing times
 * from the clearing time (`fixingTime`), washes from the residual thiosulfate (`washByChanges`,
 * `washByFlow`). Steps follow one another without a gap; their times run from tank full to tank
 * empty. Batches that the developer does not reach are listed and not put into the timeline.
 *
 * @param request films (at least one), tank, developers or bottles, temperatures in °C, volumes in
 *   mL, times in minutes (developing, washing) and seconds (handling); a local start time
 * @returns batches, steps with clock and elapsed times, stock, bottles left, warnings; JSON-safe
 * @throws InputError that says what to write instead: unknown format or bath, no films, a tank too
 *   small for one film, a temperature in °F or hotter than the emulsion stands, no developing time,
 *   a dilution or start time that cannot be read
 *
 * @example
 * const films = [{ name: "roll 1", format: "135-36", developmentTimeMin: 9 }]
 * const developers = [{ name: "developer", dilution: "1+1", use: "one-shot", bottleMl: 500 }]
 * const session = planSession({ start: "23:30", films, tank: "plastic, 1 reel", developers, temperatures: { developerC: 22.5, roomC: 17 } })
 * session.batches[0].stockMl // => 145
 * session.endClock // => "00:09:39"
 *
 * Source: docs/session.md, rule by rule.
 */
export function planSession(request: SessionRequest): Session {
  const session = readSession("planSession", request);
  const { groups, splits } = groupFilms(session.films);
  const packed = groups.map((group) => packGroup(group, session));
  const planned = packed.flatMap((each) => each.batches);
  const shared = shareStock(planned, session);
  const timed = timedBatches(shared, session);
  const drafts = timed.map((each, i) => ({
    batch: i + 1,
    steps: batchSteps(each, session, i === 0),
  }));
  const { steps, drying, lengthS } = placeSteps(drafts, session.start, session.handling.dryS);
  const stock = sessionStock(planned, shared, session);
  const end = clockAfter(session.start, lengthS);
  return {
    process: session.recipe.id,
    startClock: clockAfter(session.start, 0).clock,
    endClock: end.clock,
    endDayOffset: end.dayOffset,
    lengthS,
    tank: session.tank.id,
    batches: sessionBatches(shared, timed),
    steps,
    drying,
    stock,
    bottles: bottlesLeft(timed, session),
    splits,
    assumptions: sessionAssumptions(
      timed,
      session,
      packed.every((each) => each.proven),
    ),
    warnings: [...waitingWarnings(stock), ...sessionWarnings(timed, session)],
    cautions: sessionCautions,
  };
}

function timedBatches(
  batches: readonly PlannedBatch[],
  session: ReadSession,
): readonly TimedBatch[] {
  const doneIn = new Map<string, number>();
  let fixed = 0;
  return batches
    .filter((batch) => batch.runs)
    .map((batch) => {
      const developer = batch.films[0]?.developer ?? null;
      const name = developer?.given.name ?? "developer";
      const before =
        doneIn.get(name) ??
        developer?.given.filmsDone ??
        session.bottles.find((each) => each.bath === "developer")?.filmsDone ??
        0;
      const timed = {
        batch,
        development:
          developer === null
            ? planColourDevelopment(batch, session, before)
            : planDevelopment(batch, session, developer, before),
        fixing: session.colour ? null : planFixing(batch, session, fixed),
        wash: session.colour ? null : planWash(batch, session),
      };
      doneIn.set(name, before + filmsOf(timed));
      fixed += filmsOf(timed);
      return timed;
    });
}

function sessionBatches(
  batches: readonly PlannedBatch[],
  timed: readonly TimedBatch[],
): readonly SessionBatch[] {
  const inOrder = [...batches.filter((each) => each.runs), ...batches.filter((each) => !each.runs)];
  return inOrder.map((batch, i) => {
    const times = timed.find((each) => each.batch === batch);
    const developer = batch.films[0]?.developer;
    return {
      number: i + 1,
      films: batch.films.map(({ film }) => film.name),
      formats: batch.films.map(({ film }) => film.format),
      areaM2: batch.films.reduce((sum, film) => sum + film.areaM2, 0),
      spirals: batch.spirals,
      developer: developer?.given.name ?? "developer",
      dilution: developer?.ratio.text ?? "working solution",
      volumeMl: batch.volumeMl,
      stockMl: batch.stockMl,
      parts: (developer?.parts ?? []).map(({ name, share }) => ({
        name,
        volumeMl: batch.volumeMl * share,
      })),
      waterMl: batch.volumeMl - batch.stockMl,
      runs: batch.runs,
      whyNot: batch.whyNot,
      development: times?.development ?? null,
      fixS: times?.fixing?.fixS ?? null,
      wash: times?.wash?.result ?? null,
    };
  });
}
