import { requireEntries, requireNumber } from "../../input/index.ts";
import { fCdf } from "../../numerics/index.ts";
import { type GaugeReadings, gaugeDesign, mean } from "./gauge-readings.ts";
import { type GaugeStudy, gaugeStudy } from "./gauge-result.ts";

/** A line of the analysis of variance. */
export interface VarianceLine {
  readonly source: "patches" | "operators" | "interaction" | "repeats";
  readonly degreesOfFreedom: number;
  readonly sumOfSquares: number;
  readonly meanSquare: number;
}

/** A gauge study with its analysis of variance. */
export interface GaugeAnova extends GaugeStudy {
  readonly lines: readonly VarianceLine[];
  /** Probability of so much interaction (operators differ more on some patches) by chance. */
  readonly interactionPValue: number;
  /** Whether the interaction was put together with the repeats because it did not show. */
  readonly pooled: boolean;
}

/**
 * Gauge study of a densitometer by analysis of variance of the crossed design, random effects.
 *
 * If the interaction of operators and patches does not show at `poolAbove`, it is pooled with the
 * repeats. Components that come out negative are 0.
 *
 * @param readings `readings[operator][patch]` is the list of repeats, in density; at least 2 of each
 * @param options `poolAbove`: probability above which the interaction is pooled, 0 to 1, default 0.25
 * @returns standard deviations, shares and the lines of the analysis
 * @throws InputError if the study is not complete or the readings do not vary at all
 *
 * @example
 * gaugeStudyByAnova([[[0.20, 0.22], [1.00, 1.01]], [[0.21, 0.21], [1.02, 1.00]]]).pooled // => true
 *
 * Source: AIAG, Measurement Systems Analysis, 4th ed. 2010, appendix A.
 */
export function gaugeStudyByAnova(
  readings: GaugeReadings,
  options: { readonly poolAbove?: number } = {},
): GaugeAnova {
  const where = "gaugeStudyByAnova";
  requireEntries(where, "readings", readings);
  const { operators, patches, repeats } = gaugeDesign(where, readings);
  const poolAbove = requireNumber(where, "poolAbove", options.poolAbove ?? 0.25, {
    min: 0,
    max: 1,
  });
  const grand = mean(readings.flat(2));
  const patchSquares = sumOver(
    patches,
    (p) => (mean(readings.flatMap((byPatch) => byPatch[p] ?? [])) - grand) ** 2,
  );
  const operatorSquares = sumOver(operators, (o) => (mean(readings[o]?.flat() ?? []) - grand) ** 2);
  const cellSquares = readings.flat().reduce((sum, list) => sum + (mean(list) - grand) ** 2, 0);
  const total = readings.flat(2).reduce((sum, v) => sum + (v - grand) ** 2, 0);
  requireNumber(where, "scatter of the readings", total, {
    above: 0,
    hint: "all readings are equal: choose patches that differ, or read to more decimals",
  });
  const ssPatches = operators * repeats * patchSquares;
  const ssOperators = patches * repeats * operatorSquares;
  const ssInteraction = Math.max(0, repeats * cellSquares - ssPatches - ssOperators);
  const ssRepeats = Math.max(0, total - repeats * cellSquares);
  const [dfP, dfO] = [patches - 1, operators - 1];
  const [dfI, dfR] = [dfP * dfO, patches * operators * (repeats - 1)];
  const lines = [
    line("patches", dfP, ssPatches),
    line("operators", dfO, ssOperators),
    line("interaction", dfI, ssInteraction),
    line("repeats", dfR, ssRepeats),
  ] as const;
  const [msP, msO, msI, msR] = lines.map((each) => each.meanSquare) as [
    number,
    number,
    number,
    number,
  ];
  const interactionPValue = msR === 0 ? (msI === 0 ? 1 : 0) : 1 - fCdf(msI / msR, dfI, dfR);
  const pooled = interactionPValue > poolAbove;
  const error = pooled ? (ssInteraction + ssRepeats) / (dfI + dfR) : msR;
  const against = pooled ? error : msI;
  const interaction = pooled ? 0 : Math.max(0, (msI - msR) / repeats);
  const byOperator = Math.max(0, (msO - against) / (patches * repeats));
  const byPatch = Math.max(0, (msP - against) / (operators * repeats));
  return {
    ...gaugeStudy(
      "analysis of variance",
      Math.sqrt(error),
      Math.sqrt(byOperator + interaction),
      Math.sqrt(byPatch),
    ),
    lines,
    interactionPValue,
    pooled,
  };
}

function line(
  source: VarianceLine["source"],
  degreesOfFreedom: number,
  sumOfSquares: number,
): VarianceLine {
  return { source, degreesOfFreedom, sumOfSquares, meanSquare: sumOfSquares / degreesOfFreedom };
}

function sumOver(count: number, term: (i: number) => number): number {
  return Array.from({ length: count }, (_, i) => term(i)).reduce((sum, v) => sum + v, 0);
}
