import type { RateModel } from "../rate/rate-model.ts";
import type { AgitationScheme } from "./agitation.ts";
import type { DevelopingTank } from "./developing-tank.ts";
import type { FixerState } from "./fixing-time.ts";

/** What kind of processing a session is. */
export type SessionProcess = "black-and-white negative" | "colour negative" | "colour reversal";

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

/** A black-and-white developer and what is left of it. */
export interface SessionDeveloper {
  readonly name: string;
  /** Ratio such as `"1+9"`, or `"stock"`. */
  readonly dilution: string;
  /** One-shot: poured away after each batch. Re-used: the working solution goes back. */
  readonly use: "one-shot" | "re-used";
  /** One-shot: stock or concentrate left, mL. Re-used: working solution, mL. */
  readonly bottleMl: number;
  /** Least stock or concentrate for one film of the trade's size, mL. */
  readonly minimumStockMlPerFilm?: number;
  /** Temperature the films' times belong to, °C; default the rate model's, or 20. */
  readonly referenceTemperatureC?: number;
  /** Without one, the default model is used and the answer's range shown. */
  readonly rateModel?: RateModel;
  /** Re-used: longer by so many per cent for each film already developed in it; default 10. */
  readonly timeIncreasePercentPerFilm?: number;
  /** Re-used: films of the trade's size a litre can develop. */
  readonly capacityFilmsPerL?: number;
  readonly filmsDone?: number;
  /** Use-by date, `"2025-06-30"`. */
  readonly expiresOn?: string;
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

/** How long the handling takes; the defaults are common practice or published where said. */
export interface SessionHandling {
  /** Measure, mix and temper before the first batch; default 600 s. */
  readonly mixS?: number;
  /** Load one film in the dark; default 180 s. */
  readonly loadSPerFilm?: number;
  /** Fill the tank; default 15 s. */
  readonly pourInS?: number;
  /** Empty it, counted into the step; default 10 s. */
  readonly pourOutS?: number;
  /** Between batches: rinse and dry the spirals, temper again; default 900 s. */
  readonly turnRoundS?: number;
  /** Hang one film; default 60 s. */
  readonly hangSPerFilm?: number;
  /** Drying, beside the session; default 7200 s. */
  readonly dryS?: number;
}

/** An evening at the sink: everything `planSession` needs. */
export interface SessionRequest {
  readonly process?: SessionProcess;
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
