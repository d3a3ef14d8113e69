import { describe, expect, it } from "vitest";
import { controlExplorer, todayFigure } from "../../lib/figures/index.ts";
import { drawn, marksOf } from "./drawn.ts";
import { limitsOf, seriesOf, timeOf, wholeLine } from "./sample-series.ts";

const title = "Today and yesterday";

describe("todayFigure", () => {
  it("draws every parameter and colour without a warning", async () => {
    const series = wholeLine(5);
    const figure = todayFigure({ title, series, now: timeOf(4), before: timeOf(3) });
    const { warnings, svg } = await drawn(figure);
    expect(warnings).toEqual([]);
    expect(svg).not.toContain("NaN");
    for (const words of ["LD (speed)", "Retained silver", "Colour spread", "now", "before"]) {
      expect(svg).toContain(words);
    }
  });

  it("says every deviation, then and now, and what is beyond which limit", () => {
    const series = [seriesOf([0.01, -0.07]), seriesOf([0.02, 0.09], { colour: "green" })];
    const { description } = todayFigure({ title, series, now: timeOf(1), before: timeOf(0) });
    expect(description).toContain(
      "LD (speed) red −0.07 (beyond the action limit), green +0.09 (beyond the control limit), before +0.01, +0.02",
    );
  });

  it("puts a deviation at its share of the action limit, on the side it stands", () => {
    const { specification } = todayFigure({ title, series: [seriesOf([-0.03])] });
    expect(JSON.stringify(specification)).toContain('"values":[{"s":-0.5}]');
  });

  it("uses the latest strip by default, says what was not read, and does without limits", async () => {
    const bare = seriesOf([0.2], {
      parameter: "own",
      name: "Own patch",
      limits: limitsOf(null, null),
    });
    const short = seriesOf([0.01], { colour: "blue" });
    const series = [seriesOf([0, 0.02]), short, { ...bare, takenAt: [timeOf(1)] }];
    const figure = todayFigure({ title, series });
    expect(figure.description).toContain("strip of 2 Mar 12:00");
    expect(figure.description).toContain("LD (speed) red +0.02, blue not read");
    expect(figure.description).toContain("Own patch red +0.20");
    expect((await drawn(figure)).warnings).toEqual([]);
    expect(marksOf(figure.specification).map(({ text }) => text)).not.toContain("before");
  });

  it("refuses a time at which there was no strip", () => {
    expect(() => todayFigure({ title, series: wholeLine(3), now: "2026-05-01T08:00" })).toThrow(
      /takenAt/,
    );
    expect(() => todayFigure({ title, series: [] })).toThrow(/takenAt/);
  });
});

describe("controlExplorer", () => {
  it("gives a trace for each parameter and colour, different in dash and symbol, with limits drawn", () => {
    const figure = controlExplorer({ title, series: wholeLine(10) });
    expect(figure.data).toHaveLength(5);
    const lines = figure.data.slice(0, 3).map(({ line }) => (line as { dash: string }).dash);
    const symbols = figure.data
      .slice(0, 3)
      .map(({ marker }) => (marker as { symbol: string }).symbol);
    expect(new Set(lines).size).toBe(3);
    expect(new Set(symbols).size).toBe(3);
    const shapes = figure.layout.shapes as readonly { name?: string }[];
    expect(shapes.filter(({ name }) => name === "process control limit")).toHaveLength(5);
    expect(JSON.parse(JSON.stringify(figure))).toEqual(figure);
  });

  it("counts in its text alternative what is beyond the limits", () => {
    const figure = controlExplorer({ title, series: [seriesOf([0.09, 0.07, 0])] });
    expect(figure.description).toContain(
      "1 readings are beyond a control limit of the process, 1 beyond an action limit only.",
    );
    expect(() => controlExplorer({ title, series: [] })).toThrow(/at least one reading/);
  });
});
