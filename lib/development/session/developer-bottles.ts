import { InputError, requireNumber } from "../../input/index.ts";
import { parseRatio, type Ratio } from "../../units/index.ts";
import type { SessionDeveloper } from "./session-developer.ts";

/** One bottle that a developer comes out of. */
export interface DeveloperBottle {
  /** The developer's name, with that of the part where there are several. */
  readonly name: string;
  /** The part's own name, or the developer's. */
  readonly label: string;
  readonly bottleMl: number;
  /** Its share of the working solution. */
  readonly share: number;
  readonly minimumStockMlPerFilm: number;
}

const LEAST = { min: 0, unit: "mL" };

/** Reads the dilution: with as many parts as the ratio has numbers, none of them is water. */
export function developerRatio(where: string, at: string, given: SessionDeveloper): Ratio {
  const { parts } = given;
  if (parts !== undefined && (!Array.isArray(parts) || parts.length < 2)) {
    const advice =
      'write a bottle for each, such as [{ name: "part A", bottleMl: 250 }, { name: "part B", bottleMl: 250 }], or bottleMl alone';
    throw new InputError(where, `${at}.parts`, parts, advice);
  }
  const read = parseRatio(given.dilution);
  const noWater = parts !== undefined && parts.length === read.concentrateParts.length + 1;
  const ratio = noWater ? parseRatio(given.dilution, { water: "none" }) : read;
  const count = ratio.concentrateParts.length;
  if (parts !== undefined && count !== parts.length) {
    const advice = `write a dilution of ${parts.length} concentrates and water, such as "${"1+".repeat(parts.length)}100"`;
    throw new InputError(where, `${at}.dilution`, given.dilution, advice);
  }
  if (parts === undefined && count > 1 && given.use === "one-shot") {
    const advice = `write a bottle for each of the ${count} concentrates of ${ratio.text}, such as [{ name: "part A", bottleMl: 250 }, { name: "part B", bottleMl: 250 }]`;
    throw new InputError(where, `${at}.parts`, parts, advice);
  }
  return ratio;
}

/** The bottles of a developer: one of stock or working solution, or one for each part. */
export function developerBottles(
  where: string,
  at: string,
  given: SessionDeveloper,
  ratio: Ratio,
): readonly DeveloperBottle[] {
  const { name, parts, use } = given;
  if (parts === undefined) {
    const shares = ratio.concentrateParts.map((part) => part / ratio.totalParts);
    const one = use === "one-shot";
    const least = requireNumber(
      where,
      `${at}.minimumStockMlPerFilm`,
      given.minimumStockMlPerFilm ?? 0,
      LEAST,
    );
    return [
      {
        name,
        label: name,
        bottleMl: requireNumber(where, `${at}.bottleMl`, given.bottleMl, LEAST),
        share: one ? (shares[0] ?? 1) : 1,
        minimumStockMlPerFilm: one ? least : 0,
      },
    ];
  }
  if (use === "re-used") {
    const advice =
      "leave it out: a re-used developer has one bottle, of working solution: bottleMl";
    throw new InputError(where, `${at}.parts`, parts, advice);
  }
  for (const key of ["bottleMl", "minimumStockMlPerFilm"] as const) {
    if (given[key] === undefined) continue;
    throw new InputError(
      where,
      `${at}.${key}`,
      given[key],
      `write ${key} in each of parts instead`,
    );
  }
  return parts.map((part, i) => {
    const here = `${at}.parts[${i}]`;
    if (typeof part?.name !== "string" || part.name.trim() === "") {
      throw new InputError(where, `${here}.name`, part?.name, 'write a name such as "part A"');
    }
    if (parts.findIndex((other) => other.name === part.name) !== i) {
      throw new InputError(
        where,
        `${here}.name`,
        part.name,
        "write a different name for each part",
      );
    }
    const least = part.minimumStockMlPerFilm ?? 0;
    return {
      name: `${name}, ${part.name}`,
      label: part.name,
      bottleMl: requireNumber(where, `${here}.bottleMl`, part.bottleMl, LEAST),
      share: (ratio.concentrateParts[i] ?? 0) / ratio.totalParts,
      minimumStockMlPerFilm: requireNumber(where, `${here}.minimumStockMlPerFilm`, least, LEAST),
    };
  });
}
