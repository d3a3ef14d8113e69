import { InputError, requireNumber, requireOneOf } from "../../input/index.ts";
import { requireSurroundings } from "../drift/newton-cooling.ts";
import { requireBathTemperature } from "../rate/bath-temperature.ts";
import { type AgitationScheme, requireAgitation } from "./agitation.ts";
import { type ClockTime, parseClockTime } from "./clock-time.ts";
import { type DevelopingTank, developingTank } from "./developing-tank.ts";
import { type ProcessRecipe, processRecipe } from "./process-recipe.ts";
import { readBottles } from "./read-bottles.ts";
import { type ReadDeveloper, readDevelopers } from "./read-developers.ts";
import { type ReadFilm, readFilms } from "./read-films.ts";
import type { SessionBottle, SessionHandling, SessionRequest } from "./session-request.ts";

/** A session request, checked and with its defaults filled in. */
export interface ReadSession {
  readonly request: SessionRequest;
  readonly recipe: ProcessRecipe;
  readonly colour: boolean;
  readonly start: ClockTime;
  readonly tank: DevelopingTank;
  readonly films: readonly ReadFilm[];
  readonly developers: readonly ReadDeveloper[];
  readonly bottles: readonly SessionBottle[];
  readonly temperatures: ReadTemperatures;
  readonly handling: Required<SessionHandling>;
  readonly agitation: AgitationScheme | null;
  readonly preWash: boolean;
}

/** True temperatures, the thermometer's error taken off. */
export interface ReadTemperatures {
  readonly developerC: number;
  readonly roomC: number;
  readonly waterBathC: number | null;
  readonly fixerC: number;
  readonly washC: number;
}

/** Defaults of handling; pouring: US Navy, NAVEDTRA 14209, ch. 10; the rest common practice. */
export const sessionHandling: Required<SessionHandling> = {
  mixS: 600,
  loadSPerFilm: 180,
  pourInS: 15,
  pourOutS: 10,
  turnRoundS: 900,
  hangSPerFilm: 60,
  dryS: 7200,
};

/** Lets a session request in, or says which part of it cannot be. */
export function readSession(where: string, request: SessionRequest): ReadSession {
  if (typeof request !== "object" || request === null) {
    const advice = "write an object with start, films, tank, developers and temperatures";
    throw new InputError(where, "request", request, advice);
  }
  const recipe = processRecipe(request.process ?? "black-and-white negative");
  const colour = recipe.id !== "black-and-white negative";
  const start = parseClockTime(request.start);
  const tank = developingTank(request.tank);
  requireOneOf(where, "stop", request.stop ?? "acid", ["acid", "water"]);
  const waters = ["soft", "hard", "filtered", "distilled"] as const;
  requireOneOf(where, "rinseWater", request.rinseWater ?? "soft", waters);
  const developers = readDevelopers(where, request, colour);
  const films = readFilms(where, request.films, { tank, recipe, developers });
  return {
    request,
    recipe,
    colour,
    start,
    tank,
    films,
    developers,
    bottles: readBottles(where, request.bottles ?? [], recipe),
    temperatures: readTemperatures(where, request, recipe),
    handling: readHandling(where, request.handling ?? {}),
    agitation:
      request.agitation === undefined
        ? null
        : requireAgitation(where, "agitation", request.agitation),
    preWash: request.preWash ?? colour,
  };
}

function readTemperatures(where: string, request: SessionRequest, recipe: ProcessRecipe) {
  const given = request.temperatures;
  if (typeof given !== "object" || given === null) {
    const advice = "write { developerC, roomC } in °C, as the thermometers say";
    throw new InputError(where, "temperatures", given, advice);
  }
  const limits = { minC: 0, maxC: recipe.emulsionLimitC };
  const bath = (name: string, value: unknown) =>
    requireBathTemperature(where, `temperatures.${name}`, value, limits);
  const error = requireNumber(
    where,
    "temperatures.thermometerErrorC",
    given.thermometerErrorC ?? 0,
    { min: -10, max: 10, unit: "°C", hint: "reading minus true temperature" },
  );
  const developerC = bath("developerC", given.developerC) - error;
  bath("developerC, less the thermometer's error,", developerC);
  const fixerC = bath("fixerC", given.fixerC ?? developerC);
  return {
    developerC,
    roomC: requireSurroundings(where, "temperatures.roomC", given.roomC),
    waterBathC:
      given.waterBathC === undefined
        ? null
        : requireSurroundings(where, "temperatures.waterBathC", given.waterBathC),
    fixerC,
    washC: bath("washC", given.washC ?? fixerC),
  };
}

function readHandling(where: string, given: SessionHandling): Required<SessionHandling> {
  const merged = { ...sessionHandling, ...given };
  for (const [name, value] of Object.entries(merged)) {
    const bounds = { min: 0, max: 86_400, whole: true, unit: "s" };
    requireNumber(where, `handling.${name}`, value, bounds);
  }
  const { pourInS, pourOutS } = merged;
  requireNumber(where, "handling.pourInS", pourInS, { max: 300, unit: "s" });
  requireNumber(where, "handling.pourOutS", pourOutS, { max: 300, unit: "s" });
  return merged;
}
