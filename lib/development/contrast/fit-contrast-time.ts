import { requireObject, requireOneOf } from "../../input/index.ts";
import { type FittedValue, fittedValue, studentFactor } from "../fitting/fitted-value.ts";
import { nonlinearFit } from "../fitting/nonlinear-fit.ts";
import { checkedReadings } from "./checked-readings.ts";
import type { ContrastLaw } from "./contrast-curve.ts";
import type { ContrastReading } from "./contrast-from-two-times.ts";
import { contrastLaws } from "./contrast-laws.ts";

/** A contrast law fitted to readings. */
export interface ContrastFit {
  readonly law: ContrastLaw;
  /** In the order of the law: ceiling, rate per minute, delay; or contrast at one minute, exponent. */
  readonly parameters: readonly (FittedValue & { readonly name: string })[];
  readonly confidence: number;
  readonly residualSd: number;
  readonly degreesOfFreedom: number;
  readonly rows: readonly (ContrastReading & {
    readonly fitted: number;
    readonly residual: number;
    /** What the fit to the other readings foretells; missing when too few are left. */
    readonly leftOut?: number;
  })[];
  /** Root mean square of what readings left out are missed by; missing when too few are left. */
  readonly leaveOneOut?: number;
  readonly range: { readonly minMin: number; readonly maxMin: number };
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * Fits a contrast law to readings of contrast index against developing time by least squares.
 *
 * exponential approach: CI = CI∞(1 − e^(−k·t)); delayed approach: CI = CI∞(1 − e^(−k·(t − t0)));
 * power: CI = a·t^b
 *
 * @param input.rows readings: minutes and contrast index; at least one more than the law has
 * parameters (3, 4 and 3)
 * @param input.law default "exponential-approach"
 * @param input.confidence of the intervals, 0 to 1, default 0.95
 * @returns the parameters with standard errors and Student-t intervals, residuals, leave-one-out error
 * @throws InputError for too few readings, equal times only, or readings that the law cannot follow
 *
 * @example
 * const rows = [
 *   { timeMin: 4, contrastIndex: 0.386 },
 *   { timeMin: 6, contrastIndex: 0.511 },
 *   { timeMin: 8, contrastIndex: 0.606 },
 *   { timeMin: 11, contrastIndex: 0.707 },
 * ]
 * fitContrastTime({ rows }).parameters[0].value // => 0.900
 *
 * Source: F. Hurter and V. C. Driffield; S. E. Sheppard and C. E. K. Mees (laws from memory);
 * nonlinear least squares checked against NIST StRD Misra1a and DanielWood.
 */
export function fitContrastTime(input: {
  readonly rows: readonly ContrastReading[];
  readonly law?: ContrastLaw;
  readonly confidence?: number;
}): ContrastFit {
  const where = "fitContrastTime";
  requireObject(where, "input", input, "an object with rows");
  const name = requireOneOf(where, "law", input.law ?? "exponential-approach", [
    "exponential-approach",
    "delayed-approach",
    "power",
  ]);
  const law = contrastLaws[name];
  const rows = checkedReadings(where, input.rows, law.names.length + 1);
  const fitTo = (readings: readonly ContrastReading[]) => {
    const points = {
      x: readings.map((each) => each.timeMin),
      y: readings.map((each) => each.contrastIndex),
    };
    return nonlinearFit(where, law, points, law.start(readings));
  };
  const fit = fitTo(rows);
  const confidence = input.confidence ?? 0.95;
  const t = studentFactor(where, confidence, fit.degreesOfFreedom);
  const foretold = (row: ContrastReading, i: number) => {
    if (rows.length - 1 <= law.names.length) return undefined;
    return law.value(fitTo(rows.filter((_, j) => j !== i)).parameters, row.timeMin);
  };
  const leftOut = rows.map(foretold);
  const missed = rows.map((row, i) => row.contrastIndex - (leftOut[i] ?? Number.NaN));
  const rms = Math.sqrt(missed.reduce((sum, each) => sum + each * each, 0) / missed.length);
  const warnings = law.warnings(fit.parameters, rows.at(-1)?.timeMin ?? 0);
  return {
    law: name,
    parameters: fit.parameters.map((value, i) => ({
      name: law.names[i] ?? "",
      ...fittedValue(value, fit.standardErrors[i] ?? 0, t),
    })),
    confidence,
    residualSd: fit.residualSd,
    degreesOfFreedom: fit.degreesOfFreedom,
    rows: rows.map((row, i) => {
      const fitted = law.value(fit.parameters, row.timeMin);
      const other = leftOut[i];
      const residual = row.contrastIndex - fitted;
      return { ...row, fitted, residual, ...(other === undefined ? {} : { leftOut: other }) };
    }),
    ...(Number.isFinite(rms) ? { leaveOneOut: rms } : {}),
    range: { minMin: rows[0]?.timeMin ?? 0, maxMin: rows.at(-1)?.timeMin ?? 0 },
    assumptions: ["readings are equally uncertain", "one developer, temperature and agitation"],
    warnings,
  };
}
