import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { celsiusFromFahrenheit } from "../../units/index.ts";
import { waterDensityGPerMl } from "../blending/water-density.ts";

/** The two temperatures of a specific-gravity scale, printed on the stem. */
export interface HydrometerScale {
  /** Temperature of the liquid at which the scale is right, °C. */
  readonly liquidC: number;
  /** Temperature of the water that has the gravity 1, °C. */
  readonly waterC: number;
}

/** Cubic expansion of soda-lime glass per °C; from memory (25e-6 is the usual figure). */
const GLASS_EXPANSION_PER_C = 25e-6;

/**
 * Reads the temperatures of a hydrometer's scale.
 *
 * @param text liquid/water: `"20/20"`, `"15.6/15.6"`, `"20/4"` in °C, or `"60/60F"` in °F
 * @returns both temperatures in °C
 * @throws InputError for anything else
 *
 * @example
 * hydrometerScale("60/60F").liquidC // => 15.5555555556
 *
 * Source: notation of specific gravity, d t1/t2.
 */
export function hydrometerScale(text: string): HydrometerScale {
  const found = /^\s*(\d+(?:\.\d+)?)\s*(?:°?[CF])?\s*\/\s*(\d+(?:\.\d+)?)\s*°?([CF]?)\s*$/i.exec(
    text,
  );
  if (!found) {
    const advice = 'write liquid/water as on the stem: "20/20", "15.6/15.6", "20/4" or "60/60F"';
    throw new InputError("hydrometerScale", "text", text, advice);
  }
  const fahrenheit = /f/i.test(found[3] ?? "");
  const [liquidC = 0, waterC = 0] = [found[1], found[2]].map((part) => {
    const value = fahrenheit ? celsiusFromFahrenheit(Number(part)) : Number(part);
    const hint = fahrenheit ? "" : 'write "60/60F" for Fahrenheit';
    return requireNumber("hydrometerScale", "temperature", value, { min: 0, max: 45, hint });
  });
  return { liquidC, waterC };
}

/**
 * Density of a liquid from a hydrometer's reading, at the temperature at which it floats.
 *
 * ρ(t) = S · ρ_water(t_w) / (1 + γ·(t − t_l)), with γ the expansion of the glass
 *
 * @param given.reading specific gravity read at the stem, 0.6 to 2
 * @param given.scale temperatures on the stem, default `"20/20"`
 * @param given.temperatureC temperature of the liquid, °C, 0 to 100
 * @param given.glassExpansionPerC cubic expansion of the hydrometer, default 25e-6 per °C
 * @returns density in g/mL at `temperatureC`
 * @throws InputError for a number out of range or a scale that cannot be read
 *
 * @example
 * densityFromHydrometer({ reading: 1, scale: "20/20", temperatureC: 20 }) // => 0.998204
 *
 * Source: definition of specific gravity; water by Kell (1975); the expansion of soda-lime glass is from memory.
 */
export function densityFromHydrometer(given: {
  readonly reading: number;
  readonly scale?: string;
  readonly temperatureC: number;
  readonly glassExpansionPerC?: number;
}): number {
  const where = "densityFromHydrometer";
  requireObject(where, "given", given, "an object with reading and temperatureC");
  const hint = "a gravity like 1.042, not 42 or 1042";
  const reading = requireNumber(where, "reading", given.reading, { min: 0.6, max: 2, hint });
  const bounds = { min: 0, max: 100, unit: "°C" };
  const t = requireNumber(where, "temperatureC", given.temperatureC, bounds);
  const expansion = requireNumber(
    where,
    "glassExpansionPerC",
    given.glassExpansionPerC ?? GLASS_EXPANSION_PER_C,
    { min: 0, max: 1e-3 },
  );
  const { liquidC, waterC } = hydrometerScale(given.scale ?? "20/20");
  return (reading * waterDensityGPerMl(waterC)) / (1 + expansion * (t - liquidC));
}

/**
 * A hydrometer's reading brought to the temperature of its scale.
 *
 * S_ref = S / (1 + γ·(t − t_l)) · ρ_w(t_l) / ρ_w(t) if the liquid expands as water, or
 * S / (1 + γ·(t − t_l)) · (1 + β·(t − t_l)) with its own expansion β
 *
 * @param given.reading specific gravity read at the stem, 0.6 to 2
 * @param given.scale temperatures on the stem, default `"20/20"`
 * @param given.temperatureC temperature of the liquid, °C, 0 to 100
 * @param given.liquidExpansionPerC cubic expansion of the liquid per °C; without it that of water
 * @returns the gravity that the scale would show at its own temperature
 * @throws InputError for a number out of range or a scale that cannot be read
 *
 * @example
 * gravityAtReference({ reading: 1.04, scale: "20/20", temperatureC: 38 }) // => 1.045
 *
 * Source: as `densityFromHydrometer`.
 */
export function gravityAtReference(given: {
  readonly reading: number;
  readonly scale?: string;
  readonly temperatureC: number;
  readonly liquidExpansionPerC?: number;
}): number {
  requireObject("gravityAtReference", "given", given, "an object with reading and temperatureC");
  const density = densityFromHydrometer(given);
  const { liquidC, waterC } = hydrometerScale(given.scale ?? "20/20");
  const beta = given.liquidExpansionPerC;
  const expansion =
    beta === undefined
      ? waterDensityGPerMl(liquidC) / waterDensityGPerMl(given.temperatureC)
      : 1 +
        requireNumber("gravityAtReference", "liquidExpansionPerC", beta, { min: 0, max: 5e-3 }) *
          (given.temperatureC - liquidC);
  return (density * expansion) / waterDensityGPerMl(waterC);
}
