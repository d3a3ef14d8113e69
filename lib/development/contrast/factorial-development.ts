import data from "../../../data/development/factorial-development.json" with { type: "json" };
import { requireNumber, requireObject } from "../../input/index.ts";
import { type EvenDevelopmentChoice, evenDevelopmentWarnings } from "../rate/even-development.ts";

/** A printed factor of the factorial method. */
export interface DevelopmentFactor {
  readonly developer: string;
  readonly factor: number;
  readonly source: string;
  readonly howObtained: string;
}

/**
 * Printed factors by kind of developer (data/development/factorial-development.json). They belong
 * to the plates of their time: a starting point only.
 *
 * @example
 * developmentFactors.find((each) => each.developer === "metol-hydroquinone").factor // => 13
 *
 * Source: Modern Photography in Theory and Practice, chapter VII.
 */
export const developmentFactors: readonly DevelopmentFactor[] = data.factors;

/** A developing time found by the factorial method. */
export interface FactorialDevelopment {
  /** From pouring on the developer to its end, s. */
  readonly totalS: number;
  /** From the first appearance of the image to the end, s. */
  readonly afterAppearanceS: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * Developing time by the factorial method, for material that can be watched by safelight.
 *
 * total = factor · time of appearance, both from pouring on the developer
 *
 * @param input.factor factor of the developer, 1 to 100
 * @param input.appearanceS seconds until the first trace of the image, greater than 0
 * @param input.handling @param input.evenDevelopment how short the time may be, default "tray print"
 * @returns seconds
 * @throws InputError for numbers outside their bounds or a time too short to be even
 *
 * @example
 * factorialDevelopment({ factor: 10, appearanceS: 30 }).totalS // => 300
 *
 * Source: Watkins's method: The Wellington Photographic Handbook, p. 26 (factor 10, 30 s, 5 minutes).
 */
export function factorialDevelopment(
  input: { readonly factor: number; readonly appearanceS: number } & EvenDevelopmentChoice,
): FactorialDevelopment {
  const where = "factorialDevelopment";
  requireObject(where, "input", input, "an object with factor and appearanceS");
  const factor = requireNumber(where, "factor", input.factor, { min: 1, max: 100 });
  const appearanceS = requireNumber(where, "appearanceS", input.appearanceS, {
    above: 0,
    max: 3600,
    unit: "s",
  });
  const totalS = factor * appearanceS;
  const choice = { handling: "tray print" as const, ...input };
  return {
    totalS,
    afterAppearanceS: totalS - appearanceS,
    assumptions: [
      "time of appearance and time of development keep their ratio whatever the temperature and dilution",
    ],
    warnings: evenDevelopmentWarnings(where, "the developing time", totalS / 60, choice),
  };
}
