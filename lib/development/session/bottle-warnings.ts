import type { TimedBatch } from "./batch-steps.ts";
import { type BottleShortage, bottleShortages, bottlesLeft, filmsOf } from "./bottle-ledger.ts";
import type { ReadSession } from "./read-session.ts";

/** Bottles that are out of date, do not fill the tank, or come to the end of their capacity. */
export function bottleWarnings(
  timed: readonly TimedBatch[],
  session: ReadSession,
): readonly string[] {
  const films = timed.reduce((sum, each) => sum + filmsOf(each), 0);
  const spent = bottlesLeft(timed, session).filter((left) => left.filmsLeft === 0);
  return [
    ...dateWarnings(session),
    ...bottleShortages(timed, session).map(shortageWarning),
    ...spent.map(
      (left) =>
        `${left.bottle} reaches or passes its capacity (${left.filmsBefore} films before, ${Number(films.toFixed(1))} tonight): mix fresh before the last batch`,
    ),
  ];
}

function dateWarnings({ start, developers, bottles }: ReadSession): readonly string[] {
  const dated = [
    ...developers.map(({ given }) => ({ name: given.name, expiresOn: given.expiresOn })),
    ...bottles.map((bottle) => ({ name: bottle.bath, expiresOn: bottle.expiresOn })),
  ];
  return dated.flatMap(({ name, expiresOn }) => {
    if (expiresOn === undefined) return [];
    if (start.date === null) {
      return [`${name} is good until ${expiresOn}: check it against today's date`];
    }
    if (start.date <= expiresOn) return [];
    return [`${name} expired on ${expiresOn}: test it on a scrap before you trust a film to it`];
  });
}

function shortageWarning(short: BottleShortage): string {
  const { bottle, beforeMl, batch, leftMl, neededMl, missingMl } = short;
  if (beforeMl < neededMl) {
    return `${bottle}: ${beforeMl} mL do not cover the films, ${neededMl} mL are needed`;
  }
  const left = `${Math.floor(leftMl)} mL are left for batch ${batch}, which needs ${neededMl} mL`;
  const more = `${Math.ceil(missingMl)} mL`;
  return short.oneShot
    ? `${bottle}: ${left}; have ${more} more ready for tonight`
    : `${bottle}: each batch carries some of it out, ${left}; top it up with ${more} of fresh`;
}
