import { InputError, requireOneOf } from "../../input/index.ts";
import { type AgitationScheme, requireAgitation } from "./agitation.ts";
import { type ClockTime, parseClockTime } from "./clock-time.ts";
import { type DevelopingTank, developingTank } from "./developing-tank.ts";
import { type ProcessRecipe, processRecipe } from "./process-recipe.ts";
import { readBottles } from "./read-bottles.ts";
import { type ReadDeveloper, readDevelopers } from "./read-developers.ts";
import { type ReadFilm, readFilms } from "./read-films.ts";
import { type ReadTemperatures, readTemperatures } from "./read-temperatures.ts";
import { refuseUnused } from "./refuse-unused.ts";
import { requireKnownKeys, requireList, requireYesNo } from "./require-shape.ts";
import { readHandling, type SessionHandling } from "./session-handling.ts";
import type { SessionBottle, SessionRequest } from "./session-request.ts";

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

const KEYS = [
  "process",
  "start",
  "films",
  "tank",
  "developers",
  "temperatures",
  "agitation",
  "preWash",
  "stop",
  "fixer",
  "wash",
  "rinseWater",
  "bottles",
  "handling",
] satisfies readonly (keyof SessionRequest)[];

/** Lets a session request in, or says which part of it cannot be. */
export function readSession(where: string, request: SessionRequest): ReadSession {
  if (typeof request !== "object" || request === null) {
    const advice = "write an object with start, films, tank, developers and temperatures";
    throw new InputError(where, "request", request, advice);
  }
  requireKnownKeys(where, "request", request, KEYS);
  requireYesNo(where, "preWash", request.preWash);
  requireList(where, "bottles", request.bottles, '[{ bath: "fixer", volumeMl: 1000 }]');
  const recipe = processRecipe(request.process ?? "black-and-white negative");
  const colour = recipe.pushTimesMin !== null;
  refuseUnused(where, request, recipe);
  const start = parseClockTime(request.start);
  const tank = developingTank(request.tank);
  requireOneOf(where, "stop", request.stop ?? "acid", ["acid", "water"]);
  requireOneOf(where, "wash.by", request.wash?.by ?? "changes", ["changes", "flow"]);
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
    agitation: readAgitation(where, request, tank),
    // Dry sheets stick to one another in a tray.
    preWash: request.preWash ?? (colour || tank.open === true),
  };
}

function readAgitation(
  where: string,
  { agitation }: SessionRequest,
  tank: DevelopingTank,
): AgitationScheme | null {
  if (agitation === undefined) return null;
  if (!tank.open) return requireAgitation(where, "agitation", agitation);
  const advice = "leave it out: sheets in trays are moved the whole time, bottom to top";
  throw new InputError(where, "agitation", agitation, advice);
}
