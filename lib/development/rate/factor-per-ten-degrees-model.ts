import { requireNumber, requireObject } from "../../input/index.ts";
import { requireBathTemperature } from "./bath-temperature.ts";
import { type RateModel, type RateReach, requireWithinReach } from "./rate-model.ts";
import { checkedReach } from "./rate-reach.ts";
import { shown } from "./shown.ts";

/** A rate that grows by one factor for every ten degrees. */
export interface FactorPerTenDegreesModel extends RateModel {
  readonly kind: "factor-per-10-degrees";
  readonly factorPerTenDegrees: number;
}

/**
 * A rate model from a factor for every 10 °C (the temperature coefficient of older books).
 *
 * relative rate = Q^((T − T_ref)/10)
 *
 * @param input.factorPerTenDegrees factor Q, greater than 1 and at most 6 (films lie near 1.4 to 3)
 * @param input.referenceTemperatureC temperature at which the rate is 1, °C, default 20
 * @param input.range temperatures the evidence covers, °C; default as defaultRateReach
 * @param input.refuseBeyondC how many °C outside the range an answer is still given, default 6
 * @returns the model
 * @throws InputError for a factor outside its bounds or a bad range
 *
 * @example
 * factorPerTenDegreesModel({ factorPerTenDegrees: 2 }).relativeRate(25) // => 1.41421
 *
 * Source: definition of the temperature coefficient Q10.
 */
export function factorPerTenDegreesModel(
  input: {
    readonly factorPerTenDegrees: number;
    readonly referenceTemperatureC?: number;
  } & RateReach,
): FactorPerTenDegreesModel {
  const where = "factorPerTenDegreesModel";
  requireObject(where, "input", input, "an object with factorPerTenDegrees");
  const factor = requireNumber(where, "factorPerTenDegrees", input.factorPerTenDegrees, {
    above: 1,
    max: 6,
    hint: "2 means twice as fast ten degrees warmer",
  });
  const reference = input.referenceTemperatureC ?? 20;
  requireBathTemperature(where, "referenceTemperatureC", reference);
  const reach = checkedReach(where, reference, input);
  return {
    kind: "factor-per-10-degrees",
    factorPerTenDegrees: factor,
    referenceTemperatureC: reference,
    ...reach,
    description: `factor ${shown(factor)} per 10 °C, rate 1 at ${shown(reference)} °C`,
    assumptions: [
      "the rate grows by the same factor for every ten degrees over the whole range",
      "contrast depends on temperature only through the rate: all layers and both shadows and highlights keep step",
    ],
    relativeRate(temperatureC: number): number {
      requireWithinReach("relativeRate", "temperatureC", temperatureC, reach);
      return factor ** ((temperatureC - reference) / 10);
    },
  };
}
