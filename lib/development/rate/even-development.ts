import { InputError, requireNumber, requireObject, requireOneOf } from "../../input/index.ts";
import { formatMinutes } from "../../units/index.ts";
import { shown } from "./shown.ts";

/** How the material is handled, which decides how short a developing time can be. */
export type Handling = "tank by hand" | "tray print" | "machine";

/** Times in minutes below which development is warned of as uneven, and refused. */
export interface EvenDevelopmentLimits {
  readonly warnBelowMin: number;
  readonly refuseBelowMin: number;
}

/**
 * Shortest developing times by handling, minutes: below the first a warning, below the second
 * refused. All common practice without source; functions that use them take others.
 *
 * In a tank by hand, filling and emptying take a good part of a minute, so under 5 minutes parts of
 * a film differ, and under 2 minutes pouring is a quarter or more of the whole. (Colour processes
 * of about 3 minutes are run by hand, with this warning.)
 *
 * @example
 * evenDevelopmentLimits["tank by hand"].warnBelowMin // => 5
 */
export const evenDevelopmentLimits: Readonly<Record<Handling, EvenDevelopmentLimits>> = {
  "tank by hand": { warnBelowMin: 5, refuseBelowMin: 2 },
  "tray print": { warnBelowMin: 1, refuseBelowMin: 0.5 },
  machine: { warnBelowMin: 0.25, refuseBelowMin: 0.1 },
};

/** How short a time may be: by the handling, or by limits of the caller's own. */
export interface EvenDevelopmentChoice {
  /** How the material is handled, default "tank by hand". */
  readonly handling?: Handling;
  /** Limits in place of those of `handling`. */
  readonly evenDevelopment?: EvenDevelopmentLimits;
}

/**
 * Warns of a developing time that is too short to be even, and refuses one far too short.
 *
 * @param where name of the public function, for the message
 * @param argument name of the argument that led to the time, for the message
 * @param timeMin developing time, minutes
 * @param choice handling (default "tank by hand") or limits of one's own
 * @returns warnings, empty when the time is long enough
 * @throws InputError if the time is below the refused limit
 *
 * @example
 * evenDevelopmentWarnings("compensateTime", "toTemperatureC", 6.5, {}).length // => 0
 */
export function evenDevelopmentWarnings(
  where: string,
  argument: string,
  timeMin: number,
  choice: EvenDevelopmentChoice,
): readonly string[] {
  requireObject("evenDevelopmentWarnings", "choice", choice, "an object");
  const handling = requireOneOf(where, "handling", choice.handling ?? "tank by hand", [
    "tank by hand",
    "tray print",
    "machine",
  ]);
  const limits = choice.evenDevelopment ?? evenDevelopmentLimits[handling];
  requireNumber(where, "evenDevelopment.warnBelowMin", limits.warnBelowMin, { min: 0 });
  requireNumber(where, "evenDevelopment.refuseBelowMin", limits.refuseBelowMin, { min: 0 });
  if (timeMin < limits.refuseBelowMin) {
    throw new InputError(
      where,
      argument,
      Number(timeMin.toPrecision(4)),
      `write values that lead to at least ${shown(limits.refuseBelowMin)} min: shorter development by "${handling}" is not even; use a cooler bath, a weaker dilution, or limits of your own in evenDevelopment`,
    );
  }
  if (timeMin >= limits.warnBelowMin) return [];
  return [
    `${formatMinutes(timeMin)} is short for "${handling}": below ${shown(limits.warnBelowMin)} min development tends to be uneven; a cooler bath or a weaker dilution gives a longer time`,
  ];
}
