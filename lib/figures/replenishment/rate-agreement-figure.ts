import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

/** One witness: what it says about the error of a rate. */
export interface RateWitness {
  readonly name: string;
  /** Fraction, −0.16 is 16 % too little. */
  readonly error: number;
  readonly interval: readonly [number, number];
  /** Of the pump under suspicion; others are drawn quiet. */
  readonly suspect?: boolean;
}

const percent = (value: number) => `${value < 0 ? "−" : "+"}${Math.abs(100 * value).toFixed(1)} %`;

/**
 * What strips, level and cylinder say about the error of a delivered rate, one under the other, and
 * what the other pumps' logs say.
 *
 * @param witnesses name, error and interval as fractions, at least one; the order is kept
 * @param options.title what the figure shows
 * @returns Vega-Lite figure; its text alternative gives every error with its interval
 * @throws InputError for no witness, or an interval that does not hold its error
 *
 * @example
 * rateAgreementFigure([{ name: "strips", error: -0.16, interval: [-0.18, -0.14] }], { title: "Three witnesses" }).description // => "strips −16.0 % (−18.0 % to −14.0 %)."
 */
export function rateAgreementFigure(
  witnesses: readonly RateWitness[],
  options: { readonly title: string },
): VegaLiteFigure {
  const where = "rateAgreementFigure";
  requireEntries(where, "witnesses", witnesses);
  requireObject(where, "options", options, "an object with title");
  if (witnesses.length === 0) {
    throw new InputError(
      where,
      "witnesses",
      "none",
      "write at least one { name, error, interval }",
    );
  }
  for (const { name, error, interval } of witnesses) {
    if (interval[0] <= error && error <= interval[1]) continue;
    throw new InputError(
      where,
      `interval of ${name}`,
      interval,
      "write [low, high] about the error",
    );
  }
  const values = witnesses.map(({ name, error, interval, suspect = false }) => ({
    name,
    error: 100 * error,
    low: 100 * interval[0],
    high: 100 * interval[1],
    suspect: suspect ? "this pump" : "other pumps",
    label: `${percent(error)}`,
  }));
  const y = {
    field: "name",
    type: "nominal",
    sort: null,
    title: "Witness (no unit)",
    axis: { labelLimit: 260, titlePadding: 10 },
  };
  const x = {
    type: "quantitative",
    title: "Error of the delivered rate against the set one (%)",
    scale: { zero: true, nice: true },
  };
  const color = {
    field: "suspect",
    type: "nominal",
    sort: null,
    title: null,
    scale: {
      domain: ["this pump", "other pumps"],
      range: [palette.series[1], palette.quiet],
    },
  };
  const both = values.some((v) => v.suspect === "other pumps");
  const colour = both ? { color } : { color: { ...color, legend: null } };
  return vegaLiteFigure({
    title: options.title,
    description: `${witnesses
      .map(({ name, error, interval }) => {
        return `${name} ${percent(error)} (${percent(interval[0])} to ${percent(interval[1])})`;
      })
      .join("; ")}.`,
    specification: {
      width: 380,
      height: { step: 26 },
      data: { values },
      layer: [
        {
          data: { values: [{ zero: 0 }] },
          mark: { type: "rule", color: palette.ink },
          encoding: { x: { ...x, field: "zero" } },
        },
        {
          mark: { type: "rule", strokeWidth: 2.5 },
          encoding: { y, x: { ...x, field: "low" }, x2: { field: "high" }, ...colour },
        },
        {
          mark: { type: "point", size: 70 },
          encoding: { y, x: { ...x, field: "error" }, ...colour },
        },
      ],
    },
  });
}
