import { formatMinutes } from "../../units/index.ts";
import type { ReadFilm } from "./read-films.ts";

/** Films that may share a tank. */
export interface FilmGroup {
  readonly label: string;
  readonly films: readonly ReadFilm[];
}

/** Groups films by developer, dilution and time (or push), and says why the groups stay apart. */
export function groupFilms(films: readonly ReadFilm[]): {
  readonly groups: readonly FilmGroup[];
  readonly splits: readonly string[];
} {
  const byLabel = new Map<string, ReadFilm[]>();
  for (const film of films) {
    const label = groupLabel(film);
    byLabel.set(label, [...(byLabel.get(label) ?? []), film]);
  }
  const groups = [...byLabel].map(([label, members]) => ({ label, films: members }));
  const first = groups[0];
  const splits = groups.slice(1).map((group) => {
    const names = group.films.map((each) => each.film.name).join(", ");
    return `${names} (${group.label}) cannot share a tank with ${first?.films[0]?.film.name} (${first?.label}): ${reason(first?.films[0], group.films[0])}`;
  });
  return { groups, splits };
}

function groupLabel({ developer, givenMin, pushStops }: ReadFilm): string {
  if (developer === null) {
    const push =
      pushStops === 0 ? "normal" : pushStops > 0 ? `pushed ${pushStops}` : `pulled ${-pushStops}`;
    return `${push}, ${formatMinutes(givenMin)}`;
  }
  const { name } = developer.given;
  return `${name} ${developer.ratio.text}, ${formatMinutes(givenMin)} at ${developer.referenceTemperatureC} °C`;
}

function reason(a: ReadFilm | undefined, b: ReadFilm | undefined): string {
  if (a === undefined || b === undefined) return "";
  return a.developer?.given.name !== b.developer?.given.name
    ? "one tank holds one developer"
    : "one tank is poured out at one moment, and their development times differ";
}
