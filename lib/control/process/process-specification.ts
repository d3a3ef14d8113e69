import type { Colour } from "../strip.ts";
import type { LimitOrigin, ProcessLimits } from "./process-limits.ts";

interface ParameterBase {
  /** Short name for programs: `"ld"`. */
  readonly id: string;
  /** The trade's name, for people: `"LD (speed)"`. */
  readonly name: string;
  readonly limits: ProcessLimits;
}

/** The deviation of one patch, per colour: D-min, LD, D-max. */
export interface PatchParameter extends ParameterBase {
  readonly kind: "patch";
  readonly patch: string;
  readonly colours: readonly Colour[];
}

/** The deviation of a difference of two patches, per colour: HD − LD, D-max(B) − Y(B). */
export interface DifferenceParameter extends ParameterBase {
  readonly kind: "difference";
  readonly patch: string;
  readonly minus: string;
  readonly colours: readonly Colour[];
}

/** The spread of another parameter's colour deviations: largest minus smallest. */
export interface SpreadParameter extends ParameterBase {
  readonly kind: "spread";
  /** Id of the patch or difference parameter whose colours are compared. */
  readonly of: string;
}

export type ParameterSpecification = PatchParameter | DifferenceParameter | SpreadParameter;

/** What is read on a process's strips, which parameters are plotted, and their published limits. */
export interface ProcessSpecification {
  readonly id: string;
  readonly name: string;
  /** Whether strips are read by transmission (film) or reflection (paper). */
  readonly geometry: "transmission" | "reflection";
  /** Densitometer response, e.g. `"ISO 5-3 status M"`. */
  readonly densityStatus: string;
  /** Each patch of the strip in words. */
  readonly patches: Readonly<Record<string, string>>;
  readonly parameters: readonly ParameterSpecification[];
  readonly source: string;
  readonly howObtained: LimitOrigin;
}
