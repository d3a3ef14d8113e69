import { type PlannedBatch, sourceOf } from "./plan-batches.ts";
import type { ReadSession } from "./read-session.ts";
import type { SessionStock } from "./session-result.ts";

/**
 * For how many batches each developer's bottle reaches, and what to do instead where it falls
 * short.
 */
export function sessionStock(
  planned: readonly PlannedBatch[],
  shared: readonly PlannedBatch[],
  session: ReadSession,
): readonly SessionStock[] {
  const names = new Set(planned.map((batch) => sourceOf(batch, session)?.name ?? ""));
  return [...names].flatMap((name) => {
    const ofName = (batch: PlannedBatch) => sourceOf(batch, session)?.name === name;
    const wanted = planned.filter(ofName);
    const first = wanted[0];
    const source = first && sourceOf(first, session);
    if (first === undefined || source === undefined) return [];
    const stock = wanted.map((batch) => batch.stockMl);
    const neededMl = source.oneShot
      ? stock.reduce((sum, each) => sum + each, 0)
      : Math.max(...stock);
    const reached = shared.filter((batch) => ofName(batch) && batch.runs);
    const waiting = shared.filter((batch) => ofName(batch) && !batch.runs);
    const filmsWaiting = waiting.flatMap((batch) => batch.films.map((each) => each.film.name));
    const shortMl = Math.max(0, neededMl - source.bottleMl);
    return {
      developer: name,
      bottleMl: source.bottleMl,
      neededMl,
      shortMl,
      batchesPlanned: wanted.length,
      batchesReached: reached.length,
      filmsReached: reached.reduce((sum, batch) => sum + batch.films.length, 0),
      filmsWaiting,
      instead: filmsWaiting.length === 0 ? [] : instead(wanted, source, shortMl, filmsWaiting),
    };
  });
}

function instead(
  wanted: readonly PlannedBatch[],
  source: NonNullable<ReturnType<typeof sourceOf>>,
  shortMl: number,
  waiting: readonly string[],
): readonly string[] {
  const lines = [
    `leave ${waiting.join(", ")} for another day: undeveloped film keeps, cool and dry`,
    `get ${Math.ceil(shortMl)} mL more ${source.name}`,
  ];
  const developer = wanted[0]?.films[0]?.developer;
  if (!source.oneShot || !developer || source.bottleMl <= 0) return lines;
  const films = wanted.flatMap((batch) => batch.films);
  const perFilm = developer.given.minimumStockMlPerFilm ?? 0;
  const least = films.reduce((sum, film) => sum + perFilm * film.equivalents, 0);
  // Volumes grown for the sake of the stock shrink again to what covers the spirals.
  const covered = wanted.reduce((sum, batch) => sum + batch.coverMl, 0);
  const water = Math.ceil((covered / source.bottleMl - 1) * 10) / 10;
  const weaker = water > (1 - developer.stockShare) / developer.stockShare;
  if (weaker && least <= source.bottleMl && perFilm > 0) {
    lines.push(
      `dilute to 1+${water}: that reaches for all and keeps ${perFilm} mL a film, but every time must be the time for 1+${water}`,
    );
  } else if (weaker) {
    lines.push(
      perFilm > 0
        ? `do not dilute further: ${Math.ceil(least)} mL are the least that these films need at ${perFilm} mL each`
        : "do not dilute further unless you know the least amount that one film needs",
    );
  }
  return lines;
}
