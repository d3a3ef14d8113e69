import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { correctTank, type TankCorrection } from "../blending/correct-tank.ts";
import { cautionsFor } from "../cautions/cautions-for.ts";
import {
  type HydrometerReading,
  type HydrometerStrength,
  strengthFromHydrometer,
} from "./strength-from-hydrometer.ts";

/** What a hydrometer says of a mix, and what to do. */
export interface HydrometerCheck extends HydrometerStrength {
  readonly target: number;
  /** strength / target − 1. */
  readonly deviation: number;
  readonly verdict: "within tolerance" | "too strong" | "too weak";
  readonly correction: TankCorrection;
  readonly cautions: readonly string[];
}

/** Half a division of a hydrometer marked in thousandths. */
const READABLE = 0.0005;

/**
 * Checks a mix by hydrometer and works out the water or concentrate that corrects it within the tank.
 *
 * Strength as `strengthFromHydrometer`; within tolerance when |strength / target − 1| ≤ tolerance;
 * otherwise the correction as `correctTank`: water if too strong, concentrate if too weak.
 *
 * @param given.reading and what it is compared with, as `strengthFromHydrometer`
 * @param given.target strength wanted, above 0, in the points' unit (or g/L with a substance)
 * @param given.tolerance largest relative deviation left alone; default 0.05
 * @param given.tankMl what the tank holds when full, mL
 * @param given.presentMl what is in it now, mL; default full
 * @param given.concentrateStrength strength of the concentrate that corrects a weak mix, same unit
 * @param given.dump allow part of the bath to be dumped first
 * @returns strength, deviation, verdict and correction
 * @throws InputError if a weak mix has no concentrate named, or the correction would overfill the tank
 *
 * @example
 * hydrometerCheck({ reading: 1.044, temperatureC: 20, points: [{ specificGravity: 1, strength: 0 }, { specificGravity: 1.05, strength: 1.25 }], target: 1, tankMl: 12000, presentMl: 10000 }).correction.addMl // => 1000
 *
 * Source: mass balance. That a hydrometer shows mixing errors of 5 % and more, read to 0.0005: Kodak
 * publication CIS-61 (May 2010), p. 1.
 */
export function hydrometerCheck(
  given: HydrometerReading & {
    readonly target: number;
    readonly tolerance?: number;
    readonly tankMl: number;
    readonly presentMl?: number;
    readonly concentrateStrength?: number;
    readonly dump?: boolean;
  },
): HydrometerCheck {
  const where = "hydrometerCheck";
  requireObject(where, "given", given, "an object with reading, temperatureC, target, …");
  const target = requireNumber(where, "target", given.target, { above: 0, max: 1e12 });
  const bounds = { min: 0, below: 1 };
  const tolerance = requireNumber(where, "tolerance", given.tolerance ?? 0.05, bounds);
  const found = strengthFromHydrometer(given);
  const deviation = found.strength / target - 1;
  const within = Math.abs(deviation) <= tolerance;
  const weak = deviation < 0;
  if (!within && weak && given.concentrateStrength === undefined) {
    const advice = "write the strength of the concentrate that is to correct the weak mix";
    throw new InputError(where, "concentrateStrength", undefined, advice);
  }
  const correction = correctTank({
    tankMl: given.tankMl,
    ...(given.presentMl === undefined ? {} : { presentMl: given.presentMl }),
    strength: within ? target : found.strength,
    target,
    addStrength: within || !weak ? 0 : (given.concentrateStrength ?? 0),
    ...(given.dump === undefined ? {} : { dump: given.dump }),
  });
  const readable = Math.abs(found.perThousandth * READABLE * 1000) / target;
  const coarse = readable > tolerance / 2;
  const percent = Number((readable * 100).toPrecision(3));
  return {
    ...found,
    target,
    deviation,
    verdict: within ? "within tolerance" : weak ? "too weak" : "too strong",
    correction,
    cautions: cautionsFor(given.substance === undefined ? [] : [given.substance]),
    warnings: coarse
      ? [...found.warnings, `a hydrometer read to 0.0005 leaves ± ${percent} % here`]
      : found.warnings,
  };
}
