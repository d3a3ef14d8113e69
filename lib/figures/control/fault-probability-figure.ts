import type { FaultRanking } from "../../control/index.ts";
import { requireNumber, requireObject } from "../../input/index.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

/**
 * Probabilities of the leading faults, of "none of these" and of "nothing wrong", as bars; faults of
 * one group, which densities hardly tell apart, share a colour.
 *
 * @param ranking from `rankFaults`
 * @param options.title what the figure shows
 * @param options.faults how many faults are shown, 1 to 30, default 8; the rest are summed
 * @returns Vega-Lite figure; its text alternative gives the ranking's sentence and every probability
 * @throws InputError for a number of faults out of range
 *
 * @example
 * const components = [{ parameter: "ld", name: "LD", colour: "red" as const, limit: 0.06 }];
 * const window = { process: "colour-negative", components, takenAt: ["2026-08-14T07:10"], deviations: [[0]], noise: [[1e-4]] };
 * const ranking = rankFaults({ ...window, lagOne: 0, wander: 0.1, assumptions: [], warnings: [] });
 * faultProbabilityFigure(ranking).description.startsWith("Most likely nothing is wrong") // => true
 */
export function faultProbabilityFigure(
  ranking: FaultRanking,
  options: { readonly title?: string; readonly faults?: number } = {},
): VegaLiteFigure {
  requireObject(
    "faultProbabilityFigure",
    "ranking",
    ranking,
    "an object with process, faults, groups, …",
  );
  const count = requireNumber("faultProbabilityFigure", "faults", options.faults ?? 8, {
    min: 1,
    max: 30,
    whole: true,
  });
  const shown = ranking.faults.slice(0, count);
  const rest = ranking.faults.slice(count).reduce((sum, each) => sum + each.probability, 0);
  const groups = [...new Set(shown.map(({ group }) => group))];
  const colourOf = (group: string) => {
    const at = groups.indexOf(group);
    return palette.series[at] ?? palette.quiet;
  };
  const row = (name: string, probability: number, colour: string) => ({
    name,
    percent: 100 * probability,
    colour,
    said: percentWords(probability),
  });
  const values = [
    ...shown.map(({ name, probability, group }) => row(name, probability, colourOf(group))),
    ...(ranking.faults.length > count
      ? [row(`${ranking.faults.length - count} other faults`, rest, palette.quiet)]
      : []),
    row("none of these", ranking.noneOfThese, palette.quiet),
    row("nothing wrong", ranking.nothingWrong, palette.quiet),
  ];
  const y = {
    field: "name",
    type: "nominal",
    sort: null,
    title: "Cause (no unit)",
    axis: { labelLimit: 330 },
  };
  const x = {
    field: "percent",
    type: "quantitative",
    title: "Probability (%)",
    scale: { domain: [0, 120] },
    axis: { values: [0, 20, 40, 60, 80, 100] },
  };
  return vegaLiteFigure({
    title: options.title ?? "How likely each cause is",
    description: `${ranking.sentence} ${values.map(({ name, said }) => `${name} ${said}`).join("; ")}.`,
    specification: {
      width: 360,
      height: { step: 22 },
      data: { values },
      encoding: { y, x },
      layer: [
        {
          mark: { type: "bar" },
          encoding: { color: { field: "colour", type: "nominal", scale: null } },
        },
        {
          mark: { type: "text", align: "left", dx: 4 },
          encoding: { text: { field: "said", type: "nominal" } },
        },
      ],
    },
  });
}

/** To a tenth of a per cent; never quite nothing, never quite certain. */
function percentWords(probability: number): string {
  if (probability < 0.0005) return "< 0.1 %";
  return probability > 0.9995 ? "> 99.9 %" : `${(100 * probability).toFixed(1)} %`;
}
