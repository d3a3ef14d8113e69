import type { BaseReadings } from "./base-period.ts";
import { strictlyBeyond } from "./on-the-line.ts";

/** What the user should think about before trusting a base period. */
export function baseWarnings(
  base: BaseReadings,
  mean: number,
  limits: { readonly centre: number; readonly sigma: number; readonly widthSigma: number },
  ranges: readonly number[],
): readonly string[] {
  const warnings: string[] = [];
  const { sigma, widthSigma } = limits;
  const beyond = base.positions.filter((_, i) =>
    strictlyBeyond(Math.abs((base.readings[i] ?? 0) - limits.centre) / sigma, widthSigma),
  );
  if (beyond.length > 0) {
    const list = beyond.slice(0, 5).join(", ");
    warnings.push(
      `${beyond.length} of ${base.readings.length} readings of the base period lie beyond its own limits (positions ${list}${beyond.length > 5 ? ", …" : ""}); find their cause and exclude them, or choose another period`,
    );
  }
  const step = smallestStep(base.readings);
  if (step > sigma) {
    warnings.push(
      `readings move in steps of ${Number(step.toPrecision(2))}, coarser than sigma (${Number(sigma.toPrecision(2))}); read to one more decimal, for limits from rounded readings are not to be trusted`,
    );
  }
  const lag1 = lagOneCorrelation(base.readings, mean);
  if (ranges.length >= 10 && Math.abs(lag1) > 2 / Math.sqrt(base.readings.length)) {
    warnings.push(
      `neighbouring readings of the base period are correlated (lag 1: ${lag1.toFixed(2)}); false alarms will be ${lag1 > 0 ? "more" : "less"} frequent than the rates stated for independent readings`,
    );
  }
  return warnings;
}

function smallestStep(readings: readonly number[]): number {
  const sorted = [...readings].sort((a, b) => a - b);
  let smallest = Number.POSITIVE_INFINITY;
  for (let i = 1; i < sorted.length; i++) {
    const gap = (sorted[i] ?? 0) - (sorted[i - 1] ?? 0);
    // Gaps of pure rounding error are not steps of the instrument.
    if (gap > 1e-9 && gap < smallest) smallest = gap;
  }
  return Number.isFinite(smallest) ? smallest : 0;
}

function lagOneCorrelation(readings: readonly number[], mean: number): number {
  let products = 0;
  let squares = 0;
  for (let i = 0; i < readings.length; i++) {
    const here = (readings[i] ?? 0) - mean;
    squares += here * here;
    if (i > 0) products += here * ((readings[i - 1] ?? 0) - mean);
  }
  return squares === 0 ? 0 : products / squares;
}
