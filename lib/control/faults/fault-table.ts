import type { LimitOrigin } from "../process/process-limits.ts";
import type { Colour } from "../strip.ts";

/** Numbers by parameter and colour; what is left out is not known. */
export type ByParameterAndColour = Readonly<
  Record<string, Readonly<Partial<Record<Colour, number>>>>
>;

/** A direction that a publication gives. */
export interface PublishedSign {
  /** Id of the parameter in the process specification. */
  readonly parameter: string;
  readonly sign: "+" | "-";
  /** `"implied"` where the publication says it without printing it. */
  readonly as: "printed" | "implied";
  readonly source: string;
  readonly howObtained: LimitOrigin;
}

/** A way in which a signature may vary: a shape of which there may be more or less, either way. */
export interface FreeShape {
  readonly shape: ByParameterAndColour;
  /** One amount for all colours, or each colour its own. */
  readonly colours: "together" | "each";
  /** Standard deviation of the amount, in density per unit of the shape. */
  readonly sd: number;
}

/** A signature estimated from the lab's own episodes, or given whole. */
export interface WholeSignature {
  readonly components: readonly { readonly parameter: string; readonly colour: Colour }[];
  /** Densities at size 1, one for each component. */
  readonly mean: readonly number[];
  /** How far one episode's pattern lies from the mean, as covariance at size 1. */
  readonly covariance: readonly (readonly number[])[];
}

/** What a fault, or several that cannot be told apart, does to the densities. */
export interface FaultPattern {
  readonly words: string;
  /** Densities relative to each other; an empty shape is a pattern that may go either way. */
  readonly shape: ByParameterAndColour;
  /** Where the sizes are from. Directions have their own source. */
  readonly howObtained: LimitOrigin;
  readonly published: readonly PublishedSign[];
  readonly factors?: readonly FreeShape[];
  /** Where it differs from the table's: an instrument's fault is known better than a chemical one. */
  readonly scatter?: Partial<PatternScatter>;
  /** Takes the place of shape and factors. */
  readonly whole?: WholeSignature;
}

/** How a fault comes: all at once, little by little, or on one strip only. Weights that sum to 1. */
export interface FaultCourse {
  readonly step: number;
  readonly gradual: number;
  readonly singleStrip: number;
}

/** One fault of a process. */
export interface FaultEntry {
  readonly id: string;
  readonly name: string;
  /** Id of its pattern; faults of one pattern are not told apart by densities. */
  readonly pattern: string;
  readonly course: FaultCourse;
  /** Where to look: a bath, `"densitometer"` or `"strip"`. */
  readonly place: string;
  /** How it is confirmed. */
  readonly confirm: string;
  /** What is done once it is confirmed. */
  readonly remedy: string;
}

/** How far the pattern of one episode may lie from its table's, as shares. */
export interface PatternScatter {
  /** Share by which a whole parameter may differ where its direction is printed. */
  readonly printed: number;
  /** The same where the direction is only implied. */
  readonly implied: number;
  /** The same where nothing is published. */
  readonly unprinted: number;
  /** Share by which one colour may differ from the others. */
  readonly colours: number;
  /** Share of the limit by which a parameter may differ, colours together, where nothing is published. */
  readonly open: number;
  /** Share of the limit by which any one reading may differ. */
  readonly floor: number;
}

/** The faults of one process with their signatures. */
export interface FaultTable {
  /** Id of the process. */
  readonly process: string;
  readonly name: string;
  readonly note: string;
  /** Limit by parameter, density: what size 1 is measured by where a strip lacks the parameter. */
  readonly limits: Readonly<Record<string, number>>;
  readonly scatter: PatternScatter;
  readonly patterns: Readonly<Record<string, FaultPattern>>;
  readonly faults: readonly FaultEntry[];
}
