import { InputError, requireObject } from "../../input/index.ts";
import { type BathTemperatureLimits, requireBathTemperature } from "./bath-temperature.ts";
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

/** The developing time that another temperature asks for. */
export interface CompensatedTime {
  /** The time at the new temperature, minutes. */
  readonly timeMin: number;
  /** New time over given time. */
  readonly timeFactor: number;
  readonly givenTimeMin: number;
  readonly fromTemperatureC: number;
  readonly toTemperatureC: number;
  /** The time other factors per 10 °C would have given. */
  readonly alternatives: readonly {
    readonly factorPerTenDegrees: number;
    readonly timeMin: number;
  }[];
  /** Shortest and longest of the alternatives, minutes. */
  readonly shortestMin: number;
  readonly longestMin: number;
  readonly modelDescription: string;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * The developing time at another temperature that gives the same development.
 *
 * t2 = t1 · r(T1)/r(T2), with r the relative rate of the model
 *
 * @param input.timeMin time that is right at `fromTemperatureC`, minutes, greater than 0
 * @param input.fromTemperatureC temperature the time belongs to, °C
 * @param input.toTemperatureC temperature of the bath, °C
 * @param input.model rate model; without one the default (factor 2 per 10 °C) is used and said
 * @param input.handling @param input.evenDevelopment how short the time may be
 * @param input.bathLimits coldest and hottest bath allowed, °C
 * @returns the time in minutes, what factors per 10 °C from 1.4 to 3.0 would have given, warnings
 * and assumptions
 * @throws InputError for a temperature in °F, out of the model's reach or hotter than the emulsion
 * stands, and for a time too short for even development
 *
 * @example
 * const model = activationEnergyModel({ activationEnergyKJPerMol: 60 })
 * compensateTime({ timeMin: 8, fromTemperatureC: 20, toTemperatureC: 24, model }).timeMin // => 5.743524
 *
 * Source: Arrhenius equation, IUPAC Gold Book A00446; span of coefficients from Kodak publication
 * F-32, part 2.
 */
export function compensateTime(
  input: {
    readonly timeMin: number;
    readonly fromTemperatureC: number;
    readonly toTemperatureC: number;
    readonly model?: RateModel;
    readonly bathLimits?: BathTemperatureLimits;
  } & EvenDevelopmentChoice,
): CompensatedTime {
  const where = "compensateTime";
  requireObject(
    where,
    "input",
    input,
    "an object with timeMin, fromTemperatureC and toTemperatureC",
  );
  if (input.model !== undefined) requireRateModel(where, input.model);
  const given = requireMinutes(where, "timeMin", input.timeMin);
  const from = requireBathTemperature(
    where,
    "fromTemperatureC",
    input.fromTemperatureC,
    input.bathLimits,
  );
  const to = requireBathTemperature(
    where,
    "toTemperatureC",
    input.toTemperatureC,
    input.bathLimits,
  );
  const model = input.model ?? defaultRateModel({ referenceTemperatureC: from });
  requireWithinReach(where, "fromTemperatureC", from, model);
  requireWithinReach(where, "toTemperatureC", to, model);
  const timeFactor = model.relativeRate(from) / model.relativeRate(to);
  const timeMin = given * timeFactor;
  if (!Number.isFinite(timeMin)) {
    throw new InputError(where, "timeMin", given, "write a time in minutes that can be measured");
  }
  const alternatives = publishedFactorSpan.shown.map((factorPerTenDegrees) => ({
    factorPerTenDegrees,
    timeMin: given * factorPerTenDegrees ** ((from - to) / 10),
  }));
  const times = alternatives.map((each) => each.timeMin);
  const shortestMin = Math.min(...times);
  const longestMin = Math.max(...times);
  const warnings = [
    ...rangeWarnings(model, [from, to]),
    ...evenDevelopmentWarnings(where, "timeMin at toTemperatureC", timeMin, input),
  ];
  if (input.model === undefined && longestMin - shortestMin > 0.1 * timeMin) {
    warnings.push(
      `without a table of this film and developer the time may lie anywhere from ${shown(shortestMin)} to ${shown(longestMin)} min`,
    );
  }
  return {
    timeMin,
    timeFactor,
    givenTimeMin: given,
    fromTemperatureC: from,
    toTemperatureC: to,
    alternatives,
    shortestMin,
    longestMin,
    modelDescription: model.description,
    assumptions: model.assumptions,
    warnings,
  };
}
