import { InputError, requireNumber, requireObject, requireOneOf } from "../../input/index.ts";
import { checkedTimeTable, type TimeTemperatureRow } from "../rate/published-table-model.ts";
import { shown } from "../rate/shown.ts";
import { abscissa, energyOf, factorOf, fittedRow, fittedTime, roundingOf } from "./fit-parts.ts";
import { type FittedValue, fittedValue, studentFactor } from "./fitted-value.ts";
import { printedStepMin } from "./print-rounding.ts";
import { straightLine } from "./straight-line.ts";
import type { RateLaw, TimeTemperatureFit } from "./time-temperature-fit.ts";

/**
 * Fits a rate law to a table of developing times by least squares of ln(time).
 *
 * activation energy: ln t = a + (Ea/R)·(1/T), T in kelvin; factor per 10 °C: ln t = a − (ln Q/10)·T
 *
 * @param input.rows at least three rows of different temperature: °C and minutes, in any order
 * @param input.law "activation-energy" (default) or "factor-per-10-degrees"
 * @param input.confidence of the intervals, 0 to 1, default 0.95
 * @param input.referenceTemperatureC where the fitted time is given, °C, default 20
 * @param input.roundingMin step to which the times are printed, minutes (0.25, 0.5); default the
 * coarsest usual step that all times are multiples of
 * @returns coefficients with intervals (Student's t), every row with its residual and with what the
 * other rows foretell, the leave-one-out error, and what rounding alone leaves open
 * @throws InputError for fewer than three rows, equal temperatures, or times that clearly grow with
 * temperature
 *
 * @example
 * const rows = [
 *   { temperatureC: 20, timeMin: 6.5 },
 *   { temperatureC: 21.11, timeMin: 6 },
 *   { temperatureC: 22.22, timeMin: 5.5 },
 *   { temperatureC: 23.89, timeMin: 5 },
 * ]
 * fitTimeTemperature({ rows }).activationEnergyKJPerMol.value // => 49.2
 *
 * Source: Arrhenius equation, IUPAC Gold Book A00446; linear regression with Student's t, NIST/SEMATECH
 * e-Handbook of Statistical Methods 4.1.4.1.
 */
export function fitTimeTemperature(input: {
  readonly rows: readonly TimeTemperatureRow[];
  readonly law?: RateLaw;
  readonly confidence?: number;
  readonly referenceTemperatureC?: number;
  readonly roundingMin?: number;
}): TimeTemperatureFit {
  const where = "fitTimeTemperature";
  requireObject(where, "input", input, "an object with rows");
  const rows = checkedTimeTable(where, input.rows);
  const law = requireOneOf(where, "law", input.law ?? "activation-energy", [
    "activation-energy",
    "factor-per-10-degrees",
  ]);
  const step = requireNumber(
    where,
    "roundingMin",
    input.roundingMin ?? printedStepMin(rows.map((each) => each.timeMin)),
    { min: 0, unit: "min" },
  );
  const reference = requireNumber(
    where,
    "referenceTemperatureC",
    input.referenceTemperatureC ?? 20,
    {
      min: 0,
      max: 45,
      unit: "°C",
    },
  );
  const x = rows.map((each) => abscissa(law, each.temperatureC));
  const y = rows.map((each) => Math.log(each.timeMin));
  const line = straightLine(where, x, y);
  const confidence = input.confidence ?? 0.95;
  const t = studentFactor(where, confidence, line.degreesOfFreedom);
  const minC = rows[0]?.temperatureC ?? 0;
  const maxC = rows.at(-1)?.temperatureC ?? 0;
  const middle = (minC + maxC) / 2;
  const arrhenius = law === "activation-energy";
  const coefficientOf = (slope: FittedValue) =>
    arrhenius ? energyOf(law, slope, middle) : factorOf(law, slope, middle);
  const slope = fittedValue(line.slope, line.slopeError, t);
  if (slope.upper < 0) {
    const advice =
      "write times that fall as the bath gets warmer: temperatureC and timeMin may be the wrong way round";
    throw new InputError(where, "rows", "times that grow with temperature", advice);
  }
  const rounding = roundingOf(law, rows, step, (b) => coefficientOf(fittedValue(b, 0, 0)).value);
  const missed = line.leftOutResiduals;
  return {
    law,
    coefficient: coefficientOf(slope),
    coefficientUnit: arrhenius ? "kJ/mol" : "per 10 °C",
    activationEnergyKJPerMol: energyOf(law, slope, middle),
    factorPerTenDegrees: factorOf(law, slope, middle),
    timeAtReferenceMin: fittedTime(line, abscissa(law, reference), t),
    referenceTemperatureC: reference,
    confidence,
    degreesOfFreedom: line.degreesOfFreedom,
    residualSdPercent: 100 * line.residualSd,
    rSquared: line.rSquared,
    rows: rows.map((row, i) => fittedRow(row, line.residuals[i] ?? 0, missed[i] ?? 0, step)),
    range: { minC, maxC },
    leaveOneOutPercent:
      100 * Math.sqrt(missed.reduce((sum, each) => sum + each * each, 0) / missed.length),
    rounding,
    assumptions: [
      "the times are equally uncertain in proportion (least squares of ln time)",
      "printed times are rounded; the interval counts the scatter that rounding causes as noise",
    ],
    warnings: fitWarnings(slope.lower, rounding),
  };
}

function fitWarnings(slopeLower: number, rounding: TimeTemperatureFit["rounding"]): string[] {
  const warnings: string[] = [];
  if (!rounding.consistent) {
    warnings.push(
      `no one coefficient passes through all the times within their rounding of ${shown(rounding.stepMin)} min: the table does not follow the law, or it holds a misprint`,
    );
  }
  if (slopeLower <= 0) {
    warnings.push(
      "the interval includes no effect of temperature at all: the table is too coarse or too short",
    );
  }
  return warnings;
}
