import { requireNumber, requireObject } from "../../input/index.ts";
import { findRoot } from "../../numerics/index.ts";
import {
  type RateModel,
  rangeWarnings,
  requireRateModel,
  requireWithinReach,
} from "../rate/rate-model.ts";
import { shown } from "../rate/shown.ts";
import { accumulatedDose } from "./accumulated-dose.ts";
import type { TemperatureReading } from "./cooling-from-two-readings.ts";
import { loggedTemperatures } from "./logged-temperatures.ts";
import type { TemperatureCourse } from "./temperature-course.ts";

/** How much development a drifting bath has given. */
export interface DevelopmentDose {
  /** Minutes at the model's reference temperature that give the same development. */
  readonly doseMin: number;
  readonly referenceTemperatureC: number;
  /** Bound on the error of the integral, minutes. */
  readonly errorBoundMin: number;
  readonly method: "closed form" | "adaptive quadrature";
  readonly durationMin: number;
  /** The constant temperature that would have given the same dose in the same time, °C. */
  readonly effectiveTemperatureC: number;
  readonly startTemperatureC: number;
  readonly endTemperatureC: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * The dose of development that a bath of changing temperature gives in a time.
 *
 * dose = ∫₀ᵗ r(T(t)) dt, minutes at the reference temperature
 *
 * In closed form for a factor per 10 °C under straight-line, constant or Newton-cooling
 * temperatures, else by adaptive quadrature with an error bound.
 *
 * @param input.model rate model
 * @param input.course the temperature of the bath over time
 * @param input.durationMin minutes from minute 0 of the course, greater than 0
 * @returns the dose in minutes at the model's reference temperature, its error bound, the effective
 * temperature
 * @throws InputError if the bath leaves the model's reach or the duration is not positive
 *
 * @example
 * const model = factorPerTenDegreesModel({ factorPerTenDegrees: 2 })
 * const course = newtonCooling({ startTemperatureC: 24, surroundingsC: 18, ratePerMin: 0.02 })
 * doseUnderCourse({ model, course, durationMin: 8 }).doseMin // => 10.22967
 *
 * Source: Arrhenius equation integrated over time; the closed form rests on the series of the
 * exponential integral (NIST Digital Library of Mathematical Functions, 6.6.2).
 */
export function doseUnderCourse(input: {
  readonly model: RateModel;
  readonly course: TemperatureCourse;
  readonly durationMin: number;
}): DevelopmentDose {
  requireObject("doseUnderCourse", "input", input, "an object with model, course and durationMin");
  requireObject(
    "doseUnderCourse",
    "course",
    input.course,
    "an object with kind, startTemperatureC, lowestC, …",
  );
  requireRateModel("doseUnderCourse", input.model);
  const { model, course } = input;
  const where = "doseUnderCourse";
  const durationMin = requireNumber(where, "durationMin", input.durationMin, {
    above: 0,
    unit: "min",
  });
  const edges = [0, ...course.breakpointsMin.filter((each) => each < durationMin), durationMin];
  const temperatures = edges.map((each) => course.temperatureAt(each));
  for (const each of temperatures) requireWithinReach(where, "course's temperature", each, model);
  const dose = accumulatedDose(model, course, 0, durationMin);
  const known = course.knownUntilMin;
  const held =
    known !== undefined && durationMin > known
      ? [
          `the log ends at ${shown(known)} min; from there its last temperature, ${shown(course.temperatureAt(known))} °C, is assumed`,
        ]
      : [];
  const meanRate = dose.doseMin / durationMin;
  const coldest = temperatures.reduce((low, each) => Math.min(low, each));
  const hottest = temperatures.reduce((high, each) => Math.max(high, each));
  return {
    ...dose,
    referenceTemperatureC: model.referenceTemperatureC,
    durationMin,
    effectiveTemperatureC: temperatureOfRate(model, meanRate, coldest, hottest),
    startTemperatureC: course.temperatureAt(0),
    endTemperatureC: course.temperatureAt(durationMin),
    assumptions: [...model.assumptions, ...course.assumptions],
    warnings: [...rangeWarnings(model, outermost(coldest, hottest, model)), ...held],
  };
}

/**
 * The dose over a logged profile, from its first reading to its last.
 *
 * @param input.model rate model
 * @param input.profile readings { timeMin, temperatureC }, at least two, in order of time
 * @returns as doseUnderCourse
 * @throws InputError as loggedTemperatures and doseUnderCourse
 *
 * @example
 * const model = factorPerTenDegreesModel({ factorPerTenDegrees: 2 })
 * const profile = [
 *   { timeMin: 0, temperatureC: 22 },
 *   { timeMin: 10, temperatureC: 20 },
 * ]
 * doseForProfile({ model, profile }).doseMin // => 10.72632
 *
 * Source: logarithmic mean of the rates at the ends of each straight piece.
 */
export function doseForProfile(input: {
  readonly model: RateModel;
  readonly profile: readonly TemperatureReading[];
}): DevelopmentDose {
  requireObject("doseForProfile", "input", input, "an object with model and profile");
  requireRateModel("doseForProfile", input.model);
  const course = loggedTemperatures(input.profile);
  return doseUnderCourse({ model: input.model, course, durationMin: course.knownUntilMin });
}

function temperatureOfRate(model: RateModel, rate: number, low: number, high: number): number {
  const excess = (t: number) => Math.log(model.relativeRate(t) / rate);
  if (excess(low) >= 0) return low;
  if (excess(high) <= 0) return high;
  return findRoot(excess, { lower: low, upper: high });
}

/** A course that lies wholly on one side of the range is warned of once, where it is farthest out. */
function outermost(coldest: number, hottest: number, { range }: RateModel): readonly number[] {
  if (coldest > range.maxC) return [hottest];
  return hottest < range.minC ? [coldest] : [coldest, hottest];
}
