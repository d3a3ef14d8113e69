import type { TimedBatch } from "./batch-steps.ts";
import { bottlesLeft, filmsOf } from "./bottle-ledger.ts";
import { loadOf } from "./film-need.ts";
import { courseInTank } from "./plan-development.ts";
import type { ReadSession } from "./read-session.ts";
import type { SessionStock } from "./session-result.ts";

/** 5 °F between baths: US Navy, Illustrator Draftsman, NAVEDTRA 14262, p. 7-11. */
const BATH_STEP_C = 5 / 1.8;
/** A room so much colder or warmer than the developer is pointed out; common practice. */
const ROOM_STEP_C = 5;

/** What the user should think about before beginning. */
export function sessionWarnings(
  timed: readonly TimedBatch[],
  session: ReadSession,
): readonly string[] {
  const warnings = [
    ...temperatureWarnings(timed, session),
    ...bottleWarnings(timed, session),
    ...filmWarnings(session),
  ];
  timed.forEach(({ batch, development, fixing }, i) => {
    const at = `batch ${i + 1}: `;
    warnings.push(...development.warnings.map((text) => at + text));
    if (fixing) warnings.push(...fixing.warnings.map((text) => at + text));
    const spirals = new Set(batch.films.map((film) => film.spiral.name));
    if (spirals.size > 1) {
      warnings.push(
        `${at}spirals of different size share the tank (${[...spirals].join(", ")}): the larger at the bottom, and see that the topmost is covered`,
      );
    }
    if (hasRoom(batch, session)) {
      warnings.push(`${at}the tank is not full: put empty spirals on top so that none slides`);
    }
  });
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

function temperatureWarnings(
  timed: readonly TimedBatch[],
  session: ReadSession,
): readonly string[] {
  const { developerC, roomC, waterBathC, fixerC, washC } = session.temperatures;
  const [low = 0, high = 45] = session.recipe.usualRangeC;
  const warnings: string[] = [];
  if (!session.colour && (developerC < low || developerC > high)) {
    warnings.push(
      `the developer's ${developerC.toFixed(1)} °C is outside the usual ${low} to ${high} °C: colder development is incomplete, warmer swells the emulsion`,
    );
  }
  for (const [bath, other] of [
    ["fixer", fixerC],
    ["wash", washC],
  ] as const) {
    if (session.colour || Math.abs(other - developerC) <= BATH_STEP_C) continue;
    warnings.push(
      `the ${bath} is ${Math.abs(other - developerC).toFixed(1)} °C ${other < developerC ? "colder" : "warmer"} than the developer: more than ${BATH_STEP_C.toFixed(1)} °C between baths can reticulate the emulsion`,
    );
  }
  const first = timed[0];
  if (first && waterBathC === null && Math.abs(roomC - developerC) > ROOM_STEP_C) {
    const { startTemperatureC } = courseInTank(first.batch, session, developerC);
    const endC = first.development.endTemperatureC;
    const tank = session.preWash
      ? ""
      : `the tank takes it to ${startTemperatureC.toFixed(1)} °C at once and `;
    warnings.push(
      `the room is ${Math.abs(roomC - developerC).toFixed(1)} °C ${roomC < developerC ? "colder" : "warmer"} than the developer: ${tank}it ends at ${endC.toFixed(1)} °C; ${session.colour ? "stand it in a water bath" : "the times allow for it, a water bath would be better"}`,
    );
  }
  return warnings;
}

function bottleWarnings(timed: readonly TimedBatch[], session: ReadSession): readonly string[] {
  const warnings: string[] = [];
  const day = session.start.date;
  const dated = [
    ...session.developers.map(({ given }) => ({ name: given.name, expiresOn: given.expiresOn })),
    ...session.bottles.map((bottle) => ({ name: bottle.bath, expiresOn: bottle.expiresOn })),
  ];
  for (const { name, expiresOn } of dated) {
    if (expiresOn === undefined) continue;
    if (day === null) {
      warnings.push(`${name} is good until ${expiresOn}: check it against today's date`);
    } else if (day > expiresOn) {
      warnings.push(
        `${name} expired on ${expiresOn}: test it on a scrap before you trust a film to it`,
      );
    }
  }
  const largest = Math.max(0, ...timed.map(({ batch }) => batch.volumeMl));
  for (const bottle of session.bottles) {
    if (bottle.volumeMl >= largest) continue;
    warnings.push(
      `${bottle.bath}: ${bottle.volumeMl} mL do not cover the films, ${largest} mL are needed`,
    );
  }
  for (const left of bottlesLeft(timed, session)) {
    if (left.filmsLeft !== 0) continue;
    const films = timed.reduce((sum, each) => sum + filmsOf(each), 0);
    warnings.push(
      `${left.bottle} reaches or passes its capacity tonight (${left.filmsBefore} films before, ${films.toFixed(1)} now): mix fresh before the last batch`,
    );
  }
  return warnings;
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
