import { describe, expect, it } from "vitest";
import { plotlyFigure, vegaLiteFigure } from "../../lib/figures/parts/figure.ts";

const spec = (x: object, y: object) => ({
  data: { values: [{ t: 1, d: 2 }] },
  mark: "point",
  encoding: {
    x: { field: "t", type: "quantitative", ...x },
    y: { field: "d", type: "quantitative", ...y },
  },
});
const good = spec({ title: "Time (min)" }, { axis: { title: "pH (no unit)" } });
const texts = { title: "A figure", description: "One point at 1 min." };

function bundleOf(value: object): Record<string, unknown> {
  const show: unknown = Reflect.get(value, Symbol.for("Jupyter.display"));
  if (typeof show !== "function") throw new Error("no display method");
  return show.call(value) as Record<string, unknown>;
}

describe("vegaLiteFigure", () => {
  it("shows itself as Vega-Lite v5 and as its text alternative, and stays plain JSON", () => {
    const figure = vegaLiteFigure({ ...texts, specification: good });
    const bundle = bundleOf(figure);
    expect(Object.keys(bundle)).toEqual(["application/vnd.vegalite.v5+json", "text/plain"]);
    expect(bundle["text/plain"]).toBe("A figure\nOne point at 1 min.");
    expect(JSON.parse(JSON.stringify(figure))).toEqual(figure);
    expect(figure.specification).toMatchObject({
      $schema: "https://vega.github.io/schema/vega-lite/v5.json",
      title: "A figure",
      description: texts.description,
      background: "white",
    });
  });

  it("refuses a missing title or text alternative", () => {
    expect(() => vegaLiteFigure({ ...texts, title: " ", specification: good })).toThrow(
      /vegaLiteFigure: title is " "/,
    );
    expect(() => vegaLiteFigure({ ...texts, description: "", specification: good })).toThrow(
      /text alternative/,
    );
  });

  it("refuses an axis without a title, and one whose title names no unit", () => {
    const cases = [
      spec({ title: "Time (min)" }, {}),
      spec({ title: "Time" }, { title: "pH (no unit)" }),
    ];
    for (const specification of cases) {
      expect(() => vegaLiteFigure({ ...texts, specification })).toThrow(/unit in brackets/);
    }
  });

  it("finds the axis without a unit inside layers and stacked panels, and says where", () => {
    const specification = {
      vconcat: [good, { layer: [spec({ title: "Time (min)" }, { title: "Density" })] }],
    };
    expect(() => vegaLiteFigure({ ...texts, specification })).toThrow(
      "specification.vconcat[1].layer[0].encoding.y.title",
    );
  });

  it("accepts a layer that shares the titled axis of another layer, and an axis that is not drawn", () => {
    const untitled = spec({}, {});
    expect(vegaLiteFigure({ ...texts, specification: { layer: [good, untitled] } }).kind).toBe(
      "vega-lite",
    );
    expect(
      vegaLiteFigure({ ...texts, specification: spec({ axis: null }, { axis: null }) }).kind,
    ).toBe("vega-lite");
  });

  it("keeps the caller's specification unchanged and lets its config win over the theme", () => {
    const specification = Object.freeze({ ...good, config: Object.freeze({ font: "serif" }) });
    const figure = vegaLiteFigure({ ...texts, specification });
    expect(figure.specification.config).toMatchObject({ font: "serif" });
  });
});

describe("plotlyFigure", () => {
  const layout = {
    xaxis: { title: { text: "Time (min)" } },
    yaxis: { title: "Density (no unit)" },
  };

  it("shows itself as Plotly and as its text alternative, and stays plain JSON", () => {
    const figure = plotlyFigure({ ...texts, data: [{ x: [1], y: [2] }], layout });
    const bundle = bundleOf(figure);
    expect(Object.keys(bundle)).toEqual(["application/vnd.plotly.v1+json", "text/plain"]);
    expect(JSON.parse(JSON.stringify(figure))).toEqual(figure);
    expect(figure.layout).toMatchObject({ paper_bgcolor: "white", ...layout });
  });

  it("refuses an axis without a unit, also a second axis and the axes of a scene", () => {
    const second = [{ x: [1], y: [2], yaxis: "y2" }];
    expect(() => plotlyFigure({ ...texts, data: second, layout })).toThrow("layout.yaxis2.title");
    const surface = [{ type: "surface", z: [[1]] }];
    expect(() => plotlyFigure({ ...texts, data: surface, layout })).toThrow(
      "layout.scene.xaxis.title",
    );
    expect(() => plotlyFigure({ ...texts, data: [], layout })).toThrow(/at least one Plotly trace/);
  });
});
