import { requireNumber } from "../input/index.ts";

const ABSOLUTE_ZERO_C = -273.15;
const ABSOLUTE_ZERO_F = -459.67;

/**
 * A temperature on the Celsius scale from one on the Fahrenheit scale.
 *
 * t(°C) = (t(°F) − 32) · 5/9
 *
 * @param temperatureF °F, at least −459.67
 * @returns °C
 * @throws InputError below absolute zero or for a number that is not finite
 *
 * @example
 * celsiusFromFahrenheit(100) // => 37.7777777778
 *
 * Source: NIST Special Publication 811 (2008), Appendix B.8.
 */
export function celsiusFromFahrenheit(temperatureF: number): number {
  const bounds = { min: ABSOLUTE_ZERO_F, unit: "°F" };
  return (
    ((requireNumber("celsiusFromFahrenheit", "temperatureF", temperatureF, bounds) - 32) * 5) / 9
  );
}

/**
 * A temperature on the Fahrenheit scale from one on the Celsius scale.
 *
 * t(°F) = t(°C) · 9/5 + 32
 *
 * @param temperatureC °C, at least −273.15
 * @returns °F
 * @throws InputError below absolute zero or for a number that is not finite
 *
 * @example
 * fahrenheitFromCelsius(20) // => 68
 *
 * Source: NIST Special Publication 811 (2008), Appendix B.8.
 */
export function fahrenheitFromCelsius(temperatureC: number): number {
  const bounds = { min: ABSOLUTE_ZERO_C, unit: "°C" };
  return (
    (requireNumber("fahrenheitFromCelsius", "temperatureC", temperatureC, bounds) * 9) / 5 + 32
  );
}

/**
 * A temperature difference or tolerance in °C from one in °F: no offset, only the size of a degree.
 *
 * Δ(°C) = Δ(°F) · 5/9
 *
 * @param differenceF difference or tolerance in °F, any finite number
 * @returns the difference in °C
 * @throws InputError for a number that is not finite
 *
 * @example
 * celsiusDifferenceFromFahrenheit(0.25) // => 0.1388888889
 *
 * Source: NIST Special Publication 811 (2008), Appendix B.8.
 */
export function celsiusDifferenceFromFahrenheit(differenceF: number): number {
  return (requireNumber("celsiusDifferenceFromFahrenheit", "differenceF", differenceF) * 5) / 9;
}

/**
 * A temperature difference or tolerance in °F from one in °C: no offset, only the size of a degree.
 *
 * Δ(°F) = Δ(°C) · 9/5
 *
 * @param differenceC difference or tolerance in °C, any finite number
 * @returns the difference in °F
 * @throws InputError for a number that is not finite
 *
 * @example
 * fahrenheitDifferenceFromCelsius(0.15) // => 0.27
 *
 * Source: NIST Special Publication 811 (2008), Appendix B.8.
 */
export function fahrenheitDifferenceFromCelsius(differenceC: number): number {
  return (requireNumber("fahrenheitDifferenceFromCelsius", "differenceC", differenceC) * 9) / 5;
}
