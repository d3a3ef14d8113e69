import type { FaultRanking, ReadingEvidence } from "../../control/index.ts";
import { InputError, requireObject } from "../../input/index.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

const ORDER = ["dMin", "ld", "hdLessLd", "dMax", "retainedSilver"];
const COLOURS = ["red", "green", "blue"];

/** By parameter as strips are read, then red, green, blue. */
function inOrder(evidence: readonly ReadingEvidence[]): readonly ReadingEvidence[] {
  const place = ({ parameter, colour }: ReadingEvidence) => {
    const at = ORDER.indexOf(parameter);
    return 10 * (at < 0 ? ORDER.length : at) + COLOURS.indexOf(colour);
  };
  return [...evidence].sort((a, b) => place(a) - place(b));
}

/**
 * Observed deviations with error bars beside what the two leading groups of faults foretell for each
 * reading from the others: where a mark of a fault lies off the observed one, the reading is against it.
 *
 * Bars are ± 2 standard deviations: of strip noise for what was read, of noise and scatter of the
 * fault's pattern for what is foretold.
 *
 * @param ranking from `rankFaults`
 * @param options.title what the figure shows
 * @returns Vega-Lite figure; its text alternative gives each reading with what it says
 * @throws InputError for a ranking without evidence
 *
 * @example
 * const components = [{ parameter: "ld", name: "LD", colour: "red" as const, limit: 0.06 }];
 * const window = { process: "colour-negative", components, takenAt: ["2026-08-14T07:10"], deviations: [[0.12]], noise: [[1e-4]] };
 * faultEvidenceFigure(rankFaults({ ...window, lagOne: 0, wander: 0.1, assumptions: [], warnings: [] })).kind // => "vega-lite"
 */
export function faultEvidenceFigure(
  ranking: FaultRanking,
  options: { readonly title?: string } = {},
): VegaLiteFigure {
  requireObject(
    "faultEvidenceFigure",
    "ranking",
    ranking,
    "an object with process, faults, groups, …",
  );
  if (ranking.evidence.length === 0) {
    const advice = "write a ranking from rankFaults";
    throw new InputError("faultEvidenceFigure", "ranking.evidence", [], advice);
  }
  const nameOf = (id: string | null) => ranking.faults.find((each) => each.id === id)?.name ?? "";
  const wordsOf = (id: string | null) => {
    const own = ranking.groups.find(({ faults }) => id !== null && faults.includes(id));
    const others = (own?.faults.length ?? 1) - 1;
    const some = others === 1 ? "1 fault" : `${others} faults`;
    return others > 0 ? `${nameOf(id)} (or ${some} like it)` : nameOf(id);
  };
  const sources = ["read", wordsOf(ranking.evidenceFor), wordsOf(ranking.next)];
  const first = inOrder(ranking.evidence);
  const next = inOrder(ranking.evidenceOfNext);
  // "HD − LD (contrast)" is told by its first half; the axis has no room for more.
  const label = ({ name, colour }: ReadingEvidence) =>
    `${name.replace(/ \([^)]*\)$/, "")}, ${colour}`;
  const values = [
    ...first.map((e) => bar(label(e), sources[0], e.observed, e.observedSd)),
    ...first.map((e) => bar(label(e), sources[1], e.expected, e.expectedSd)),
    ...next.map((e) => bar(label(e), sources[2], e.expected, e.expectedSd)),
  ];
  const scale = {
    domain: next.length > 0 ? sources : sources.slice(0, 2),
    range: [palette.ink, palette.series[0], palette.series[1]],
  };
  const y = { field: "reading", type: "nominal", sort: null, title: "Reading (no unit)" };
  const offset = { field: "source", type: "nominal", sort: sources };
  const x = { type: "quantitative", title: "Deviation (density)" };
  const colour = {
    field: "source",
    type: "nominal",
    scale,
    title: null,
    // Without a canvas text widths are overestimated, and a limit would cut what fits.
    legend: { labelLimit: 0, direction: "vertical" },
  };
  return vegaLiteFigure({
    title: options.title ?? "What was read, and what the leading faults foretell",
    description: `For ${wordsOf(ranking.evidenceFor)}: ${first.map(({ words }) => words).join(". ")}.`,
    specification: {
      width: 420,
      height: { step: 13 },
      data: { values },
      encoding: { y: { ...y, axis: { labelLimit: 260, grid: true } } },
      layer: [
        {
          mark: { type: "rule", color: palette.ink },
          encoding: { x: { ...x, datum: 0 }, y: null },
        },
        {
          mark: { type: "rule", strokeWidth: 2 },
          encoding: {
            yOffset: offset,
            x: { ...x, field: "low" },
            x2: { field: "high" },
            color: colour,
          },
        },
        {
          mark: { type: "point", size: 55, filled: true, opacity: 1 },
          encoding: {
            yOffset: offset,
            x: { ...x, field: "mean" },
            color: colour,
            shape: {
              field: "source",
              type: "nominal",
              scale: { domain: scale.domain, range: ["circle", "square", "triangle-up"] },
              title: null,
              legend: colour.legend,
            },
          },
        },
      ],
    },
  });
}

function bar(reading: string, source: string | undefined, mean: number, sd: number) {
  return { reading, source, mean, low: mean - 2 * sd, high: mean + 2 * sd };
}
