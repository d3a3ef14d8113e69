import { requireNumber } from "../../input/index.ts";
import { waterDensityGPerMl } from "../blending/water-density.ts";

const RANGE = { min: 0, max: 100, unit: "°C" } as const;

/**
 * Ionization constant of water, as pKw.
 *
 * log Kw = A + B/T + C/T² + D/T³ + (E + F/T + G/T²)·log ρ
 *
 * @param temperatureC from 0 to 100 °C
 * @returns pKw on the molal scale, no unit
 * @throws InputError outside that range
 *
 * @example
 * waterPkw(25) // => 13.995
 *
 * Source: W. L. Marshall and E. U. Franck, J. Phys. Chem. Ref. Data 10 (1981) 295–304 (coefficients
 * from memory; the result agrees with tabulated pKw to 0.01 from 0 to 60 °C).
 */
export function waterPkw(temperatureC: number): number {
  const celsius = requireNumber("waterPkw", "temperatureC", temperatureC, RANGE);
  const t = celsius + 273.15;
  const density = Math.log10(waterDensityGPerMl(celsius));
  const ionic = -4.098 - 3245.2 / t + 2.2362e5 / t ** 2 - 3.984e7 / t ** 3;
  return -(ionic + (13.957 - 1262.3 / t + 8.5641e5 / t ** 2) * density);
}

/**
 * Slope A of the Debye–Hückel law in water, for decadic logarithms.
 *
 * A = 1.82483·10⁶ √ρ / (ε T)^1.5, ε = 87.740 − 0.40008 t + 9.398·10⁻⁴ t² − 1.410·10⁻⁶ t³
 *
 * @param temperatureC from 0 to 100 °C
 * @returns A in (kg/mol)^½
 * @throws InputError outside that range
 *
 * @example
 * debyeHuckelSlope(25) // => 0.511
 *
 * Source: G. G. Manov, R. G. Bates, W. J. Hamer and S. F. Acree, J. Am. Chem. Soc. 65 (1943) 1765;
 * permittivity of C. G. Malmberg and A. A. Maryott, J. Res. NBS 56 (1956) 1 (both from memory).
 */
export function debyeHuckelSlope(temperatureC: number): number {
  const t = requireNumber("debyeHuckelSlope", "temperatureC", temperatureC, RANGE);
  const permittivity = 87.74 - 0.40008 * t + 9.398e-4 * t ** 2 - 1.41e-6 * t ** 3;
  return (1.82483e6 * Math.sqrt(waterDensityGPerMl(t))) / (permittivity * (t + 273.15)) ** 1.5;
}
