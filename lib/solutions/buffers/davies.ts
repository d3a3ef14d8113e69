import { requireNumber } from "../../input/index.ts";
import { debyeHuckelSlope } from "./water-constants.ts";

/** Ionic strength up to which the Davies equation was fitted, mol/kg. */
export const DAVIES_LIMIT = 0.5;

/**
 * Activity coefficient of an ion by the Davies equation.
 *
 * log γ = −A z² (√I/(1 + √I) − 0.3 I)
 *
 * @param charge whole number from −10 to 10, 0 for a molecule (which gives 1)
 * @param ionicStrength mol/kg (mol/L will do), from 0 to 50; fitted up to 0.5
 * @param temperatureC from 0 to 100 °C; 25 if left out
 * @returns γ, no unit
 * @throws InputError for a charge that is not whole, or a negative ionic strength
 *
 * @example
 * daviesActivityCoefficient(1, 0.1) // => 0.78091
 *
 * Source: C. W. Davies, Ion Association, Butterworths 1962, p. 41 (coefficient 0.3).
 */
export function daviesActivityCoefficient(
  charge: number,
  ionicStrength: number,
  temperatureC = 25,
): number {
  const where = "daviesActivityCoefficient";
  const z = requireNumber(where, "charge", charge, { min: -10, max: 10, whole: true });
  const strength = requireNumber(where, "ionicStrength", ionicStrength, { min: 0, max: 50 });
  return 10 ** daviesLog(z, strength, debyeHuckelSlope(temperatureC));
}

/** log γ, for a slope already at hand. */
export function daviesLog(charge: number, ionicStrength: number, slope: number): number {
  const root = Math.sqrt(ionicStrength);
  return -slope * charge ** 2 * (root / (1 + root) - 0.3 * ionicStrength);
}
