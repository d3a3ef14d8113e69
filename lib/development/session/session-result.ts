import type { AgitationMark } from "./agitation.ts";
import type { FilmWashResult } from "./wash-film.ts";

/** One thing to do, at one moment. */
export interface SessionAction {
  /** Seconds since the session began. */
  readonly atS: number;
  /** `"00:12:30"`; `dayOffset` counts midnights since the start. */
  readonly clock: string;
  readonly dayOffset: number;
  readonly batch: number;
  /** What a timer shows that was started when the tank was full (tray: first sheet in), s; null without one. */
  readonly timerS: number | null;
  readonly text: string;
}

/** One step of the timeline; each begins when the one before it ends. */
export interface SessionStep {
  readonly batch: number;
  readonly bath: string;
  readonly startS: number;
  readonly endS: number;
  readonly lengthS: number;
  readonly startClock: string;
  readonly startDayOffset: number;
  /** With a dated start: `"2025-03-14T19:40:00"`. */
  readonly startDateTime: string | null;
  /** Time since the session began, `"0:12:30"`. */
  readonly startElapsed: string;
  readonly temperatureC: number | null;
  readonly toleranceC: number | null;
  readonly volumeMl: number | null;
  readonly agitation: string | null;
  /** Seconds since the tank was full. */
  readonly agitationMarks: readonly AgitationMark[];
  /** The film is out of the tank and needs darkness. */
  readonly dark: boolean;
  readonly actions: readonly SessionAction[];
  readonly cautions: readonly string[];
}

/** Development of one batch, corrected for temperature, drift and re-use. */
export interface SessionDevelopment {
  /** Time as given for the reference temperature and fresh developer, min. */
  readonly givenMin: number;
  readonly referenceTemperatureC: number;
  /** Longer by this factor for re-use; 1 if fresh. */
  readonly reuseFactor: number;
  /** From tank full to tank empty, whole seconds. */
  readonly timeS: number;
  /** When pouring out begins, seconds after the tank was full. */
  readonly pourOutAtS: number;
  /** True temperature of the developer before it is poured in, °C. */
  readonly bottleTemperatureC: number;
  readonly startTemperatureC: number;
  readonly endTemperatureC: number;
  /** Constant temperature that would develop as much, °C. */
  readonly effectiveTemperatureC: number;
  /** Development too much (+) or too little (−), %, had the given time been used unchanged; null with fixed times. */
  readonly errorIfUncorrectedPercent: number | null;
  /** The same had only the temperature at pouring been allowed for; null with fixed times. */
  readonly errorWithoutDriftPercent: number | null;
  /** Seconds longer (+) or shorter (−) for a developer half a degree warmer; null with fixed times. */
  readonly timePerHalfDegreeS: number | null;
  /** Shortest and longest time other published temperature coefficients would give, s; null with a model of one's own or fixed times. */
  readonly spanS: readonly [number, number] | null;
  readonly modelDescription: string;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** Films that go through the tank together. */
export interface SessionBatch {
  readonly number: number;
  readonly films: readonly string[];
  readonly formats: readonly string[];
  readonly areaM2: number;
  readonly spirals: number;
  readonly developer: string;
  readonly dilution: string;
  readonly volumeMl: number;
  /** Stock or concentrate in it, mL; for a working solution its whole volume. */
  readonly stockMl: number;
  /** What comes out of each bottle: one, or one for each part of the developer. */
  readonly parts: readonly { readonly name: string; readonly volumeMl: number }[];
  readonly waterMl: number;
  /** False where the developer does not reach; then it is not in the timeline. */
  readonly runs: boolean;
  readonly whyNot: string | null;
  readonly development: SessionDevelopment | null;
  readonly fixS: number | null;
  readonly wash: FilmWashResult | null;
}

/** Whether a developer's bottle reaches, and what to do if not. */
export interface SessionStock {
  readonly developer: string;
  readonly bottleMl: number;
  readonly neededMl: number;
  readonly shortMl: number;
  readonly batchesPlanned: number;
  readonly batchesReached: number;
  readonly filmsReached: number;
  readonly filmsWaiting: readonly string[];
  readonly instead: readonly string[];
}

/** What is left in a bottle afterwards. */
export interface SessionBottleLeft {
  readonly bottle: string;
  readonly beforeMl: number;
  readonly usedMl: number;
  readonly leftMl: number;
  /** Films of the trade's size developed in it before and after. */
  readonly filmsBefore: number;
  readonly filmsAfter: number;
  /** How many more it can take; null if its capacity was not given or it is not re-used. */
  readonly filmsLeft: number | null;
  readonly advice: string;
}

/** Drying, beside the session. */
export interface SessionDrying {
  readonly batch: number;
  readonly startClock: string;
  readonly readyClock: string;
  readonly readyDayOffset: number;
}

/** A planned session. Plain, JSON-safe. */
export interface Session {
  /** Name of the recipe: `"black-and-white negative"`. */
  readonly process: string;
  readonly startClock: string;
  readonly endClock: string;
  readonly endDayOffset: number;
  readonly lengthS: number;
  readonly tank: string;
  readonly batches: readonly SessionBatch[];
  readonly steps: readonly SessionStep[];
  readonly drying: readonly SessionDrying[];
  readonly stock: readonly SessionStock[];
  readonly bottles: readonly SessionBottleLeft[];
  /** Why films could not share a tank. */
  readonly splits: readonly string[];
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
  readonly cautions: readonly string[];
}
