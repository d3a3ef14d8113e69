import type { LikelihoodCuts, StepEstimate } from "./rate-intervals.ts";
import { drawnQuantile, simulatedRatios } from "./simulated-ratios.ts";
import type { WeightedSeries } from "./strip-series.ts";

/**
 * The larger of the F quantile and of that of series simulated at the estimate: near the ends of the
 * strips, and for changes that hardly show, the likelihood is not as regular as the textbook's.
 */
export function simulatedCuts(
  { turnovers }: WeightedSeries,
  moments: readonly number[],
  rough: StepEstimate,
  {
    usual,
    confidence,
    noises,
  }: {
    readonly usual: number;
    readonly confidence: number;
    readonly noises: readonly Float64Array[];
  },
): LikelihoodCuts {
  const pace = 1 + rough.error;
  const size = rough.residualSd > 0 ? rough.error / pace / rough.residualSd : 0;
  const gap = (i: number) => Math.abs((moments[i] ?? 0) - rough.changeAt);
  const moment = moments.reduce((best, _, i) => (gap(i) < gap(best) ? i : best), 0);
  const ratios = simulatedRatios(turnovers, moments, { size, moment, pace }, noises);
  return {
    size: Math.max(usual, drawnQuantile(ratios.size, confidence)),
    moment: Math.max(usual, drawnQuantile(ratios.moment, confidence)),
  };
}
