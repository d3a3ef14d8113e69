import { InputError, requireObject } from "../../input/index.ts";
import { bathAfterCarryIn, type CarryInBath } from "./carry-in.ts";
import { solutionPh } from "./solution-ph.ts";

/** A bath's pH after an area of film. */
export interface BathPhPoint {
  readonly areaM2: number;
  readonly pH: number;
  readonly carriedInShare: number;
}

/** Options of the pH functions of a bath that takes carry-in. */
export type BathPhOptions = CarryInBath & { readonly temperatureC?: number };

/**
 * pH of a bath against the area of film that has carried another solution into it: a stop bath under
 * developer, a developer under an acid or a water bath, a fixer under developer.
 *
 * @param options bath, what is carried in, volume in mL, carry-over in mL/m², temperature in °C
 * @param areasM2 areas at which the pH is wanted, each at least 0
 * @returns one point per area
 * @throws InputError as `bathAfterCarryIn` and `solutionPh`
 *
 * @example
 * bathPhAgainstArea({ bath: bathFormula("acetic-stop-bath"), bathVolumeMl: 1000, carriedIn: bathFormula("print-developer"), carryInMlPerM2: 70 }, [0, 2]).map((point) => Math.round(10 * point.pH) / 10) // => [2.7, 5.8]
 *
 * Source: mass balance of a stirred tank, then charge balance with Davies activities.
 */
export function bathPhAgainstArea(
  options: BathPhOptions,
  areasM2: readonly number[],
): readonly BathPhPoint[] {
  requireObject(
    "bathPhAgainstArea",
    "options",
    options,
    "an object with bath, bathVolumeMl, carriedIn, …",
  );
  if (!Array.isArray(areasM2) || areasM2.length === 0) {
    const advice = "write at least one area in m², such as [0, 1, 2]";
    throw new InputError("bathPhAgainstArea", "areasM2", areasM2, advice);
  }
  return areasM2.map((area) => pointAt(options, area));
}

/** The point at one area. */
export function pointAt(options: BathPhOptions, area: number): BathPhPoint {
  const { composition, carriedInShare } = bathAfterCarryIn(options, area);
  const { pH } = solutionPh(composition, { temperatureC: options.temperatureC ?? 25 });
  return { areaM2: area, pH, carriedInShare };
}
