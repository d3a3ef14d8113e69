/**
 * Molar gas constant R, J/(mol·K).
 *
 * @example
 * molarGasConstant // => 8.314462618
 *
 * Source: CODATA 2018 recommended values (exact since the 2019 revision of the SI).
 */
export const molarGasConstant = 8.31446261815324;

/** Thermodynamic temperature in kelvin of a temperature in °C. */
export function kelvin(temperatureC: number): number {
  return temperatureC + 273.15;
}

/** Temperature in °C of a thermodynamic temperature in kelvin. */
export function celsius(temperatureK: number): number {
  return temperatureK - 273.15;
}
