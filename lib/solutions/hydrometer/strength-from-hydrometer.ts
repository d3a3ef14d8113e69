import { InputError, requireObject } from "../../input/index.ts";
import { celsiusFromFahrenheit } from "../../units/index.ts";
import { massPercentFromDensity } from "../blending/mass-percent-from-density.ts";
import { solutionDensity } from "../blending/solution-density.ts";
import { densityFromHydrometer, gravityAtReference, hydrometerScale } from "./hydrometer-scale.ts";
import { type GravityPoint, strengthFromGravity } from "./strength-from-gravity.ts";

/** A reading of a hydrometer, and what its liquid is compared with. */
export interface HydrometerReading {
  /** Specific gravity read at the stem. */
  readonly reading: number;
  /** Temperatures on the stem; default `"20/20"`. */
  readonly scale?: string;
  /** Temperature of the liquid, °C. */
  readonly temperatureC: number;
  /** Two or more mixes of known strength; or instead: */
  readonly points?: readonly GravityPoint[];
  /** the one substance dissolved, as in `solutionDensity`. */
  readonly substance?: string;
  /** Cubic expansion of the liquid per °C, with `points`; without it that of water. */
  readonly liquidExpansionPerC?: number;
  readonly extrapolate?: boolean;
  /** Strengths to look between, per cent by mass, with `substance`. */
  readonly between?: readonly [low: number, high: number];
}

/** Strength of a liquid by hydrometer. */
export interface HydrometerStrength {
  /** The gravity brought to the scale's own temperature. */
  readonly specificGravity: number;
  /** With points: in their unit. With a substance: g/L at the scale's temperature. */
  readonly strength: number;
  /** Per cent by mass, with a substance; otherwise null. */
  readonly massPercent: number | null;
  /** How much one thousandth of gravity changes the strength. */
  readonly perThousandth: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * Strength of a mix from a hydrometer, corrected for temperature: against two known points, or by the
 * density of one dissolved substance.
 *
 * With points the gravity is brought to the scale's temperature first; with a substance the density at
 * the liquid's own temperature is solved for the strength, so no expansion has to be assumed.
 *
 * @param given see {@link HydrometerReading}; give either `points` or `substance`
 * @returns strength, gravity at the scale's temperature, and what a thousandth is worth
 * @throws InputError for neither or both of `points` and `substance`, and as the functions it uses
 *
 * @example
 * strengthFromHydrometer({ reading: 1.04, temperatureC: 20, points: [{ specificGravity: 1, strength: 0 }, { specificGravity: 1.05, strength: 1 }] }).strength // => 0.8
 *
 * Source: as `gravityAtReference`, `strengthFromGravity` and `solutionDensity`.
 */
export function strengthFromHydrometer(given: HydrometerReading): HydrometerStrength {
  requireObject(
    "strengthFromHydrometer",
    "given",
    given,
    "an object with reading and temperatureC",
  );
  if ((given.points === undefined) === (given.substance === undefined)) {
    const advice = 'write either points, two known mixes, or substance, like "sodium thiosulfate"';
    throw new InputError("strengthFromHydrometer", "points", given.points, advice);
  }
  const found =
    given.substance === undefined
      ? byPoints(given, given.points ?? [])
      : bySubstance(given, given.substance);
  return { ...found, warnings: [...found.warnings, ...hotWarnings(given.temperatureC)] };
}

/** No bath is measured so hot; the thermometer was in Fahrenheit. */
function hotWarnings(temperatureC: number): readonly string[] {
  if (temperatureC <= 50) return [];
  const asC = celsiusFromFahrenheit(temperatureC).toFixed(1);
  return [`${temperatureC} °C is hot for a bath; if it is ${temperatureC} °F, write ${asC}`];
}

function byPoints(given: HydrometerReading, points: readonly GravityPoint[]): HydrometerStrength {
  const specificGravity = gravityAtReference(given);
  const extrapolate = given.extrapolate ?? false;
  const found = strengthFromGravity({ specificGravity, points, extrapolate });
  const { liquidC } = hydrometerScale(given.scale ?? "20/20");
  const moved = given.temperatureC !== liquidC && given.liquidExpansionPerC === undefined;
  return {
    specificGravity,
    ...found,
    massPercent: null,
    assumptions: [
      "strength rises in a straight line between the known points",
      ...(moved
        ? [`the liquid expands as water between ${liquidC} °C and ${given.temperatureC} °C`]
        : []),
    ],
  };
}

function bySubstance(given: HydrometerReading, substance: string): HydrometerStrength {
  const { temperatureC } = given;
  const densityGPerMl = densityFromHydrometer(given);
  const between = given.between === undefined ? {} : { between: given.between };
  const massPercent = massPercentFromDensity({
    substance,
    densityGPerMl,
    temperatureC,
    ...between,
  });
  const { liquidC, waterC } = hydrometerScale(given.scale ?? "20/20");
  const at = (percent: number) =>
    solutionDensity({ substance, massPercent: percent, temperatureC: liquidC });
  const water = solutionDensity({ substance, massPercent: 0, temperatureC: waterC }).densityGPerMl;
  const here = at(massPercent);
  const below = at(Math.max(0, massPercent - 0.5));
  const slope = (here.gPerL - below.gPerL) / ((here.densityGPerMl - below.densityGPerMl) / water);
  return {
    specificGravity: here.densityGPerMl / water,
    strength: here.gPerL,
    massPercent,
    perThousandth: Number.isFinite(slope) ? slope / 1000 : 0,
    assumptions: [`nothing but ${substance} is dissolved`, ...here.assumptions],
    warnings: here.warnings,
  };
}
