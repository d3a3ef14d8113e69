import type { LikelihoodCuts, StepEstimate } from "./rate-intervals.ts";
import type { RateSurface } from "./rate-surface.ts";
import { drawnQuantile, simulatedRatios } from "./simulated-ratios.ts";
import type { WeightedSeries } from "./strip-series.ts";

/**
 * The larger of the F quantile and of quantiles simulated at the estimate and at either end of what
 * the textbook leaves possible: an estimate at the edge of the strips says little of one further in.
 */
export function simulatedCuts(
  { turnovers }: WeightedSeries,
  { grid: { moments } }: RateSurface,
  rough: StepEstimate,
  {
    usual,
    confidence,
    draws,
    seed,
    slowShare,
  }: Readonly<Record<"usual" | "confidence" | "draws" | "seed" | "slowShare", number>>,
): LikelihoodCuts {
  const pace = 1 + rough.error;
  const size = rough.residualSd > 0 ? rough.error / pace / rough.residualSd : 0;
  const indexNear = (at: number) =>
    moments.reduce((best, each, i) => {
      return Math.abs(each - at) < Math.abs((moments[best] ?? 0) - at) ? i : best;
    }, 0);
  const [early, late] = rough.changeAtInterval;
  const tried = new Set([early, rough.changeAt, late].map(indexNear));
  const cuts = [...tried].map((moment) => {
    const ratios = simulatedRatios(
      turnovers,
      moments,
      { size, moment, pace },
      draws,
      seed,
      slowShare,
    );
    return {
      size: drawnQuantile(ratios.size, confidence),
      moment: drawnQuantile(ratios.moment, confidence),
    };
  });
  return {
    size: Math.max(usual, ...cuts.map((each) => each.size)),
    moment: Math.max(usual, ...cuts.map((each) => each.moment)),
  };
}
