import type { TimedBatch } from "./batch-steps.ts";
import type { ReadSession } from "./read-session.ts";
import type { SessionBottleLeft } from "./session-result.ts";
import { washRules } from "./wash-rules.ts";

/** Sums of volumes that were meant to be equal. */
const HAIR_ML = 1e-6;

interface Bottle {
  readonly name: string;
  readonly beforeMl: number;
  readonly oneShot: boolean;
  readonly filmsDone: number;
  readonly capacityFilmsPerL: number | undefined;
  /** Millilitres a batch takes out of the bottle for good. */
  takes(timed: TimedBatch): number;
}

/** What is left in each bottle after the batches that ran, and how many films it can still take. */
export function bottlesLeft(
  timed: readonly TimedBatch[],
  session: ReadSession,
): readonly SessionBottleLeft[] {
  return bottlesOf(session).map((bottle) => {
    const wanted = timed.reduce((sum, each) => sum + bottle.takes(each), 0);
    const usedMl = Math.min(bottle.beforeMl, wanted);
    const films = timed
      .filter((each) => bottle.takes(each) > 0)
      .reduce((sum, each) => sum + filmsOf(each), 0);
    const filmsAfter = bottle.filmsDone + films;
    const capacity = ((bottle.capacityFilmsPerL ?? 0) * bottle.beforeMl) / 1000;
    const known = bottle.capacityFilmsPerL !== undefined && !bottle.oneShot;
    const filmsLeft = known ? Math.max(0, capacity - filmsAfter) : null;
    const leftMl = bottle.beforeMl - usedMl;
    return {
      bottle: bottle.name,
      beforeMl: bottle.beforeMl,
      usedMl,
      leftMl,
      filmsBefore: bottle.filmsDone,
      filmsAfter,
      filmsLeft,
      advice: advice(bottle, leftMl, filmsLeft),
    };
  });
}

/** A bottle that does not fill the tank for one of the batches. */
export interface BottleShortage {
  readonly bottle: string;
  readonly oneShot: boolean;
  readonly beforeMl: number;
  /** Number of the first batch it does not fill, from 1. */
  readonly batch: number;
  /** What is in it by then, and what that batch needs. */
  readonly leftMl: number;
  readonly neededMl: number;
  /** What must be added for all batches of the evening. */
  readonly missingMl: number;
}

/** Bottles that run short in the course of the evening, each at the first batch it does not fill. */
export function bottleShortages(
  timed: readonly TimedBatch[],
  session: ReadSession,
): readonly BottleShortage[] {
  return bottlesOf(session).flatMap((bottle) => {
    const { name, oneShot, beforeMl } = bottle;
    const short: BottleShortage[] = [];
    let leftMl = beforeMl;
    timed.forEach((each, i) => {
      const takes = bottle.takes(each);
      if (takes <= 0) return;
      const neededMl = oneShot ? takes : each.batch.volumeMl;
      const missingMl = neededMl - leftMl;
      if (missingMl > HAIR_ML) {
        short.push({ bottle: name, oneShot, beforeMl, batch: i + 1, leftMl, neededMl, missingMl });
      }
      leftMl -= takes;
    });
    const [first] = short;
    if (first === undefined) return [];
    return [{ ...first, missingMl: Math.max(...short.map((each) => each.missingMl)) }];
  });
}

/** Films of the trade's size in a batch. */
export function filmsOf({ batch }: TimedBatch): number {
  return batch.films.reduce((sum, film) => sum + film.equivalents, 0);
}

function bottlesOf(session: ReadSession): readonly Bottle[] {
  const developers = session.developers.flatMap(({ given, parts }) =>
    parts.map(({ name, bottleMl, share }) => ({
      name,
      beforeMl: bottleMl,
      oneShot: given.use === "one-shot",
      filmsDone: given.filmsDone ?? 0,
      capacityFilmsPerL: given.capacityFilmsPerL,
      takes: ({ batch }: TimedBatch) => {
        if (batch.films[0]?.developer?.given.name !== given.name) return 0;
        return given.use === "one-shot" ? batch.volumeMl * share : carriedOutMl(batch);
      },
    })),
  );
  const others = session.bottles.map((bottle) => ({
    name: bottle.bath,
    beforeMl: bottle.volumeMl,
    oneShot: bottle.oneShot ?? false,
    filmsDone: bottle.filmsDone ?? 0,
    capacityFilmsPerL: bottle.capacityFilmsPerL,
    takes: ({ batch }: TimedBatch) => {
      if (bottle.bath === "wash aid" && !session.request.wash?.aid) return 0;
      if (bottle.bath === "stop" && session.request.stop === "water") return 0;
      return bottle.oneShot ? batch.volumeMl : carriedOutMl(batch);
    },
  }));
  return [...developers, ...others];
}

/** What film and tank carry out of a bath that goes back into its bottle. */
function carriedOutMl(batch: TimedBatch["batch"]): number {
  const { carriedMlPerM2, tankKeepsMl } = washRules.fillAndDump;
  const areaM2 = batch.films.reduce((sum, film) => sum + film.areaM2, 0);
  return carriedMlPerM2 * areaM2 + tankKeepsMl;
}

function advice(bottle: Bottle, leftMl: number, filmsLeft: number | null): string {
  if (leftMl < 0.5) return "empty";
  if (bottle.oneShot) return "close it full to the neck or squeeze the air out, date it";
  if (filmsLeft === null) return "no capacity was given: count its films and test it";
  if (filmsLeft < 1) return "used up: collect it for disposal by the local code";
  return `good for ${Math.floor(filmsLeft)} more film${filmsLeft < 2 ? "" : "s"}; write the count on the label`;
}
