import { type PlannedBatch, type StockSource, sourcesOf } from "./plan-batches.ts";
import type { ReadSession } from "./read-session.ts";
import type { SessionStock } from "./session-result.ts";

/**
 * For how many batches each developer's bottle reaches, and what to do instead where it falls
 * short. A developer in parts has a line for each.
 */
export function sessionStock(
  planned: readonly PlannedBatch[],
  shared: readonly PlannedBatch[],
  session: ReadSession,
): readonly SessionStock[] {
  const named = (batch: PlannedBatch, name: string) =>
    sourcesOf(batch, session).filter((source) => source.name === name);
  const names = new Set(
    planned.flatMap((batch) => sourcesOf(batch, session).map((source) => source.name)),
  );
  return [...names].flatMap((name) => {
    const wanted = planned.filter((batch) => named(batch, name).length > 0);
    const sources = wanted.flatMap((batch) => named(batch, name));
    const source = sources[0];
    if (source === undefined) return [];
    const needs = sources.map((each) => each.neededMl);
    const neededMl = source.oneShot
      ? needs.reduce((sum, each) => sum + each, 0)
      : Math.max(...needs);
    const ours = shared.filter((batch) => named(batch, name).length > 0);
    const reached = ours.filter((batch) => batch.runs);
    const waiting = ours.filter((batch) => !batch.runs);
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
  source: StockSource,
  shortMl: number,
  waiting: readonly string[],
): readonly string[] {
  const lines = [
    `leave ${waiting.join(", ")} for another day: undeveloped film keeps, cool and dry`,
    ...(shortMl > 0 ? [`get ${Math.ceil(shortMl)} mL more ${source.name}`] : []),
  ];
  const developer = wanted[0]?.films[0]?.developer;
  const [only, ...more] = developer?.parts ?? [];
  if (!source.oneShot || only === undefined || more.length > 0 || source.bottleMl <= 0) {
    return lines;
  }
  const { share, minimumStockMlPerFilm: perFilm } = only;
  const films = wanted.flatMap((batch) => batch.films);
  const least = films.reduce((sum, film) => sum + perFilm * film.equivalents, 0);
  // Volumes grown for the sake of the stock shrink again to what covers the spirals.
  const covered = wanted.reduce((sum, batch) => sum + batch.coverMl, 0);
  const water = Math.ceil((covered / source.bottleMl - 1) * 10) / 10;
  if (water <= (1 - share) / share) return lines;
  if (least <= source.bottleMl && perFilm > 0) {
    return [
      ...lines,
      `dilute to 1+${water}: that reaches for all and keeps ${perFilm} mL a film, but every time must be the time for 1+${water}`,
    ];
  }
  return [
    ...lines,
    perFilm > 0
      ? `do not dilute further: ${Math.ceil(least)} mL are the least that these films need at ${perFilm} mL each`
      : "do not dilute further unless you know the least amount that one film needs",
  ];
}
