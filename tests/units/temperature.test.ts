import { describe, expect, it } from "vitest";
import {
  celsiusDifferenceFromFahrenheit,
  celsiusFromFahrenheit,
  fahrenheitDifferenceFromCelsius,
  fahrenheitFromCelsius,
} from "wetside/units";

describe("Fahrenheit and Celsius", () => {
  it("agree at −40 and differ by 32 at freezing", () => {
    expect(celsiusFromFahrenheit(-40)).toBe(-40);
    expect(fahrenheitFromCelsius(0)).toBe(32);
  });
  it("tell a temperature from a difference", () => {
    expect(celsiusFromFahrenheit(0.5)).toBeCloseTo(-17.5, 10);
    expect(celsiusDifferenceFromFahrenheit(0.5)).toBeCloseTo(0.27778, 5);
    expect(fahrenheitDifferenceFromCelsius(celsiusDifferenceFromFahrenheit(1.8))).toBeCloseTo(1.8);
  });
  it("refuse what is colder than absolute zero", () => {
    expect(celsiusFromFahrenheit(-459.67)).toBeCloseTo(-273.15, 9);
    expect(() => celsiusFromFahrenheit(-460)).toThrow("at least -459.67 °F");
    expect(() => fahrenheitFromCelsius(-274)).toThrow("at least -273.15 °C");
    expect(() => celsiusDifferenceFromFahrenheit(Number.NaN)).toThrow("NaN");
  });
});
