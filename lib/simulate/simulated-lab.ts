import type { Strip, StripBatch } from "../control/index.ts";
import type {
  BathTemperature,
  LineCheck,
  ProductionRow,
  PumpReading,
  RemakesDay,
  WorkEntry,
} from "../records/index.ts";
import type { SimulatedEvent } from "./simulated-event.ts";
import type { CheckedFault, SimulatedFault } from "./simulated-fault.ts";
import type { SimulatedLine } from "./simulated-line.ts";
import type { StripNoise } from "./strip-densities.ts";

/** What to simulate. */
export interface SimulateLabOptions {
  /** A whole number; the same seed gives the same bytes. */
  readonly seed: number;
  /** Days, 1 to 3,660; default 90. */
  readonly days?: number;
  /** First day; default `"2026-05-17"`. */
  readonly from?: string;
  /** Default: a colour-negative and a colour-paper line. */
  readonly lines?: readonly SimulatedLine[];
  /** Faults to switch on, or `"random"`: one that the seed chooses. Default: none. */
  readonly faults?: readonly SimulatedFault[] | "random";
  /** What makes strips differ; default 0.0094 at LD, 0.0115 with the heater and the bath's wander. */
  readonly noise?: Partial<StripNoise>;
  /** Standard deviation of the strength of a mix of replenisher, as a fraction; default 0.01. */
  readonly mixSd?: number;
  /** Days for which a mix of replenisher lasts; default 14. */
  readonly mixEveryDays?: number;
  /** What the lab does itself, such as a fresh bath or a pump set anew. Default: nothing. */
  readonly events?: readonly SimulatedEvent[];
  /** Whether a strip beyond a control limit is run again 13 minutes later; default false. */
  readonly repeatStrips?: boolean;
  /** Whether the last day ends after its start-up strips, before work; default false. */
  readonly endsInTheMorning?: boolean;
  /**
   * Density by which prints are off when twice as many are made again for it, 0.01 to 1: small where
   * people look closely. Default 0.08.
   */
  readonly doublingDensity?: number;
}

/** A simulated lab: logs as a lab keeps them, and the answer, sealed. */
export interface SimulatedLab {
  readonly seed: number;
  readonly from: string;
  readonly days: number;
  readonly lines: readonly SimulatedLine[];
  /** Of all lines, by line and time. */
  readonly strips: readonly Strip[];
  readonly batches: readonly StripBatch[];
  readonly production: readonly ProductionRow[];
  readonly pumps: readonly PumpReading[];
  readonly temperatures: readonly BathTemperature[];
  readonly remakes: readonly RemakesDay[];
  /** Checks of all lines that gave a number, by time. */
  readonly checks: readonly LineCheck[];
  /** Work of all lines that was written down, by time. */
  readonly work: readonly WorkEntry[];
  /** What was wrong: a text for `revealFaults`. Printing or saving the lab gives nothing away. */
  readonly sealedAnswer: string;
  readonly assumptions: readonly string[];
}

/** What a simulated lab hid. */
export interface RevealedFault extends CheckedFault {
  /** What it is, in plain words. */
  readonly words: string;
  readonly fromDate: string;
  /** The size with its meaning. */
  readonly sizeWords: string;
  /** The check, other than strips, that gives it away. */
  readonly showsIn: string;
}
