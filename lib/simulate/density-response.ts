import response from "../../data/simulate/density-response.json" with { type: "json" };
import { InputError } from "../input/index.ts";

/** Red, green and blue, in that order. */
export type ThreeDensities = readonly [red: number, green: number, blue: number];

/** What in a line the densities of a strip answer to. */
export const densityCauses = [
  "developingAgent",
  "bromide",
  "alkali",
  "development",
  "temperature",
  "fixerInDeveloper",
  "bleachInDeveloper",
  "bleachWeakness",
  "fixerWeakness",
  "washWeakness",
  "densitometer",
  "mishandledStrip",
] as const;
export type DensityCause = (typeof densityCauses)[number];

/** How every patch answers to one cause. */
export interface DensityAnswer {
  /** What one unit of the cause is. */
  readonly unit: string;
  readonly source: string;
  readonly howObtained: string;
  /** Density by patch and colour for one unit of the cause. */
  readonly densities: Readonly<Record<string, ThreeDensities>>;
}

/** A line's whole state as seen by a strip: each cause with its size, 0 where nothing is amiss. */
export type StripCauses = Readonly<Partial<Record<DensityCause, number>>>;

/** Illustrative answers by process and cause: directions published where they are, sizes made up. */
export const densityResponses = response.processes as unknown as Readonly<
  Record<string, Readonly<Record<DensityCause, DensityAnswer>>>
>;

/** The answers of one process, or an error that names those there are. */
export function densityResponseOf(
  where: string,
  process: string,
): Readonly<Record<DensityCause, DensityAnswer>> {
  const found = Object.hasOwn(densityResponses, process) ? densityResponses[process] : undefined;
  if (found !== undefined) return found;
  const known = Object.keys(densityResponses).map((id) => JSON.stringify(id));
  throw new InputError(where, "process", process, `write one of ${known.join(", ")}`);
}
