import { requireObject } from "../../input/index.ts";
import { findRoot } from "../../numerics/index.ts";
import { requireBathTemperature } from "../rate/bath-temperature.ts";
import {
  type RateModel,
  rangeWarnings,
  requireRateModel,
  requireWithinReach,
} from "../rate/rate-model.ts";
import { shown } from "../rate/shown.ts";
import { type AllowedError, allowedDoses } from "./allowed-error.ts";

/** How far a bath may be off. */
export interface TemperatureTolerance {
  readonly temperatureC: number;
  /** How far below and above, °C (both positive); missing where no temperature is too far. */
  readonly belowC?: number;
  readonly aboveC?: number;
  /** The smaller of the two, °C: the ± of a specification. */
  readonly plusMinusC?: number;
  /** Error of dose for one degree, per cent. */
  readonly dosePercentPerDegree: number;
  /** Allowed errors of dose, per cent (the lower one negative). */
  readonly dosePercentBelow?: number;
  readonly dosePercentAbove?: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * How far the temperature of a bath may be off before the allowed error is reached, the time being
 * kept.
 *
 * A bath at T gives the dose t·r(T)/r(T0). Per cent: |r(T)/r(T0) − 1| = p. Contrast:
 * |CI(t·r(T)/r(T0)) − CI(t)| = ΔCI. Density at log exposure L above the foot of the curve:
 * ΔCI = ΔD/L. Both sides are solved for; near T0 an Arrhenius law changes the dose by Ea/(R·T0²) a
 * degree.
 *
 * @param input.model rate model
 * @param input.temperatureC temperature to be kept, °C
 * @param input.allowed `{ timePercent }`, `{ contrast, curve, timeMin }` or
 * `{ density, logExposureAboveThreshold, curve, timeMin }`; the curve holds at `temperatureC`
 * @returns °C below and above, the smaller of them, and the error of dose for one degree
 * @throws InputError for an error that is not positive or a time out of the curve's reach
 *
 * @example
 * const model = activationEnergyModel({ activationEnergyKJPerMol: 60, referenceTemperatureC: 37.8 })
 * temperatureTolerance({ model, temperatureC: 37.8, allowed: { timePercent: 1 } }).plusMinusC // => 0.13338
 *
 * Source: Arrhenius equation, IUPAC Gold Book A00446; contrast as in exponentialApproach.
 */
export function temperatureTolerance(input: {
  readonly model: RateModel;
  readonly temperatureC: number;
  readonly allowed: AllowedError;
}): TemperatureTolerance {
  const where = "temperatureTolerance";
  requireObject(where, "input", input, "an object with model, temperatureC and allowed");
  requireObject(where, "allowed", input.allowed, "an object");
  requireRateModel(where, input.model);
  const { model, allowed } = input;
  const center = requireBathTemperature(where, "temperatureC", input.temperatureC);
  requireWithinReach(where, "temperatureC", center, model);
  const rate = model.relativeRate(center);
  const ratioAt = (t: number) => model.relativeRate(t) / rate;
  const { least, most } = allowedDoses(where, allowed);
  const coldest = model.range.minC - model.refuseBeyondC;
  const hottest = model.range.maxC + model.refuseBeyondC;
  const below =
    least === undefined || ratioAt(coldest) >= least
      ? undefined
      : center - findRoot((t) => ratioAt(t) - least, { lower: coldest, upper: center });
  const above =
    most === undefined || ratioAt(hottest) <= most
      ? undefined
      : findRoot((t) => ratioAt(t) - most, { lower: center, upper: hottest }) - center;
  const sides = [below, above].filter((each) => each !== undefined);
  const step = 1e-3;
  const slope =
    (Math.log(nearby(model, center + step)) - Math.log(nearby(model, center - step))) / (2 * step);
  return {
    temperatureC: center,
    ...(below === undefined ? {} : { belowC: below }),
    ...(above === undefined ? {} : { aboveC: above }),
    ...(sides.length === 0 ? {} : { plusMinusC: Math.min(...sides) }),
    dosePercentPerDegree: 100 * slope,
    ...(least === undefined ? {} : { dosePercentBelow: 100 * (least - 1) }),
    ...(most === undefined ? {} : { dosePercentAbove: 100 * (most - 1) }),
    assumptions: [
      ...model.assumptions,
      "the developing time is kept and nothing else is wrong: other errors must share the same allowance",
    ],
    warnings: [
      ...rangeWarnings(model, [
        center,
        ...(below === undefined ? [] : [center - below]),
        ...(above === undefined ? [] : [center + above]),
      ]),
      ...(sides.length < 2
        ? [
            `on ${sides.length === 1 ? "one side" : "neither side"} is the allowed error reached within the model's reach of ${shown(coldest)} to ${shown(hottest)} °C`,
          ]
        : []),
    ],
  };
}

function nearby(model: RateModel, temperatureC: number): number {
  const low = model.range.minC - model.refuseBeyondC;
  const high = model.range.maxC + model.refuseBeyondC;
  return model.relativeRate(Math.min(Math.max(temperatureC, low), high));
}
