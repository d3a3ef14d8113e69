import type { CrossedReadings, GaugeStudy } from "../../control/index.ts";
import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";

const PARTS = [
  ["repeatabilitySd", "repeatability"],
  ["reproducibilitySd", "reproducibility"],
  ["gaugeSd", "both: the gauge"],
  ["patchSd", "the patches"],
  ["totalSd", "total"],
] as const;

/**
 * Components of a gauge study as standard deviations, one bar for each method.
 *
 * @param studies from `gaugeStudyByRange` and `gaugeStudyByAnova`, at least one
 * @param options.title what the figure shows
 * @returns Vega-Lite figure; its text alternative gives every component
 * @throws InputError for no study
 *
 * @example
 * gaugeComponentsFigure([gaugeStudyByRange([[[0.20, 0.22], [1.00, 1.01]], [[0.21, 0.21], [1.02, 1.00]]])]).description.includes("repeatability 0.0111") // => true
 *
 * Source: AIAG, Measurement Systems Analysis, 4th ed. 2010, ch. III (components of variation).
 */
export function gaugeComponentsFigure(
  studies: readonly GaugeStudy[],
  options: { readonly title?: string } = {},
): VegaLiteFigure {
  requireEntries("gaugeComponentsFigure", "studies", studies);
  if (studies.length === 0) {
    throw new InputError("gaugeComponentsFigure", "studies", [], "write at least one study");
  }
  const values = studies.flatMap((study) =>
    PARTS.map(([field, part]) => {
      const sd = study[field];
      return { part, method: study.method, sd, said: sd.toFixed(4) };
    }),
  );
  const y = {
    field: "part",
    type: "nominal",
    sort: null,
    title: "Scatter from (no unit)",
    axis: { labelLimit: 200 },
  };
  const offset = { field: "method", type: "nominal", sort: null };
  const most = Math.max(...values.map((each) => each.sd));
  const x = {
    field: "sd",
    type: "quantitative",
    title: "Standard deviation (density)",
    scale: { domain: [0, 1.15 * most], nice: false },
  };
  const list = studies.map(({ method }) => {
    const own = values.filter((each) => each.method === method);
    return `${method}: ${own.map(({ part, said }) => `${part} ${said}`).join(", ")}`;
  });
  return vegaLiteFigure({
    title: options.title ?? "Where the scatter of the readings comes from",
    description: `Standard deviations in density. By ${list.join("; by ")}.`,
    specification: {
      width: 420,
      height: { step: 17 },
      data: { values },
      encoding: { y, yOffset: offset, x },
      layer: [
        {
          mark: { type: "bar" },
          encoding: {
            color: {
              field: "method",
              type: "nominal",
              sort: null,
              title: null,
              legend: { labelLimit: 300 },
              scale: { range: [palette.series[0], palette.series[5]] },
            },
          },
        },
        {
          mark: { type: "text", align: "left", dx: 4 },
          encoding: { text: { field: "said", type: "nominal" } },
        },
      ],
    },
  });
}

/**
 * The readings of a gauge study, patch by patch, one marker for each operator: scatter within a
 * marker's column is repeatability, markers that keep apart are reproducibility.
 *
 * @param study from `crossedReadings`, up to six operators
 * @param options.title what the figure shows
 * @returns Vega-Lite figure; its text alternative gives each operator's mean
 * @throws InputError for more than six operators
 *
 * @example
 * gaugeReadingsFigure({ operators: ["A", "B"], patches: ["x", "y"], readings: [[[0.2, 0.22], [1, 1.01]], [[0.21, 0.21], [1.02, 1]]] }).description.includes("A 0.6075") // => true
 */
export function gaugeReadingsFigure(
  study: CrossedReadings,
  options: { readonly title?: string } = {},
): VegaLiteFigure {
  requireObject(
    "gaugeReadingsFigure",
    "study",
    study,
    "an object with operators, patches and readings",
  );
  const { operators, patches, readings } = study;
  if (operators.length > palette.series.length) {
    throw new InputError("gaugeReadingsFigure", "operators", operators.length, "write at most 6");
  }
  const values = operators.flatMap((operator, o) =>
    patches.flatMap((patch, p) =>
      (readings[o]?.[p] ?? []).map((density) => ({ operator, patch, density })),
    ),
  );
  const means = operators.map((operator, o) => {
    const own = readings[o]?.flat() ?? [];
    return `${operator} ${(own.reduce((sum, v) => sum + v, 0) / own.length).toFixed(4)}`;
  });
  const name = { field: "operator", type: "nominal", sort: null, title: "Operator" };
  return vegaLiteFigure({
    title: options.title ?? "Every reading of the gauge study",
    description: `${patches.length} patches, read ${readings[0]?.[0]?.length ?? 0} times by each of ${operators.length} operators. Means: ${means.join(", ")} (density).`,
    specification: {
      width: figureWidth.plot,
      height: 240,
      data: { values },
      mark: { type: "point", filled: false, size: 40, strokeWidth: 1.6 },
      encoding: {
        x: {
          field: "patch",
          type: "nominal",
          sort: null,
          title: "Patch (no unit)",
          axis: { labelAngle: -45, labelLimit: 200, labelOverlap: false },
        },
        xOffset: { field: "operator", type: "nominal", sort: null },
        y: {
          field: "density",
          type: "quantitative",
          title: "Reading (density)",
          scale: { zero: false },
        },
        color: name,
        shape: name,
      },
    },
  });
}
