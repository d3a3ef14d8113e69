import { InputError, requireObject } from "../../input/index.ts";
import { findRoot } from "../../numerics/index.ts";
import { bathTemperatureLimits, requireBathTemperature } from "./bath-temperature.ts";
import { defaultRateModel, publishedFactorSpan } from "./default-rate-model.ts";
import { type EvenDevelopmentChoice, evenDevelopmentWarnings } from "./even-development.ts";
import {
  type RateModel,
  rangeWarnings,
  requireRateModel,
  requireWithinReach,
} from "./rate-model.ts";
import { requireMinutes } from "./require-minutes.ts";
import { shown } from "./shown.ts";

/** The bath temperature that suits a wanted developing time. */
export interface TemperatureForTime {
  readonly temperatureC: number;
  readonly timeMin: number;
  readonly givenTimeMin: number;
  readonly fromTemperatureC: number;
  /** What published coefficients would give instead. */
  readonly alternatives: readonly {
    readonly factorPerTenDegrees: number;
    readonly temperatureC: number;
  }[];
  /** Coldest and warmest of the alternatives, °C. */
  readonly coldestC: number;
  readonly warmestC: number;
  readonly modelDescription: string;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** A spread of the temperature that is said, °C; about a tenth of the time. */
const SPREAD_C = 1;

/**
 * The temperature at which a wanted time gives the same development: the inverse of compensateTime.
 *
 * Solves r(T) = r(T1) · t1/t_wanted for T.
 *
 * @param input.timeMin time that is right at `fromTemperatureC`, minutes
 * @param input.fromTemperatureC temperature that time belongs to, °C
 * @param input.wantedTimeMin time that is wanted, minutes
 * @param input.model rate model; without one the default (factor 2 per 10 °C)
 * @param input.handling @param input.evenDevelopment how short a time may be
 * @returns the temperature in °C, what published coefficients would give instead, warnings and
 * assumptions
 * @throws InputError if no temperature within the model's reach gives the time (the message says
 * which times can be had), or the wanted time is too short for even development
 *
 * @example
 * const model = factorPerTenDegreesModel({ factorPerTenDegrees: 2 })
 * temperatureForTime({ timeMin: 8, fromTemperatureC: 20, wantedTimeMin: 6, model }).temperatureC // => 24.150
 *
 * Source: Arrhenius equation, IUPAC Gold Book A00446.
 */
export function temperatureForTime(
  input: {
    readonly timeMin: number;
    readonly fromTemperatureC: number;
    readonly wantedTimeMin: number;
    readonly model?: RateModel;
  } & EvenDevelopmentChoice,
): TemperatureForTime {
  const where = "temperatureForTime";
  requireObject(
    where,
    "input",
    input,
    "an object with timeMin, fromTemperatureC and wantedTimeMin",
  );
  if (input.model !== undefined) requireRateModel(where, input.model);
  const given = requireMinutes(where, "timeMin", input.timeMin);
  const wanted = requireMinutes(where, "wantedTimeMin", input.wantedTimeMin);
  const from = requireBathTemperature(where, "fromTemperatureC", input.fromTemperatureC);
  const model = input.model ?? defaultRateModel({ referenceTemperatureC: from });
  requireWithinReach(where, "fromTemperatureC", from, model);
  const lower = Math.max(bathTemperatureLimits.minC, model.range.minC - model.refuseBeyondC);
  const upper = Math.min(bathTemperatureLimits.maxC, model.range.maxC + model.refuseBeyondC);
  const timeAt = (t: number) => (given * model.relativeRate(from)) / model.relativeRate(t);
  if (!(wanted >= timeAt(upper) && wanted <= timeAt(lower))) {
    const advice = `write a time from ${shown(timeAt(upper))} to ${shown(timeAt(lower))} min: the rate model answers from ${shown(lower)} to ${shown(upper)} °C only`;
    throw new InputError(where, "wantedTimeMin", wanted, advice);
  }
  const temperatureC = findRoot((t) => Math.log(timeAt(t) / wanted), { lower, upper });
  const alternatives = publishedFactorSpan.shown.map((factorPerTenDegrees) => ({
    factorPerTenDegrees,
    temperatureC: from + (10 * Math.log(given / wanted)) / Math.log(factorPerTenDegrees),
  }));
  const temperatures = alternatives.map((each) => each.temperatureC);
  const coldestC = Math.min(...temperatures);
  const warmestC = Math.max(...temperatures);
  const guessed = input.model === undefined && warmestC - coldestC > SPREAD_C;
  return {
    temperatureC,
    timeMin: wanted,
    givenTimeMin: given,
    fromTemperatureC: from,
    alternatives,
    coldestC,
    warmestC,
    modelDescription: model.description,
    assumptions: model.assumptions,
    warnings: [
      ...rangeWarnings(model, [from, temperatureC]),
      ...evenDevelopmentWarnings(where, "wantedTimeMin", wanted, input),
      ...(guessed
        ? [
            `without a table of this film and developer the temperature may lie anywhere from ${shown(coldestC)} to ${shown(warmestC)} °C`,
          ]
        : []),
    ],
  };
}
