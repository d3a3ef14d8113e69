import { describe, expect, it } from "vitest";
import { plotlyFigure, table, trendFigure, vegaLiteFigure } from "../../lib/figures/index.ts";

const words = { title: "One point", description: "A point." };
const point = (y: unknown) => ({
  data: { values: [{ t: 1, y }] },
  mark: "point",
  encoding: { x: { field: "t", title: "Time (min)" }, y: { field: "y", title: "pH (no unit)" } },
});
const layout = {
  xaxis: { title: { text: "Time (min)" } },
  yaxis: { title: { text: "pH (no unit)" } },
};

describe("a figure with a number that is not finite", () => {
  it("is refused, and the place is named", () => {
    for (const y of [Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => vegaLiteFigure({ ...words, specification: point(y) })).toThrow(
        "specification.data.values[0].y",
      );
      expect(() => plotlyFigure({ ...words, data: [{ x: [1], y: [y] }], layout })).toThrow(
        "data[0].y[0]",
      );
      const columns = [{ field: "pH", title: "pH" }];
      expect(() => table([{ pH: y }], { columns, caption: "pH" } as never)).toThrow("rows[0].pH");
    }
  });
  it("may have gaps", () => {
    expect(vegaLiteFigure({ ...words, specification: point(null) }).kind).toBe("vega-lite");
  });
});

describe("trendFigure", () => {
  it("refuses a day of another age instead of drawing its calendar", () => {
    const series = { from: "2026-03-01", times: [0, 1, 1e300], values: [0, 0, 0] };
    expect(() => trendFigure(series, { crossings: [] } as never, { title: "LD" })).toThrow(
      "series.times[2]",
    );
  });
});
