import { describe, expect, it } from "vitest";
import { seriesOfStrips } from "../../lib/control/index.ts";
import {
  controlChartFigure,
  latestStripFigure,
  stripChart,
  stripExplorer,
} from "../../lib/figures/index.ts";
import { paperLab } from "./paper-lab.ts";

describe("the figures of a process's strips", () => {
  const lab = paperLab([0, 0.12, 0.12, 0.01]);
  it("ring the repeats and mark the days on which the line was held", () => {
    const figure = stripChart(lab);
    expect(figure).toEqual(
      controlChartFigure({
        title: "Colour-paper process: control strips",
        series: seriesOfStrips(lab),
        repeats: ["2026-03-03T08:00", "2026-03-04T08:00"],
        flagged: [{ time: "2026-03-03", label: "line held" }],
      }),
    );
  });
  it("draw the parameters that are asked for", () => {
    const { description } = stripChart(lab, { title: "LD", parameters: ["ld"] });
    expect(description).toContain("LD (speed)");
    expect(description).not.toContain("D-min");
  });
  it("set the latest strip beside the last of the day before, if there is one", () => {
    expect(latestStripFigure(lab).description).toMatch(
      /strip of 4 Mar 08:00 and, before it, the strip of 3 Mar 08:00/,
    );
    expect(latestStripFigure(paperLab([0])).description).toMatch(/strip of 1 Mar 08:00, against/);
    const early = { ...lab, asOf: "2026-03-02T12:00" };
    expect(latestStripFigure(early).description).toMatch(/strip of 2 Mar 08:00/);
  });
  it("refuse a process without strips", () => {
    for (const draw of [stripChart, latestStripFigure, stripExplorer]) {
      expect(() => draw(paperLab([]))).toThrow(/write/);
    }
  });
});
