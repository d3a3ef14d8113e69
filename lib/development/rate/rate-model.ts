import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { shown } from "./shown.ts";

/** Temperatures, in °C, that the evidence behind a rate model covers. */
export interface RateRange {
  readonly minC: number;
  readonly maxC: number;
}

/** The three ways of saying how fast development goes at a temperature. */
export type RateModelKind = "activation-energy" | "factor-per-10-degrees" | "published-table";

/**
 * How fast development goes at a temperature, compared with a reference temperature.
 *
 * A plain object; `relativeRate` is its only function, so everything else is JSON-safe. Every model
 * answers 1 at `referenceTemperatureC`. Within `range` it answers; up to `refuseBeyondC` degrees
 * outside it answers and `rangeWarnings` warns; farther out `relativeRate` throws an InputError.
 */
export interface RateModel {
  readonly kind: RateModelKind;
  /** The temperature in °C at which the relative rate is 1. */
  readonly referenceTemperatureC: number;
  /** The temperatures in °C that the evidence covers. */
  readonly range: RateRange;
  /** How many °C outside `range` an answer is still given, with a warning. */
  readonly refuseBeyondC: number;
  /** One sentence that names the model with its numbers. */
  readonly description: string;
  /** What has to be true for the model to hold. */
  readonly assumptions: readonly string[];
  /** Rate at a temperature in °C over the rate at the reference temperature (greater is faster). */
  relativeRate(temperatureC: number): number;
}

/** Range and reach that a model constructor lets the caller replace. */
export interface RateReach {
  /** The temperatures in °C that the evidence covers. */
  readonly range?: RateRange;
  /** How many °C outside `range` an answer is still given, with a warning (0 refuses at once). */
  readonly refuseBeyondC?: number;
}

/**
 * Warnings for temperatures that lie outside the range a rate model rests on, but within its reach.
 *
 * @param model the rate model
 * @param temperaturesC one or more temperatures, °C
 * @returns one sentence for each temperature outside the range; empty when all lie inside
 * @throws InputError if a temperature is out of the model's reach altogether
 *
 * @example
 * rangeWarnings(factorPerTenDegreesModel({ factorPerTenDegrees: 2 }), [20, 24]).length // => 0
 */
export function rangeWarnings(
  model: RateModel,
  temperaturesC: readonly number[],
): readonly string[] {
  requireRateModel("rangeWarnings", model);
  requireObject("rangeWarnings", "range", model.range, "an object with minC and maxC");
  requireEntries("rangeWarnings", "temperaturesC", temperaturesC, "a list of numbers");
  const { minC, maxC } = model.range;
  return [...new Set(temperaturesC)].flatMap((each) => {
    requireWithinReach("rangeWarnings", "temperatureC", each, model);
    const outside = Math.max(minC - each, each - maxC);
    if (outside <= 0) return [];
    return [
      `${shown(each)} °C lies ${shown(outside)} °C outside the range ${shown(minC)} to ${shown(maxC)} °C that the rate model rests on: the answer is extrapolated`,
    ];
  });
}

/** Lets a rate model in. */
export function requireRateModel(where: string, model: RateModel): void {
  requireObject(where, "model", model, "an object with kind, referenceTemperatureC, range, …");
}

/** Lets a temperature in if the model answers there (range plus reach), and returns it. */
export function requireWithinReach(
  where: string,
  argument: string,
  temperatureC: number,
  model: Pick<RateModel, "range" | "refuseBeyondC">,
): number {
  requireNumber(where, "model.range.minC", model.range?.minC, { unit: "°C" });
  requireNumber(where, "model.range.maxC", model.range?.maxC, { unit: "°C" });
  requireNumber(where, "model.refuseBeyondC", model.refuseBeyondC, { min: 0, unit: "°C" });
  const lowest = model.range.minC - model.refuseBeyondC;
  const highest = model.range.maxC + model.refuseBeyondC;
  if (Number.isFinite(temperatureC) && temperatureC >= lowest && temperatureC <= highest) {
    return temperatureC;
  }
  throw new InputError(
    where,
    argument,
    temperatureC,
    `write a temperature from ${shown(lowest)} to ${shown(highest)} °C: the rate model rests on evidence from ${shown(model.range.minC)} to ${shown(model.range.maxC)} °C and is not stretched more than ${shown(model.refuseBeyondC)} °C beyond it; with evidence farther out, give the model a wider range`,
  );
}
