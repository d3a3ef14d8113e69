import { requireNumber } from "../../input/index.ts";

/**
 * Density of air-free water at 1 atm.
 *
 * ρ = (a0 + a1·t + … + a5·t⁵) / (1 + b·t), Kell's equation
 *
 * @param temperatureC °C, from 0 to 100
 * @returns g/mL, within 4e-6 of newer tables
 * @throws InputError outside that range
 *
 * @example
 * waterDensityGPerMl(20) // => 0.998204
 *
 * Source: G. S. Kell, J. Chem. Eng. Data 20 (1975) 97–105, equation 16.
 */
export function waterDensityGPerMl(temperatureC: number): number {
  const t = requireNumber("waterDensityGPerMl", "temperatureC", temperatureC, {
    min: 0,
    max: 100,
    unit: "°C",
  });
  const top =
    999.83952 +
    t *
      (16.945176 +
        t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))));
  return top / (1 + 16.87985e-3 * t) / 1000;
}
