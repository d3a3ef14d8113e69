import { kelvin, molarGasConstant } from "../rate/kelvin.ts";
import type { TimeTemperatureRow } from "../rate/published-table-model.ts";
import { exponentialOf, type FittedValue, fittedValue } from "./fitted-value.ts";
import { feasibleSlopes } from "./print-rounding.ts";
import type { StraightLine } from "./straight-line.ts";
import type { FittedRow, RateLaw, TimeTemperatureFit } from "./time-temperature-fit.ts";

/** x of a table row: 1/T in kelvin, or minus tens of degrees, so that the slope is positive. */
export function abscissa(law: RateLaw, temperatureC: number): number {
  return law === "activation-energy" ? 1 / kelvin(temperatureC) : -temperatureC / 10;
}

/** How much ln(rate) rises over ten degrees around a temperature, for a slope of 1. */
function risePerTenDegrees(law: RateLaw, middleC: number): number {
  return abscissa(law, middleC - 5) - abscissa(law, middleC + 5);
}

/** The activation energy in kJ/mol that a slope stands for around a temperature. */
export function energyOf(law: RateLaw, slope: FittedValue, middleC: number): FittedValue {
  const scale =
    (molarGasConstant / 1000) *
    (law === "activation-energy"
      ? 1
      : risePerTenDegrees(law, middleC) / risePerTenDegrees("activation-energy", middleC));
  return scaled(slope, scale);
}

/** The factor per 10 °C that a slope stands for around a temperature. */
export function factorOf(law: RateLaw, slope: FittedValue, middleC: number): FittedValue {
  return exponentialOf(scaled(slope, risePerTenDegrees(law, middleC)));
}

function scaled(value: FittedValue, scale: number): FittedValue {
  return {
    value: value.value * scale,
    standardError: value.standardError * scale,
    lower: value.lower * scale,
    upper: value.upper * scale,
  };
}

/** The fitted time at an x, with its interval. */
export function fittedTime(line: StraightLine, x: number, factor: number): FittedValue {
  const error = Math.hypot(line.valueAtMeanError, (x - line.meanX) * line.slopeError);
  return exponentialOf(
    fittedValue(line.valueAtMean + line.slope * (x - line.meanX), error, factor),
  );
}

/** A printed row beside what the line makes of it. */
export function fittedRow(
  row: TimeTemperatureRow,
  residual: number,
  leftOut: number,
  stepMin: number,
): FittedRow {
  const fittedMin = row.timeMin * Math.exp(-residual);
  return {
    ...row,
    fittedMin,
    residualMin: row.timeMin - fittedMin,
    residualPercent: 100 * residual,
    leftOutMin: row.timeMin * Math.exp(-leftOut),
    leftOutPercent: 100 * leftOut,
    // A hair of slack, so that a time exactly on the edge of its rounding counts as within.
    withinRounding: Math.abs(row.timeMin - fittedMin) <= stepMin / 2 + 1e-9,
  };
}

/** The coefficients of all lines that pass through every printed time within its rounding. */
export function roundingOf(
  law: RateLaw,
  rows: readonly TimeTemperatureRow[],
  stepMin: number,
  coefficient: (slope: number) => number,
): TimeTemperatureFit["rounding"] {
  const points = rows.map((row) => ({
    x: abscissa(law, row.temperatureC),
    low: Math.log(Math.max(row.timeMin - stepMin / 2, row.timeMin / 1e6)),
    high: Math.log(row.timeMin + stepMin / 2),
  }));
  const { lowest, highest } = feasibleSlopes(points);
  const consistent = lowest <= highest;
  return {
    stepMin,
    consistent,
    lowest: coefficient(Math.min(lowest, highest)),
    highest: coefficient(Math.max(lowest, highest)),
  };
}
