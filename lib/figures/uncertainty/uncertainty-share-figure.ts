import { InputError, requireEntries } from "../../input/index.ts";
import type { UncertaintyBudget } from "../../uncertainty/index.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

/** A mix and the budget of its strength. */
export interface NamedBudget {
  readonly name: string;
  readonly budget: UncertaintyBudget;
}

/** As many inputs as there are colours get one; the rest share the last. */
const OTHER = "other";

function largestInputs(
  shares: readonly { readonly input: string; readonly share: number }[],
): ReadonlySet<string> {
  const sums = new Map<string, number>();
  for (const { input, share } of shares) sums.set(input, (sums.get(input) ?? 0) + Math.abs(share));
  const most = palette.series.length;
  if (sums.size <= most) return new Set(sums.keys());
  const ranked = [...sums].toSorted((a, b) => b[1] - a[1]);
  return new Set(ranked.slice(0, most - 1).map(([input]) => input));
}

/**
 * Which measurement matters: for each mix, the share of every input in the variance of the strength.
 *
 * @param mixes named budgets, at least one; inputs of one name share a colour
 * @param options.title what the figure shows; names the quantity if left out
 * @returns Vega-Lite figure of stacked bars; its text alternative names the largest share of each mix
 * @throws InputError for no mix, or a budget without inputs
 *
 * @example
 * uncertaintyShareFigure([{ name: "x alone", budget: propagateUncertainty(({ x }) => x, [{ name: "x", distribution: { kind: "normal", mean: 1, standardUncertainty: 0.1 } }]) }]).description.includes("x alone: x 100 %") // => true
 */
export function uncertaintyShareFigure(
  mixes: readonly NamedBudget[],
  options: { readonly title?: string } = {},
): VegaLiteFigure {
  requireEntries("uncertaintyShareFigure", "mixes", mixes);
  if (!(mixes?.length > 0)) {
    const advice = "write at least one { name, budget }";
    throw new InputError("uncertaintyShareFigure", "mixes", mixes, advice);
  }
  const shares = mixes.flatMap(({ name, budget }) =>
    budget.rows.map((row) => ({ mix: name, input: row.name, share: row.variancePercent })),
  );
  const named = largestInputs(shares);
  const values = shares.map((each) => (named.has(each.input) ? each : { ...each, input: OTHER }));
  const largest = mixes.map(({ name, budget }) => {
    const [first] = budget.rows.toSorted((a, b) => b.variancePercent - a.variancePercent);
    if (!first) {
      const advice = "write a budget with at least one input";
      throw new InputError("uncertaintyShareFigure", "budget.rows", budget.rows, advice);
    }
    return `${name}: ${first.name} ${first.variancePercent.toFixed(0)} %`;
  });
  return vegaLiteFigure({
    title: options.title ?? "Where the uncertainty of each mix comes from",
    description: `Largest share of the variance in each mix. ${largest.join("; ")}.`,
    specification: {
      width: 420,
      height: { step: 34 },
      data: { values },
      mark: { type: "bar", stroke: "white", strokeWidth: 1 },
      encoding: {
        y: {
          field: "mix",
          type: "nominal",
          sort: null,
          title: "Mix (no unit)",
          axis: { labelLimit: 400 },
        },
        x: {
          field: "share",
          type: "quantitative",
          stack: true,
          title: "Share of the variance (%)",
          scale: { domain: [0, 100] },
        },
        color: { field: "input", type: "nominal", sort: null, title: "Measured" },
        order: { field: "share", sort: "descending" },
      },
    },
  });
}
