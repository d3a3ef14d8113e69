import {
  type FactorPerTenDegreesModel,
  factorPerTenDegreesModel,
} from "./factor-per-ten-degrees-model.ts";
import type { RateReach } from "./rate-model.ts";

/**
 * Factors per 10 °C met in print: the smallest, the greatest, the one assumed when no model is
 * given, and the ones for which an answer shows alternatives.
 *
 * There is no universal coefficient: one publication alone spans 1.4 to 3.0 over its pairs of film
 * and developer. The default lies in the middle of that publication's fitted series (1.6 to 2.4).
 *
 * @example
 * publishedFactorSpan.lowest // => 1.4
 * publishedFactorSpan.highest // => 3
 *
 * Source: fits of ln t against 1/T to the tables of Kodak publication F-32, part 2 (see
 * data/development/time-temperature.json).
 */
export const publishedFactorSpan = {
  lowest: 1.4,
  highest: 3,
  assumed: 2,
  shown: [1.4, 1.7, 2, 2.5, 3],
} as const;

/**
 * The rate model used when none is given: factor 2 per 10 °C. Replace it by a fit to the table of
 * your own film and developer whenever there is one.
 *
 * @param input.referenceTemperatureC temperature at which the rate is 1, °C, default 20
 * @param input.range @param input.refuseBeyondC as for factorPerTenDegreesModel
 * @returns the model; its assumptions say that the coefficient is a default
 * @throws InputError as factorPerTenDegreesModel
 *
 * @example
 * defaultRateModel().factorPerTenDegrees // => 2
 *
 * Source: middle of the factors fitted to Kodak publication F-32, part 2.
 */
export function defaultRateModel(
  input: { readonly referenceTemperatureC?: number } & RateReach = {},
): FactorPerTenDegreesModel {
  const { lowest, highest, assumed } = publishedFactorSpan;
  const model = factorPerTenDegreesModel({ ...input, factorPerTenDegrees: assumed });
  return {
    ...model,
    assumptions: [
      `no rate model was given: factor ${assumed} per 10 °C is assumed, but published pairs of film and developer span ${lowest} to ${highest}`,
      ...model.assumptions,
    ],
  };
}
