import { describe, expect, it } from "vitest";
import { cusumChart, ewmaChart, individualsChart } from "../../lib/control/index.ts";
import { cusumFigure, ewmaFigure, individualsFigure } from "../../lib/figures/index.ts";
import { drawn, marksOf } from "./drawn.ts";
import { seriesOf } from "./sample-series.ts";

const title = "LD red";
const quiet = Array.from({ length: 30 }, (_, i) => Math.round(2 * Math.sin(i * 2.3)) / 100);
const series = seriesOf([...quiet, 0.09, 0.05, 0.05, 0.06, 0.05, 0.05, 0.06, 0.05, 0.05]);
const base = { first: 0, last: 29 };
const runRules = { rules: ["nelson-1", "nelson-2"] } as const;
const individuals = individualsChart(series.deviations, { base, runRules });
const { centre, sigma } = individuals.limits;
const ewma = ewmaChart(series.deviations, { centre, sigma });
const cusum = cusumChart(series.deviations, { target: centre, sigma });

const figures = {
  individuals: individualsFigure({ title, series, chart: individuals }),
  ewma: ewmaFigure({ title, series, chart: ewma }),
  cusum: cusumFigure({ title, series, chart: cusum }),
};
const textsOf = (name: keyof typeof figures) =>
  marksOf(figures[name].specification).map(({ text }) => text);

describe("figures with statistical limits", () => {
  it.each(["individuals", "ewma", "cusum"] as const)(
    "%s compiles and draws without a warning",
    async (name) => {
      const { warnings, svg } = await drawn(figures[name]);
      expect(warnings).toEqual([]);
      expect(svg).not.toContain("NaN");
    },
  );

  it("names statistical limits as statistical and process limits as the process's, in different styles", () => {
    const texts = textsOf("individuals");
    expect(texts).toContain("statistical limit (3 sigma)");
    expect(texts).toContain("process control limit");
    const rules = marksOf(figures.individuals.specification).filter(({ type }) => type === "rule");
    const dashOf = (color: string) =>
      rules
        .filter((rule) => rule.color === color)
        .map(({ strokeDash }) => JSON.stringify(strokeDash));
    expect(dashOf("#5b3f8c")).toContain("[1.5,3]");
    expect([...dashOf("#7a1f1f"), ...dashOf("#8a6100")]).not.toContain("[1.5,3]");
    expect(new Set(dashOf("#7a1f1f"))).not.toEqual(new Set(dashOf("#8a6100")));
    for (const name of ["ewma", "cusum"] as const) {
      expect(textsOf(name).join(" ")).toMatch(/statistical/);
      expect(textsOf(name).join(" ")).not.toMatch(/process/);
    }
  });

  it("prints the number of a run rule where its pattern is first complete", () => {
    const labels = marksOf(figures.individuals.specification).length;
    expect(labels).toBeGreaterThan(0);
    expect(JSON.stringify(figures.individuals.specification)).toContain('"label":"2"');
  });

  it("shows the base period and says in words where limits come from", () => {
    expect(textsOf("individuals")).toContain("base period, 30 readings");
    expect(figures.individuals.description).toContain(
      "base period 1 Mar 2026 to 30 Mar 2026 (30 readings)",
    );
  });

  it("says in the text alternative when averages and sums pass their limits", () => {
    expect(ewma.beyond[0]).toBe(31);
    expect(figures.ewma.description).toContain(
      "It is beyond them after 8 readings, first 1 Apr 12:00, last 8 Apr 12:00.",
    );
    expect(cusum.signals.length).toBeGreaterThan(0);
    expect(figures.cusum.description).toMatch(/signals?.*passed its decision interval/);
    const calm = seriesOf(quiet);
    const calmCusum = cusumFigure({
      title,
      series: calm,
      chart: cusumChart(quiet, { target: centre, sigma }),
    });
    expect(calmCusum.description).toContain("Neither sum passes the interval.");
  });

  it("keeps a sum that runs away off the scale instead of flattening the rest", async () => {
    const far = seriesOf([...quiet, ...Array.from({ length: 40 }, () => 0.2)]);
    const chart = cusumChart(far.deviations, { target: centre, sigma });
    const figure = cusumFigure({ title, series: far, chart });
    expect(marksOf(figure.specification).map(({ text }) => text)).toContain("off the scale");
    expect((await drawn(figure)).warnings).toEqual([]);
  });

  it("refuses a chart that was computed from another series", () => {
    const other = seriesOf([0, 0.01]);
    expect(() => individualsFigure({ title, series: other, chart: individuals })).toThrow(
      /39 readings/,
    );
    expect(() => ewmaFigure({ title, series: other, chart: ewma })).toThrow(
      /computed from this series/,
    );
    expect(() => cusumFigure({ title, series: other, chart: cusum })).toThrow(
      /computed from this series/,
    );
  });
});
