import { InputError, requireNumber } from "../../input/index.ts";
import { requireSurroundings } from "../drift/newton-cooling.ts";
import { requireBathTemperature } from "../rate/bath-temperature.ts";
import type { ProcessRecipe } from "./process-recipe.ts";
import { requireKnownKeys } from "./require-shape.ts";
import type { SessionRequest, SessionTemperatures } from "./session-request.ts";

/** True temperatures, the thermometer's error taken off. */
export interface ReadTemperatures {
  readonly developerC: number;
  readonly roomC: number;
  readonly waterBathC: number | null;
  readonly fixerC: number;
  readonly washC: number;
}

const KEYS = [
  "developerC",
  "roomC",
  "waterBathC",
  "fixerC",
  "washC",
  "thermometerErrorC",
] satisfies readonly (keyof SessionTemperatures)[];

/** Nobody develops in a hotter room; a larger number is °F, or the wrong place. */
const HOTTEST_ROOM_C = 45;

/** Checks the thermometer readings of a session and fills in what was left out. */
export function readTemperatures(
  where: string,
  { temperatures: given }: SessionRequest,
  { emulsionLimitC }: ProcessRecipe,
): ReadTemperatures {
  if (typeof given !== "object" || given === null) {
    const advice = "write { developerC, roomC } in °C, as the thermometers say";
    throw new InputError(where, "temperatures", given, advice);
  }
  requireKnownKeys(where, "temperatures", given, KEYS);
  const limits = { minC: 0, maxC: emulsionLimitC };
  const bath = (name: string, value: unknown) =>
    requireBathTemperature(where, `temperatures.${name}`, value, limits);
  const bounds = { min: -10, max: 10, unit: "°C", hint: "reading minus true temperature" };
  const error = requireNumber(
    where,
    "temperatures.thermometerErrorC",
    given.thermometerErrorC ?? 0,
    bounds,
  );
  const developerC = bath("developerC", given.developerC) - error;
  bath("developerC, less the thermometer's error,", developerC);
  const fixerC = bath("fixerC", given.fixerC ?? developerC);
  const { waterBathC: water, roomC: room } = given;
  return {
    developerC,
    roomC: requireSurroundings(where, "temperatures.roomC", room, HOTTEST_ROOM_C),
    // The tank nears it: hotter than the emulsion stands is no water bath for film.
    waterBathC: water === undefined ? null : bath("waterBathC", water),
    fixerC,
    washC: bath("washC", given.washC ?? fixerC),
  };
}
