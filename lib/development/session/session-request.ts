import type { AgitationScheme } from "./agitation.ts";
import type { DevelopingTank } from "./developing-tank.ts";
import type { FixerState } from "./fixing-time.ts";
import type { ProcessRecipe, SessionProcess } from "./process-recipe.ts";
import type { SessionDeveloper } from "./session-developer.ts";
import type { SessionHandling } from "./session-handling.ts";

/** Water of the final rinse. */
export type RinseWater = "soft" | "hard" | "filtered" | "distilled";

/** One film to be developed. */
export interface SessionFilm {
  /** A name of its own: `"roll 1"`. */
  readonly name: string;
  /** A film format of `photoFormats`: `"135-36"`, `"120"`. */
  readonly format: string;
  /** Speed on the box, ISO. */
  readonly boxSpeed?: number;
  /** What it was exposed as. */
  readonly exposureIndex?: number;
  /** Black-and-white: time in minutes for this film and exposure index, at the developer's reference temperature. */
  readonly developmentTimeMin?: number;
  /** Name of one of the developers; needed only with more than one. */
  readonly developer?: string;
  /** Colour: stops pushed (+) or pulled (−), whole. */
  readonly pushStops?: number;
  /** Rich in iodide (tabular grain): fixed for three times the clearing time. */
  readonly modernFilm?: boolean;
}

/** A bottle of another bath: stop, fixer, bleach, wetting agent, a colour bath. */
export interface SessionBottle {
  /** Bath as the process names it: `"fixer"`, `"stop"`, `"bleach"`, `"developer"` of a colour process. */
  readonly bath: string;
  /** Working solution, mL. */
  readonly volumeMl: number;
  /** Poured away after each batch; otherwise it goes back into the bottle. */
  readonly oneShot?: boolean;
  readonly capacityFilmsPerL?: number;
  readonly filmsDone?: number;
  /** Colour developer: longer by so many per cent for each film already developed in it. */
  readonly timeIncreasePercentPerFilm?: number;
  readonly expiresOn?: string;
}

/** Thermometer readings of an evening, °C. */
export interface SessionTemperatures {
  /** What the thermometer in the developer says. */
  readonly developerC: number;
  readonly roomC: number;
  /** Water bath the tank stands in; without it the tank stands in the room. */
  readonly waterBathC?: number;
  /** Stop, fixer and wash aid; default as the developer. */
  readonly fixerC?: number;
  /** Wash water; default as the fixer. */
  readonly washC?: number;
  /** What the developer's thermometer reads too much (+) or too little (−). */
  readonly thermometerErrorC?: number;
}

/** How the film is washed. */
export interface SessionWash {
  readonly by: "changes" | "flow";
  /** Changes: how long each stands, min; default 3. */
  readonly minutesEach?: number;
  /** Changes: at least so many; default what the residual asks for. */
  readonly changes?: number;
  /** Flow: water through the tank, mL/min. */
  readonly flowMlPerMin?: number;
  /** Flow: at least so long, min; default 30, or 5 after a wash aid. */
  readonly minutes?: number;
  /** Rinse and wash aid before the wash. */
  readonly aid?: boolean;
  readonly thiosulfateGPerL?: number;
  readonly carriedMlPerM2?: number;
}

/** An evening at the sink: everything `planSession` needs. */
export interface SessionRequest {
  /** One of `processRecipes` by name, or a recipe of your own. */
  readonly process?: SessionProcess | ProcessRecipe;
  /** Local time, `"19:30"` or `"2025-03-14T19:30"`. */
  readonly start: string;
  readonly films: readonly SessionFilm[];
  readonly tank: string | DevelopingTank;
  /** Black-and-white: at least one. Colour: left out, the developer is a bottle. */
  readonly developers?: readonly SessionDeveloper[];
  readonly temperatures: SessionTemperatures;
  readonly agitation?: string | AgitationScheme;
  readonly preWash?: boolean;
  readonly stop?: "acid" | "water";
  readonly fixer?: FixerState;
  readonly wash?: SessionWash;
  readonly rinseWater?: RinseWater;
  readonly bottles?: readonly SessionBottle[];
  readonly handling?: SessionHandling;
}
