import type { TimedBatch } from "./batch-steps.ts";
import { bottleWarnings } from "./bottle-warnings.ts";
import { loadOf } from "./film-need.ts";
import type { ReadSession } from "./read-session.ts";
import type { SessionStock } from "./session-result.ts";
import { temperatureWarnings } from "./temperature-warnings.ts";

/** What the user should think about before beginning. */
export function sessionWarnings(
  timed: readonly TimedBatch[],
  session: ReadSession,
): readonly string[] {
  const batches = new Map<string, number[]>();
  timed.forEach((each, i) => {
    for (const text of batchWarnings(each, session)) {
      batches.set(text, [...(batches.get(text) ?? []), i + 1]);
    }
  });
  const warnings = [
    ...temperatureWarnings(timed, session),
    ...bottleWarnings(timed, session),
    ...filmWarnings(session),
    ...[...batches].map(
      ([text, numbers]) => `batch${numbers.length > 1 ? "es" : ""} ${numbers.join(", ")}: ${text}`,
    ),
  ];
  return [...new Set(warnings)];
}

function batchWarnings(
  { batch, development, fixing }: TimedBatch,
  session: ReadSession,
): readonly string[] {
  const warnings = [...development.warnings, ...(fixing?.warnings ?? [])];
  const spirals = new Set(batch.films.map((film) => film.spiral.name));
  if (spirals.size > 1) {
    warnings.push(
      `spirals of different size share the tank (${[...spirals].join(", ")}): the larger at the bottom, and see that the topmost is covered`,
    );
  }
  if (hasRoom(batch, session)) {
    warnings.push("the tank is not full: put empty spirals on top so that none slides");
  }
  return [...new Set(warnings)];
}

/** Films that do not get into a tank tonight, and why. */
export function waitingWarnings(stock: readonly SessionStock[]): readonly string[] {
  return stock
    .filter(({ filmsWaiting, shortMl }) => filmsWaiting.length > 0 && shortMl > 0)
    .map(
      ({ developer, filmsWaiting, shortMl }) =>
        `${filmsWaiting.join(", ")} must wait: ${Math.ceil(shortMl)} mL of ${developer} are missing`,
    );
}

function hasRoom(batch: TimedBatch["batch"], { tank }: ReadSession): boolean {
  const load = tank.spirals.map((spiral) => ({
    spiral,
    films: batch.films.filter((film) => film.spiral === spiral).length,
  }));
  const smallest = Math.min(...tank.spirals.map((spiral) => spiral.heightMm));
  return tank.columnHeightMm - loadOf(load).heightMm >= smallest;
}

function filmWarnings(session: ReadSession): readonly string[] {
  const warnings = session.films.flatMap(({ film }) => {
    if (film.boxSpeed === undefined || film.exposureIndex === undefined) return [];
    const stops = Math.log2(film.exposureIndex / film.boxSpeed);
    if (Math.abs(stops) < 0.2) return [];
    const how = `${film.name} was exposed at ${film.exposureIndex}, ${Math.abs(stops).toFixed(1)} stops ${stops > 0 ? "above" : "below"} its box speed`;
    return session.colour
      ? [`${how}: ${film.pushStops ? "its push is planned" : "no push is planned"}`]
      : [`${how}: its time must be the one for that index`];
  });
  if (session.request.rinseWater === "hard") {
    warnings.push("hard water dries to marks: use distilled or filtered water for the last bath");
  }
  const scheme = session.agitation?.warning;
  return scheme ? [...warnings, scheme] : warnings;
}
