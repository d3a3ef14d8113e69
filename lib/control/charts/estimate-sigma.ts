import { chartConstants, meanRangeOfTwo } from "./chart-constants.ts";
import type { SigmaSource } from "./statistical-limits.ts";

/** Short-term standard deviation of one reading, by the way asked for; 0 where nothing varies. */
export function estimateSigma(
  readings: readonly number[],
  mean: number,
  ranges: readonly number[],
  from: SigmaSource,
): number {
  if (from === "standard deviation") {
    const squares = readings.reduce((sum, x) => sum + (x - mean) ** 2, 0);
    const n = readings.length;
    // c4 is within 1e-5 of its expansion 1 − 1/(4(n−1)) − … beyond 100 readings.
    const c4 = n <= 100 ? chartConstants(n).c4 : (4 * n - 4) / (4 * n - 3);
    return Math.sqrt(squares / (n - 1)) / c4;
  }
  if (ranges.length === 0) return 0;
  if (from === "median moving range") {
    const sorted = [...ranges].sort((a, b) => a - b);
    const half = sorted.length >> 1;
    const upper = sorted[half] ?? 0;
    const median = sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? 0) + upper) / 2;
    return median / chartConstants(2).d4;
  }
  return ranges.reduce((sum, r) => sum + r, 0) / ranges.length / meanRangeOfTwo;
}
