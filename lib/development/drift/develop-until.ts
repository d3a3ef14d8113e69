import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { findRoot } from "../../numerics/index.ts";
import { type EvenDevelopmentChoice, evenDevelopmentWarnings } from "../rate/even-development.ts";
import { type RateModel, requireWithinReach } from "../rate/rate-model.ts";
import { requireMinutes } from "../rate/require-minutes.ts";
import { shown } from "../rate/shown.ts";
import { accumulatedDose } from "./accumulated-dose.ts";
import { type DevelopmentDose, doseUnderCourse } from "./dose-under-course.ts";
import type { TemperatureCourse } from "./temperature-course.ts";

/** When to pour out, and what it would have cost not to correct. */
export interface DevelopUntil {
  /** Developing time: minutes from minute 0 until the dose is reached. */
  readonly timeMin: number;
  /** When to begin pouring, `drainMin` earlier. */
  readonly startPouringMin: number;
  /** The dose and course up to `timeMin`. */
  readonly dose: DevelopmentDose;
  /** Target time and the temperature it belongs to. */
  readonly targetMin: number;
  readonly targetTemperatureC: number;
  /** Error of dose, in per cent, had the time been corrected for the start temperature only. */
  readonly errorIfStartTemperatureOnlyPercent: number;
  /** That time, minutes. */
  readonly timeForStartTemperatureMin: number;
  /** Error of dose, in per cent, had the target time been used as printed. */
  readonly errorIfUncorrectedPercent: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * The moment at which to pour out a bath that drifts: when the dose equals the target.
 *
 * ∫₀ᵗ r(T(t)) dt = t_target · r(T_target), solved for t
 *
 * @param input.model rate model
 * @param input.targetMin developing time that is right at `targetTemperatureC`, minutes
 * @param input.targetTemperatureC default the model's reference temperature, °C
 * @param input.course temperature of the bath over time, from the moment of filling
 * @param input.drainMin minutes that pouring out takes, counted into the developing time; default 0
 * @param input.handling @param input.evenDevelopment how short the time may be
 * @returns the developing time, when to begin pouring, and the errors without correction
 * @throws InputError if the bath leaves the model's reach before the dose is reached, or the time
 * is too short for even development
 *
 * @example
 * const model = activationEnergyModel({ activationEnergyKJPerMol: 60 })
 * const course = newtonCooling({ startTemperatureC: 22.5, surroundingsC: 16, ratePerMin: 0.02 })
 * developUntil({ model, targetMin: 9, course }).timeMin // => 7.596492
 *
 * Source: Arrhenius equation integrated over time.
 */
export function developUntil(
  input: {
    readonly model: RateModel;
    readonly targetMin: number;
    readonly targetTemperatureC?: number;
    readonly course: TemperatureCourse;
    readonly drainMin?: number;
  } & EvenDevelopmentChoice,
): DevelopUntil {
  const where = "developUntil";
  requireObject(where, "input", input, "an object with model, targetMin and course");
  const { model, course } = input;
  requireObject(where, "model", model, "a rate model, such as defaultRateModel gives");
  requireObject(where, "model.range", model.range, "an object with minC and maxC");
  requireObject(where, "course", course, "a course, such as coolingOfTank gives");
  const targetMin = requireMinutes(where, "targetMin", input.targetMin);
  const targetTemperatureC = input.targetTemperatureC ?? model.referenceTemperatureC;
  requireWithinReach(where, "targetTemperatureC", targetTemperatureC, model);
  requireWithinReach(where, "course.startTemperatureC", course.startTemperatureC, model);
  const wanted = targetMin * model.relativeRate(targetTemperatureC);
  const timeMin = timeOfDose(model, course, wanted);
  const drainMin = requireNumber(where, "drainMin", input.drainMin ?? 0, {
    min: 0,
    max: timeMin,
    unit: "min",
  });
  const dose = doseUnderCourse({ model, course, durationMin: timeMin });
  const startOnly = wanted / model.relativeRate(course.startTemperatureC);
  const percentAt = (t: number) => 100 * (doseOrLast(model, course, t) / wanted - 1);
  return {
    timeMin,
    startPouringMin: timeMin - drainMin,
    dose,
    targetMin,
    targetTemperatureC,
    errorIfStartTemperatureOnlyPercent: percentAt(startOnly),
    timeForStartTemperatureMin: startOnly,
    errorIfUncorrectedPercent: percentAt(targetMin),
    assumptions: dose.assumptions,
    warnings: [
      ...dose.warnings,
      ...evenDevelopmentWarnings(where, "the corrected time", timeMin, input),
    ],
  };
}

/** Steps forward, at least doubling what the present rate promises, until the dose is bracketed. */
function timeOfDose(model: RateModel, course: TemperatureCourse, wanted: number): number {
  let time = 0;
  let dose = 0;
  for (let step = 0; step < 500; step++) {
    const stretch = (2 * (wanted - dose)) / model.relativeRate(course.temperatureAt(time));
    const end = lastWithinReach(model, course, time, time + stretch);
    const next = dose + accumulatedDose(model, course, time, end).doseMin;
    if (next >= wanted) {
      const start = time;
      const before = dose;
      return findRoot((t) => before + accumulatedDose(model, course, start, t).doseMin - wanted, {
        lower: start,
        upper: end,
        tolerance: 1e-13 * end,
      });
    }
    if (end < time + stretch) {
      const advice = `write a course that stays within the model's reach: at ${shown(end)} min it passes ${shown(course.temperatureAt(end))} °C with ${shown((100 * next) / wanted)} % of the development done; warm or cool the bath, or give the model a wider range if there is evidence for it`;
      throw new InputError("developUntil", "course", course.description, advice);
    }
    time = end;
    dose = next;
  }
  const advice = "write a course on which development goes on";
  throw new InputError("developUntil", "course", course.description, advice);
}

/** The last moment between two times up to which the course stays within the model's reach. */
function lastWithinReach(model: RateModel, course: TemperatureCourse, from: number, to: number) {
  const low = model.range.minC - model.refuseBeyondC;
  const high = model.range.maxC + model.refuseBeyondC;
  if (course.lowestC >= low && course.highestC <= high) return to;
  const inside = (t: number) => {
    const temperature = course.temperatureAt(t);
    return temperature >= low && temperature <= high;
  };
  const grid = Array.from({ length: 64 }, (_, i) => from + ((i + 1) / 64) * (to - from));
  const stops = [...grid, ...course.breakpointsMin.filter((t) => t > from && t < to)];
  stops.sort((a, b) => a - b);
  const out = stops.findIndex((t) => !inside(t));
  if (out < 0) return to;
  let last = stops[out - 1] ?? from;
  let beyond = stops[out] ?? to;
  for (let i = 0; i < 60; i++) {
    const middle = (last + beyond) / 2;
    if (inside(middle)) last = middle;
    else beyond = middle;
  }
  return last;
}

function doseOrLast(model: RateModel, course: TemperatureCourse, time: number): number {
  return accumulatedDose(model, course, 0, lastWithinReach(model, course, 0, time)).doseMin;
}
