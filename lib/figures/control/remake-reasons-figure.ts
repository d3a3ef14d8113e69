import type { RankedReason } from "../../control/index.ts";
import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";

/**
 * Reasons from the largest to the smallest, with the share that this and all larger ones make
 * together (the ranking Juran named after Pareto).
 *
 * @param reasons from `rankedReasons`, at least one
 * @param options.title what the figure shows
 * @param options.by what the bars show: `"count"` (default) or `"cost"`
 * @param options.money name of the lab's money for the axis; default "the lab's money"
 * @returns Vega-Lite figure; its text alternative gives the reasons with their shares
 * @throws InputError for no reason, or nothing to rank
 *
 * @example
 * remakeReasonsFigure(rankedReasons([{ reason: "too dark", count: 2 }, { reason: "dust", count: 6 }]), { title: "Why" }).description.includes("dust 6 (75 %)") // => true
 *
 * Source: J. M. Juran, Quality Control Handbook.
 */
export function remakeReasonsFigure(
  reasons: readonly RankedReason[],
  options: {
    readonly title: string;
    readonly by?: "count" | "cost";
    readonly money?: string;
  },
): VegaLiteFigure {
  const where = "remakeReasonsFigure";
  requireEntries(where, "reasons", reasons);
  requireObject(where, "options", options, "an object with title");
  const by = options.by ?? "count";
  const total = reasons.reduce((sum, each) => sum + each[by], 0);
  if (reasons.length === 0 || total === 0) {
    throw new InputError(where, "reasons", reasons, `write reasons with a ${by} above 0`);
  }
  let running = 0;
  const values = reasons.map((each) => {
    running += each[by];
    const size = Number(each[by].toPrecision(6));
    return { reason: each.reason, size, cumulative: (100 * running) / total };
  });
  const x = {
    field: "reason",
    type: "nominal",
    sort: null,
    title: "Reason (no unit)",
    axis: { labelAngle: 0, labelLimit: 120 },
  };
  const height = 250;
  const unit =
    by === "count" ? "Prints made again (prints)" : `Cost (${options.money ?? "the lab's money"})`;
  const line = palette.series[1];
  const share = (size: number) => `${((100 * size) / total).toFixed(0)} %`;
  return vegaLiteFigure({
    title: options.title,
    description: `Ranked by ${by}: ${values.map((v) => `${v.reason} ${Number(v.size.toFixed(2))} (${share(v.size)})`).join("; ")}.`,
    specification: {
      width: figureWidth.plot - 40,
      height,
      data: { values },
      resolve: { scale: { y: "independent" } },
      layer: [
        {
          mark: { type: "bar", color: palette.series[0], width: { band: 0.72 } },
          encoding: {
            x,
            y: {
              field: "size",
              type: "quantitative",
              title: unit,
              // Both scales end at the whole, so that the line meets the top of the first bar.
              scale: { domain: [0, 1.12 * total], nice: false },
            },
          },
        },
        {
          encoding: {
            x,
            y: {
              field: "cumulative",
              type: "quantitative",
              title: "This and all larger (%)",
              scale: { domain: [0, 112], nice: false },
              axis: { orient: "right", grid: false, values: [0, 20, 40, 60, 80, 100] },
            },
          },
          layer: [
            {
              mark: { type: "line", color: line, strokeWidth: 2, point: { color: line, size: 45 } },
            },
            {
              mark: { type: "text", dy: -12, color: palette.action, fontWeight: 600 },
              encoding: { text: { field: "cumulative", type: "quantitative", format: ".0f" } },
            },
          ],
        },
      ],
    },
  });
}
