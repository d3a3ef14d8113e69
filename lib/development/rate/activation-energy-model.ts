import { requireNumber, requireObject } from "../../input/index.ts";
import { requireBathTemperature } from "./bath-temperature.ts";
import { kelvin, molarGasConstant } from "./kelvin.ts";
import { type RateModel, type RateReach, requireWithinReach } from "./rate-model.ts";
import { checkedReach } from "./rate-reach.ts";
import { shown } from "./shown.ts";

/** An Arrhenius law with its energy. */
export interface ActivationEnergyModel extends RateModel {
  readonly kind: "activation-energy";
  readonly activationEnergyKJPerMol: number;
}

/**
 * A rate model from an activation energy (Arrhenius law).
 *
 * relative rate = exp( Ea/R · (1/T_ref − 1/T) ), temperatures in kelvin
 *
 * @param input.activationEnergyKJPerMol energy Ea, kJ/mol, greater than 0 and at most 200
 * (development of films lies near 20 to 90)
 * @param input.referenceTemperatureC temperature at which the rate is 1, °C, default 20
 * @param input.range temperatures the evidence covers, °C; default as defaultRateReach
 * @param input.refuseBeyondC how many °C outside the range an answer is still given, default 6
 * @returns the model
 * @throws InputError for an energy outside its bounds (a value in J/mol is pointed out) or a bad range
 *
 * @example
 * activationEnergyModel({ activationEnergyKJPerMol: 60 }).relativeRate(24) // => 1.392873
 *
 * Source: Arrhenius equation, IUPAC Gold Book, entry A00446; R of CODATA 2018.
 */
export function activationEnergyModel(
  input: {
    readonly activationEnergyKJPerMol: number;
    readonly referenceTemperatureC?: number;
  } & RateReach,
): ActivationEnergyModel {
  const where = "activationEnergyModel";
  requireObject(where, "input", input, "an object with activationEnergyKJPerMol");
  const energy = requireNumber(where, "activationEnergyKJPerMol", input.activationEnergyKJPerMol, {
    above: 0,
    max: 200,
    unit: "kJ/mol",
    hint: "60000 J/mol is 60 kJ/mol",
  });
  const reference = input.referenceTemperatureC ?? 20;
  requireBathTemperature(where, "referenceTemperatureC", reference);
  const reach = checkedReach(where, reference, input);
  const scale = (energy * 1000) / molarGasConstant;
  return {
    kind: "activation-energy",
    activationEnergyKJPerMol: energy,
    referenceTemperatureC: reference,
    ...reach,
    description: `activation energy ${shown(energy)} kJ/mol, rate 1 at ${shown(reference)} °C`,
    assumptions: [
      "one activation energy holds over the whole range (Arrhenius law)",
      "contrast depends on temperature only through the rate: all layers and both shadows and highlights keep step",
    ],
    relativeRate(temperatureC: number): number {
      requireWithinReach("relativeRate", "temperatureC", temperatureC, reach);
      return Math.exp(scale * (1 / kelvin(reference) - 1 / kelvin(temperatureC)));
    },
  };
}
