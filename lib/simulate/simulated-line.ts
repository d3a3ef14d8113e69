import type { Patches } from "../control/index.ts";
import type { SimulatedBatch } from "./simulated-batch.ts";
import { densities } from "./three-densities.ts";

/** Something a line keeps warm. */
export interface SimulatedHeater {
  readonly id: string;
  readonly role: string;
  readonly setTemperatureC: number;
}

/** One bath of a simulated line, with the pump that replenishes it. */
export interface SimulatedBath extends SimulatedHeater {
  readonly volumeL: number;
  readonly timeMin: number;
  /** Replenisher, mL/m²; a bath without has no pump. */
  readonly rateMlPerM2?: number;
  readonly settingMlPerStroke?: number;
  /** The pump's counter before the first day; left out, invented. */
  readonly firstCounterStrokes?: number;
}

/** A processing line of the simulated lab. Its first bath is the developer. */
export interface SimulatedLine {
  readonly id: string;
  readonly process: string;
  readonly baths: readonly SimulatedBath[];
  /** Area on an ordinary weekday, m². */
  readonly areaM2PerDay: number;
  /** Formats and their shares of the pieces, from the list of formats. */
  readonly formats: readonly { readonly format: string; readonly share: number }[];
  /** What the reference strip of the line's batch reads. */
  readonly reference: Patches;
  /** Time of the start-up strip, `"07:10"`. */
  readonly startUp: string;
  /** Batches of control strips, one after the other; left out, one whose aims are `reference`. */
  readonly batches?: readonly SimulatedBatch[];
  /** Set temperature of the dryer, °C; left out, no dryer is logged. */
  readonly dryerC?: number;
}

/** A colour-negative line for films; volumes, rates and loads are invented. */
const film: SimulatedLine = {
  id: "film",
  process: "colour-negative",
  baths: [
    {
      id: "film-developer",
      role: "developer",
      volumeL: 20,
      setTemperatureC: 37.8,
      timeMin: 3.25,
      rateMlPerM2: 600,
      settingMlPerStroke: 5,
    },
    {
      id: "film-bleach",
      role: "bleach",
      volumeL: 12,
      setTemperatureC: 38,
      timeMin: 1,
      rateMlPerM2: 130,
      settingMlPerStroke: 2,
    },
    {
      id: "film-fixer",
      role: "fixer",
      volumeL: 16,
      setTemperatureC: 38,
      timeMin: 1.75,
      rateMlPerM2: 800,
      settingMlPerStroke: 5,
    },
    {
      id: "film-rinse",
      role: "final rinse",
      volumeL: 12,
      setTemperatureC: 38,
      timeMin: 1,
      rateMlPerM2: 800,
      settingMlPerStroke: 5,
    },
  ],
  areaM2PerDay: 2.6,
  formats: [
    { format: "135-36", share: 0.56 },
    { format: "135-24", share: 0.24 },
    { format: "120", share: 0.2 },
  ],
  reference: {
    dMin: densities([0.26, 0.6, 0.84]),
    ld: densities([0.46, 0.88, 1.14]),
    hd: densities([1.3, 1.83, 2.12]),
    dMax: densities([1.94, 2.49, 2.87]),
    retainedSilver: densities([0.3, 0.77, 2.63]),
  },
  startUp: "07:10",
};

/** A colour-paper line for prints; volumes, rates and loads are invented. */
const paper: SimulatedLine = {
  id: "paper",
  process: "colour-paper",
  baths: [
    {
      id: "paper-developer",
      role: "developer",
      volumeL: 28,
      setTemperatureC: 35,
      timeMin: 0.75,
      rateMlPerM2: 160,
      settingMlPerStroke: 10,
    },
    {
      id: "paper-stop",
      role: "stop bath",
      volumeL: 14,
      setTemperatureC: 33,
      timeMin: 0.33,
      rateMlPerM2: 200,
      settingMlPerStroke: 10,
    },
    {
      id: "paper-bleach-fix",
      role: "bleach-fix",
      volumeL: 28,
      setTemperatureC: 35,
      timeMin: 0.75,
      rateMlPerM2: 215,
      settingMlPerStroke: 10,
    },
    { id: "paper-wash", role: "wash", volumeL: 40, setTemperatureC: 33, timeMin: 1.5 },
  ],
  areaM2PerDay: 18,
  formats: [
    { format: "10x15cm", share: 0.9 },
    { format: "13x18cm", share: 0.08 },
    { format: "20x30cm", share: 0.02 },
  ],
  reference: {
    dMin: densities([0.1, 0.11, 0.1]),
    ld: densities([0.78, 0.8, 0.77]),
    hd: densities([1.62, 1.66, 1.6]),
    dMax: densities([2.46, 2.44, 2.28]),
  },
  startUp: "07:20",
};

/** The two lines the simulated lab has unless others are given. */
export const simulatedLines: readonly SimulatedLine[] = [film, paper];
