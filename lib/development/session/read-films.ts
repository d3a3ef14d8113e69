import { InputError, requireNumber, requireOneOf } from "../../input/index.ts";
import { requireMinutes } from "../rate/require-minutes.ts";
import type { DevelopingTank } from "./developing-tank.ts";
import { type FilmNeed, filmNeed } from "./film-need.ts";
import type { ProcessRecipe } from "./process-recipe.ts";
import type { ReadDeveloper } from "./read-developers.ts";
import { requireKnownKeys, requireYesNo } from "./require-shape.ts";
import type { SessionFilm } from "./session-request.ts";

const KEYS = [
  "name",
  "format",
  "boxSpeed",
  "exposureIndex",
  "developmentTimeMin",
  "developer",
  "pushStops",
  "modernFilm",
] satisfies readonly (keyof SessionFilm)[];

/** A film with what it asks of tank and developer. */
export interface ReadFilm extends FilmNeed {
  readonly film: SessionFilm;
  /** Black-and-white only. */
  readonly developer: ReadDeveloper | null;
  /** Development as given: the film's time, or the process's for its push. */
  readonly givenMin: number;
  readonly pushStops: number;
  /** Working solution the film must have, mL. */
  readonly leastMl: number;
}

/** Checks films one by one. */
export function readFilms(
  where: string,
  films: readonly SessionFilm[],
  session: {
    readonly tank: DevelopingTank;
    readonly recipe: ProcessRecipe;
    readonly developers: readonly ReadDeveloper[];
  },
): readonly ReadFilm[] {
  if (!Array.isArray(films) || films.length === 0) {
    const advice = 'write at least one film, such as [{ name: "roll 1", format: "135-36" }]';
    throw new InputError(where, "films", films, advice);
  }
  const names = new Set<string>();
  return films.map((film: SessionFilm, i) => {
    const at = `films[${i}]`;
    if (typeof film?.name !== "string" || film.name.trim() === "") {
      throw new InputError(where, `${at}.name`, film?.name, 'write a name such as "roll 1"');
    }
    if (names.has(film.name)) {
      throw new InputError(where, `${at}.name`, film.name, "write a different name for each film");
    }
    names.add(film.name);
    requireKnownKeys(where, at, film, KEYS);
    requireYesNo(where, `${at}.modernFilm`, film.modernFilm);
    for (const key of ["boxSpeed", "exposureIndex"] as const) {
      const bounds = { above: 0, hint: "an ISO arithmetic speed such as 400" };
      if (film[key] !== undefined) requireNumber(where, `${at}.${key}`, film[key], bounds);
    }
    const need = filmNeed(where, `${at}.format`, film.format, session.tank);
    return { film, ...need, ...development(where, at, film, need, session) };
  });
}

function development(
  where: string,
  at: string,
  film: SessionFilm,
  need: FilmNeed,
  { recipe, developers }: { recipe: ProcessRecipe; developers: readonly ReadDeveloper[] },
): Pick<ReadFilm, "developer" | "givenMin" | "pushStops" | "leastMl"> {
  if (recipe.pushTimesMin !== null) {
    const pushStops = film.pushStops ?? 0;
    const step = recipe.pushTimesMin.find((each) => each.stops === pushStops);
    if (step === undefined) {
      const stops = recipe.pushTimesMin.map((each) => each.stops).join(", ");
      throw new InputError(where, `${at}.pushStops`, pushStops, `write one of ${stops}`);
    }
    if (film.developmentTimeMin !== undefined) {
      const advice = "leave it out: a colour process has fixed times; write pushStops to change it";
      throw new InputError(where, `${at}.developmentTimeMin`, film.developmentTimeMin, advice);
    }
    return { developer: null, givenMin: step.minutes, pushStops, leastMl: 0 };
  }
  if (film.pushStops !== undefined && film.pushStops !== 0) {
    const advice =
      "leave it out for black-and-white: write the exposure index, and in developmentTimeMin the time for that index";
    throw new InputError(where, `${at}.pushStops`, film.pushStops, advice);
  }
  const minutes = requireMinutes(where, `${at}.developmentTimeMin`, film.developmentTimeMin, {
    above: 0,
    max: 600,
    hint: "the time for this film, exposure index, developer and dilution at the reference temperature",
  });
  const developer = developerOf(where, at, film, developers);
  const leastMl = Math.max(
    0,
    ...developer.parts.map((part) => (part.minimumStockMlPerFilm * need.equivalents) / part.share),
  );
  return { developer, givenMin: minutes, pushStops: 0, leastMl };
}

function developerOf(
  where: string,
  at: string,
  film: SessionFilm,
  developers: readonly ReadDeveloper[],
): ReadDeveloper {
  const names = developers.map((each) => each.given.name);
  const only = developers[0];
  if (film.developer === undefined && developers.length === 1 && only !== undefined) return only;
  const name = requireOneOf(where, `${at}.developer`, film.developer, names);
  return developers.find((each) => each.given.name === name) as ReadDeveloper;
}
