import { InputError, requireNumber, requireOneOf } from "../../input/index.ts";
import type { Ratio } from "../../units/index.ts";
import { requireBathTemperature } from "../rate/bath-temperature.ts";
import { defaultRateModel } from "../rate/default-rate-model.ts";
import type { RateModel } from "../rate/rate-model.ts";
import { type DeveloperBottle, developerBottles, developerRatio } from "./developer-bottles.ts";
import { requireKnownKeys } from "./require-shape.ts";
import type { SessionDeveloper } from "./session-developer.ts";
import type { SessionRequest } from "./session-request.ts";

/** A developer, checked; the default rate model filled in and marked. */
export interface ReadDeveloper {
  readonly given: SessionDeveloper;
  readonly ratio: Ratio;
  /** One bottle, or one for each part. */
  readonly parts: readonly DeveloperBottle[];
  /** Stock over working solution; 1 for a working solution. */
  readonly stockShare: number;
  readonly referenceTemperatureC: number;
  readonly model: RateModel;
  readonly modelIsDefault: boolean;
  readonly timeIncreasePercentPerFilm: number;
}

/** Longer by so much for each film already developed in a re-used bath; common practice. */
const TIME_INCREASE_PERCENT = 10;

const OPTIONAL = {
  capacityFilmsPerL: { above: 0 },
  filmsDone: { min: 0 },
  timeIncreasePercentPerFilm: { min: 0, max: 100, unit: "%" },
} as const;

const KEYS = [
  "name",
  "dilution",
  "use",
  "bottleMl",
  "minimumStockMlPerFilm",
  "parts",
  "referenceTemperatureC",
  "rateModel",
  "expiresOn",
  ...(Object.keys(OPTIONAL) as (keyof typeof OPTIONAL)[]),
] satisfies readonly (keyof SessionDeveloper)[];

/** Checks the developers of a session. */
export function readDevelopers(
  where: string,
  request: SessionRequest,
  colour: boolean,
): readonly ReadDeveloper[] {
  const given = request.developers ?? [];
  if (colour) {
    if (given.length === 0) return [];
    const advice =
      'leave it out for a colour process and write its developer among the bottles, as { bath: "developer", volumeMl: 1000 }';
    throw new InputError(where, "developers", given[0]?.name, advice);
  }
  if (!Array.isArray(given) || given.length === 0) {
    const advice =
      'write at least one developer, such as { name: "developer", dilution: "1+1", use: "one-shot", bottleMl: 500 }';
    throw new InputError(where, "developers", given, advice);
  }
  const names = new Set<string>();
  return given.map((each, i) => {
    const at = `developers[${i}]`;
    if (typeof each?.name !== "string" || each.name.trim() === "" || names.has(each.name)) {
      const advice = "write a name that no other developer has";
      throw new InputError(where, `${at}.name`, each?.name, advice);
    }
    names.add(each.name);
    return readDeveloper(where, at, each);
  });
}

function readDeveloper(where: string, at: string, given: SessionDeveloper): ReadDeveloper {
  requireKnownKeys(where, at, given, KEYS);
  const use = requireOneOf(where, `${at}.use`, given.use, ["one-shot", "re-used"]);
  for (const key of Object.keys(OPTIONAL) as (keyof typeof OPTIONAL)[]) {
    if (given[key] !== undefined) requireNumber(where, `${at}.${key}`, given[key], OPTIONAL[key]);
  }
  requireDate(where, `${at}.expiresOn`, given.expiresOn);
  const ratio = developerRatio(where, at, given);
  const parts = developerBottles(where, at, given, ratio);
  const reference = given.referenceTemperatureC ?? given.rateModel?.referenceTemperatureC ?? 20;
  requireBathTemperature(where, `${at}.referenceTemperatureC`, reference);
  return {
    given,
    ratio,
    parts,
    stockShare: parts.reduce((sum, part) => sum + part.share, 0),
    referenceTemperatureC: reference,
    model: given.rateModel ?? defaultRateModel({ referenceTemperatureC: reference }),
    modelIsDefault: given.rateModel === undefined,
    timeIncreasePercentPerFilm:
      use === "one-shot" ? 0 : (given.timeIncreasePercentPerFilm ?? TIME_INCREASE_PERCENT),
  };
}

/** Lets a calendar date in, or none. */
export function requireDate(where: string, argument: string, value: string | undefined): void {
  if (value === undefined) return;
  const time = /^\d{4}-\d{2}-\d{2}$/.test(value) ? Date.parse(`${value}T00:00:00Z`) : Number.NaN;
  if (Number.isNaN(time) || new Date(time).toISOString().slice(0, 10) !== value) {
    throw new InputError(where, argument, value, 'write a date such as "2025-06-30"');
  }
}
