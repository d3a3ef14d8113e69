import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { requireBathTemperature } from "./bath-temperature.ts";
import { kelvin, molarGasConstant } from "./kelvin.ts";

/** Two temperatures, °C, between which a factor per 10 °C is meant. */
export type TemperaturePair = readonly [number, number];

/**
 * The activation energy that a factor per 10 °C stands for between two temperatures.
 *
 * Ea = R·ln(Q)·(T2 − T1)/10 / (1/T1 − 1/T2), in kelvin; for T2 = T1 + 10 that is R·ln(Q)·T1·T2/10
 *
 * @param input.factorPerTenDegrees factor Q, greater than 0
 * @param input.betweenC the two temperatures, °C, default [15, 25]: an Arrhenius law has no one
 * factor, it falls slowly with temperature
 * @returns kJ/mol
 * @throws InputError for equal temperatures or a factor that is not positive
 *
 * @example
 * activationEnergyFromFactor({ factorPerTenDegrees: 2 }) // => 49.5123
 *
 * Source: Arrhenius equation, IUPAC Gold Book A00446.
 */
export function activationEnergyFromFactor(input: {
  readonly factorPerTenDegrees: number;
  readonly betweenC?: TemperaturePair;
}): number {
  const where = "activationEnergyFromFactor";
  requireObject(where, "input", input, "an object with factorPerTenDegrees");
  const factor = requireNumber(where, "factorPerTenDegrees", input.factorPerTenDegrees, {
    above: 0,
  });
  const [low, high] = checkedPair(where, input.betweenC ?? [15, 25]);
  const perTen = Math.log(factor) / 10;
  return ((molarGasConstant / 1000) * perTen * (high - low)) / inverseStep(low, high);
}

/**
 * The factor per 10 °C that an activation energy stands for between two temperatures.
 *
 * Q = exp[ (Ea/R)·(1/T1 − 1/T2)·10/(T2 − T1) ]
 *
 * @param input.activationEnergyKJPerMol energy, kJ/mol, at least 0
 * @param input.betweenC the two temperatures, °C, default [15, 25]
 * @returns the factor
 * @throws InputError for equal temperatures or a negative energy
 *
 * @example
 * factorFromActivationEnergy({ activationEnergyKJPerMol: 60 }) // => 2.316297
 *
 * Source: Arrhenius equation, IUPAC Gold Book A00446.
 */
export function factorFromActivationEnergy(input: {
  readonly activationEnergyKJPerMol: number;
  readonly betweenC?: TemperaturePair;
}): number {
  const where = "factorFromActivationEnergy";
  requireObject(where, "input", input, "an object with activationEnergyKJPerMol");
  const energy = requireNumber(where, "activationEnergyKJPerMol", input.activationEnergyKJPerMol, {
    min: 0,
    max: 200,
    unit: "kJ/mol",
  });
  const [low, high] = checkedPair(where, input.betweenC ?? [15, 25]);
  const rise = ((energy * 1000) / molarGasConstant) * inverseStep(low, high);
  return Math.exp((10 * rise) / (high - low));
}

function inverseStep(low: number, high: number): number {
  return 1 / kelvin(low) - 1 / kelvin(high);
}

function checkedPair(where: string, pair: TemperaturePair): TemperaturePair {
  const [low, high] = pair;
  requireBathTemperature(where, "betweenC[0]", low);
  requireBathTemperature(where, "betweenC[1]", high);
  if (low === high) {
    throw new InputError(where, "betweenC", pair, "write two different temperatures in °C");
  }
  return pair;
}
