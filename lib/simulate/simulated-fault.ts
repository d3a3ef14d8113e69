import kinds from "../../data/simulate/fault-kinds.json" with { type: "json" };
import type { DensityCause } from "./density-response.ts";

/** Something that can go wrong in the simulated lab. */
export interface SimulatedFaultKind {
  readonly id: string;
  /** What it is, in plain words. */
  readonly words: string;
  /** What its size counts; sizes are always positive, the kind says in which direction. */
  readonly sizeMeans: string;
  readonly unit: string;
  /** A size that shows about as a lab would meet it. */
  readonly typicalSize: number;
  readonly largestSize: number;
  /** The check, other than strips, that gives it away. */
  readonly showsIn: string;
}

/** Every fault the simulated lab knows, in plain words. */
export const simulatedFaultKinds: readonly SimulatedFaultKind[] = kinds.kinds;

/** The ids of all faults. */
export const simulatedFaultIds: readonly string[] = simulatedFaultKinds.map(({ id }) => id);

/** One fault of a simulated lab, switched on at a moment with a size. */
export interface SimulatedFault {
  /** Id of one of `simulatedFaultKinds`. */
  readonly kind: string;
  /** Id of the line: `"film"` or `"paper"`, or one of the lab's own. */
  readonly line: string;
  /** Day on which it begins, at the start of work; 0 is the first day. */
  readonly fromDay: number;
  /** See `sizeMeans` of its kind; above 0. Default: its typical size. */
  readonly size?: number;
  /** Day on which it is mended; left out, it stays to the end. */
  readonly untilDay?: number;
}

/** A fault with nothing left open. */
export interface CheckedFault {
  readonly kind: string;
  readonly line: string;
  readonly fromDay: number;
  readonly untilDay: number;
  readonly size: number;
}

/** Causes that stand for as long as the fault does, per unit of size; the rest go through the tank. */
export const standingCauses: Readonly<Record<string, { cause: DensityCause; perSize: number }>> = {
  "bleach-weak": { cause: "bleachWeakness", perSize: 1 },
  "fixer-exhausted": { cause: "fixerWeakness", perSize: 1 },
  "wash-poor": { cause: "washWeakness", perSize: 1 },
  "densitometer-at-fault": { cause: "densitometer", perSize: 1 },
};
