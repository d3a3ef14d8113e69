import type { SessionDeveloper, SessionFilm, SessionRequest } from "wetside";

/** Films of one kind with names of their own. */
export function rolls(
  count: number,
  more: Partial<SessionFilm> = {},
  first = 1,
): readonly SessionFilm[] {
  return Array.from({ length: count }, (_, i) => ({
    name: `roll ${first + i}`,
    format: "135-36",
    developmentTimeMin: 9,
    ...more,
  }));
}

export const developer: SessionDeveloper = Object.freeze({
  name: "stock developer",
  dilution: "1+1",
  use: "one-shot",
  bottleMl: 2000,
});

/** A plain evening: two films, everything at 20 °C. */
export const evening: SessionRequest = Object.freeze({
  start: "19:30",
  films: Object.freeze(rolls(2)),
  tank: "plastic, 2 reels",
  developers: Object.freeze([developer]),
  temperatures: Object.freeze({ developerC: 20, roomC: 20 }),
  fixer: Object.freeze({ clearingTimeFreshS: 60 }),
});
