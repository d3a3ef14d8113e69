import { findRoot, integrate } from "../../numerics/index.ts";
import type { FactorPerTenDegreesModel } from "../rate/factor-per-ten-degrees-model.ts";
import type { PublishedTableModel } from "../rate/published-table-model.ts";
import type { RateModel } from "../rate/rate-model.ts";
import type { NewtonCooling } from "./newton-cooling.ts";
import type { TemperatureCourse } from "./temperature-course.ts";

/** An integral of the relative rate, minutes at the model's reference temperature. */
export interface AccumulatedDose {
  readonly doseMin: number;
  readonly errorBoundMin: number;
  readonly method: "closed form" | "adaptive quadrature";
}

/** A sum of terms that is smaller than they are by more than this has lost three digits. */
const MOST_CANCELLED = 1000;

/** ∫ r(T(t)) dt between two times: in closed form where there is one, else by quadrature. */
export function accumulatedDose(
  model: RateModel,
  course: TemperatureCourse,
  fromMin: number,
  toMin: number,
): AccumulatedDose {
  const inner = course.breakpointsMin.filter((each) => each > fromMin && each < toMin);
  const edges = [fromMin, ...inner, toMin];
  const closed = course.kind === "constant" || isFactorModel(model);
  let doseMin = 0;
  let errorBoundMin = 0;
  let method: AccumulatedDose["method"] = "closed form";
  for (const [i, start] of edges.slice(0, -1).entries()) {
    const end = edges[i + 1] ?? start;
    const exact = closed ? closedForm(model, course, start, end) : undefined;
    if (exact !== undefined) {
      doseMin += exact.value;
      errorBoundMin += exact.errorBound;
      continue;
    }
    method = "adaptive quadrature";
    const kinks = kinkTimes(model, course, start, end);
    for (const [j, from] of kinks.slice(0, -1).entries()) {
      const rate = (t: number) => model.relativeRate(course.temperatureAt(t));
      const part = integrate(rate, from, kinks[j + 1] ?? from);
      doseMin += part.value;
      errorBoundMin += part.errorBound;
    }
  }
  return { doseMin, errorBoundMin, method };
}

/**
 * A stretch cut where the course passes a row of a printed table: there the rate has a kink, which
 * a quadrature rule does not see in its error.
 */
function kinkTimes(
  model: RateModel,
  course: TemperatureCourse,
  from: number,
  to: number,
): readonly number[] {
  if (!isTable(model)) return [from, to];
  const pieces = course.kind === "logged" ? 1 : 16;
  const stops = Array.from({ length: pieces + 1 }, (_, i) => from + ((to - from) * i) / pieces);
  const inner = stops.slice(0, -1).flatMap((lower, i) => {
    const upper = stops[i + 1] ?? lower;
    return model.rows.flatMap(({ temperatureC }) => {
      const above = (t: number) => course.temperatureAt(t) - temperatureC;
      if (above(upper) === 0) return [upper];
      return above(lower) * above(upper) < 0 ? [findRoot(above, { lower, upper })] : [];
    });
  });
  return [from, ...inner.filter((t) => t > from && t < to).sort((a, b) => a - b), to];
}

function isTable(model: RateModel): model is PublishedTableModel {
  return model.kind === "published-table" && "rows" in model;
}

function isFactorModel(model: RateModel): model is FactorPerTenDegreesModel {
  return model.kind === "factor-per-10-degrees" && "factorPerTenDegrees" in model;
}

function isNewton(course: TemperatureCourse): course is NewtonCooling {
  return course.kind === "newton-cooling" && "ratePerMin" in course;
}

/** A value of a closed form with what rounding may have done to it. */
interface Exact {
  readonly value: number;
  readonly errorBound: number;
}

/** Rounding of a handful of operations on numbers of a size. */
function rounded(value: number, size = Math.abs(value)): Exact {
  return { value, errorBound: 8 * Number.EPSILON * size };
}

function closedForm(
  model: RateModel,
  course: TemperatureCourse,
  from: number,
  to: number,
): Exact | undefined {
  if (course.kind === "constant") {
    return rounded(model.relativeRate(course.temperatureAt(0)) * (to - from));
  }
  if (course.kind === "logged") return straightDose(model, course, from, to);
  if (!isNewton(course) || !isFactorModel(model)) return undefined;
  return newtonDose(model, course, from, to);
}

/** Under a straight line of temperature the rate is one exponential: the logarithmic mean. */
function straightDose(model: RateModel, course: TemperatureCourse, from: number, to: number) {
  const rate = model.relativeRate(course.temperatureAt(from));
  const u = Math.log(model.relativeRate(course.temperatureAt(to)) / rate);
  return rounded(rate * (to - from) * (u === 0 ? 1 : Math.expm1(u) / u));
}

/**
 * With a = ln Q/10 the rate is r(T_s)·exp(x(t)), x(t) = a·(T0 − T_s)·e^(−kt), whose integral is
 * r(T_s)·[ (t2 − t1) + Σ (x1^n − x2^n)/(k·n·n!) ]: the exponential integral as its series, in which
 * the logarithm cancels, so that nothing blows up when the bath has reached its surroundings. For a
 * bath that warms far the terms alternate and take digits with them; where that shows, there is no
 * answer here, and quadrature gives it.
 */
function newtonDose(
  model: FactorPerTenDegreesModel,
  course: NewtonCooling,
  from: number,
  to: number,
): Exact | undefined {
  const a = Math.log(model.factorPerTenDegrees) / 10;
  const { surroundingsC, ratePerMin: k } = course;
  // Not through relativeRate: the surroundings may lie out of the model's reach.
  const around = Math.exp(a * (surroundingsC - model.referenceTemperatureC));
  const decay = k * (to - from);
  // So slow a drift is a straight line (the next term is decay²), and the sum would lose its digits.
  if (decay < 1e-9) return straightDose(model, course, from, to);
  const x = a * (course.startTemperatureC - surroundingsC) * Math.exp(-k * from);
  let power = 1;
  let sum = decay;
  let size = decay;
  for (let n = 1; n <= 200; n++) {
    power *= x / n;
    const term = (power / n) * -Math.expm1(-n * decay);
    sum += term;
    size += Math.abs(term);
    if (Math.abs(term) < 1e-17 * Math.abs(sum)) break;
  }
  if (size > MOST_CANCELLED * sum) return undefined;
  return rounded((around * sum) / k, (around * size) / k);
}
