import { describe, expect, it } from "vitest";
import { controlChartFigure } from "../../lib/figures/index.ts";
import { drawn, marksOf } from "./drawn.ts";
import { limitsOf, seriesOf, timeOf, wholeLine } from "./sample-series.ts";

const title = "Film line";
const WIDEST_PX = 780;

describe("controlChartFigure", () => {
  it.each([1, 2, 10, 90, 700])("compiles and draws without a warning, %i days", async (days) => {
    const { warnings, width, svg } = await drawn(
      controlChartFigure({ title, series: wholeLine(days) }),
    );
    expect(warnings).toEqual([]);
    expect(width).toBeLessThanOrEqual(WIDEST_PX);
    expect(svg).not.toContain("NaN");
  });

  it("has one panel a parameter, headed by the parameter's name, and one key", () => {
    const { specification } = controlChartFigure({ title, series: wholeLine(10) });
    expect(specification.vconcat).toHaveLength(4);
    const texts = marksOf(specification).map(({ text }) => text);
    for (const name of ["LD (speed)", "Retained silver", "Colour spread"]) {
      expect(texts).toContain(name);
    }
  });

  it("draws and names both process limits, each in its own style", () => {
    const marks = marksOf(
      controlChartFigure({ title, series: [seriesOf([0, 0.01])] }).specification,
    );
    const texts = marks.map(({ text }) => text);
    for (const name of ["action +0.06", "action −0.06", "control +0.08", "control −0.08", "aim"]) {
      expect(texts).toContain(name);
    }
    const rules = marks.filter(({ type }) => type === "rule");
    const styles = new Set(
      rules.map(({ color, strokeDash, strokeWidth }) =>
        JSON.stringify([color, strokeDash, strokeWidth]),
      ),
    );
    expect(styles.size).toBeGreaterThanOrEqual(3);
  });

  it("tells the three colours apart without colour, by dash and by marker", () => {
    const marks = marksOf(controlChartFigure({ title, series: wholeLine(10) }).specification);
    const lines = marks.filter(({ type, strokeWidth }) => type === "line" && strokeWidth === 1.8);
    const red = lines.filter(({ color }) => color === lines[0]?.color);
    expect(new Set(lines.map(({ strokeDash }) => JSON.stringify(strokeDash))).size).toBe(3);
    expect(new Set(red.map(({ strokeDash }) => JSON.stringify(strokeDash))).size).toBe(1);
    const shapes = marks.filter(({ type, size }) => type === "point" && size === 34);
    expect(new Set(shapes.map(({ shape }) => shape))).toEqual(
      new Set(["circle", "triangle-up", "square"]),
    );
  });

  it("says in its text alternative what is beyond the limits, and when; a tie is within", () => {
    const series = [seriesOf([0.08, 0.09, -0.06, -0.07, 0])];
    const { description } = controlChartFigure({ title, series });
    expect(description).toContain(
      "1 reading is beyond a control limit of the process: 2 Mar 12:00: LD (speed) red +0.09.",
    );
    expect(description).toContain(
      "2 readings are beyond an action limit of the process but within its control limit.",
    );
    const within = controlChartFigure({ title, series: [seriesOf([0.06, -0.06])] }).description;
    expect(within).toContain("No reading is beyond a control limit of the process.");
    expect(within).toContain("0 readings are beyond an action limit");
  });

  it("marks a change of batch once over all panels, named, and says whether it was crossed over", () => {
    const crossed = wholeLine(10);
    expect(controlChartFigure({ title, series: crossed }).description).toContain(
      "6 Mar 2026: batch 41 → 42.",
    );
    const batchChanges = [{ at: 2, from: "41", to: "42", crossover: false }];
    const figure = controlChartFigure({
      title,
      series: [seriesOf([0, 0, 0, 0], { batchChanges })],
    });
    expect(figure.description).toContain("3 Mar 2026: batch 41 → 42 (no crossover).");
    const labels = marksOf(figure.specification).filter(
      ({ text }) => text === "batch 41 → 42 (no crossover)",
    );
    expect(labels).toHaveLength(1);
  });

  it("takes strips run beside the old batch for one change, where the new batch stays", () => {
    const change = (at: number, from: string, to: string) => ({ at, from, to, crossover: true });
    const batchChanges = [change(1, "41", "42"), change(2, "42", "41"), change(4, "41", "42")];
    const figure = controlChartFigure({
      title,
      series: [seriesOf([0, 0, 0, 0, 0], { batchChanges })],
    });
    expect(figure.description).toContain("5 Mar 2026: batch 41 → 42.");
    expect(figure.description).not.toContain("42 → 41");
  });

  it("rings repeats and shades days that do not count", async () => {
    const flagged = [{ time: "2026-03-02", label: "developer contaminated" }];
    const series = wholeLine(10);
    const figure = controlChartFigure({ title, series, repeats: [timeOf(3)], flagged });
    expect(figure.description).toContain("2 Mar 2026, marked: developer contaminated.");
    const texts = marksOf(figure.specification).map(({ text }) => text);
    expect(texts).toContain("repeat strip");
    expect(texts).toContain("marked day, named above");
    expect((await drawn(figure)).warnings).toEqual([]);
  });

  it("draws a reading far beyond the limits at the edge and says so in the key", async () => {
    const figure = controlChartFigure({ title, series: [seriesOf([0, 0.9, 0, -2])] });
    expect(marksOf(figure.specification).map(({ text }) => text)).toContain("off the scale");
    expect(figure.description).toContain("LD (speed) red +0.90");
    expect((await drawn(figure)).warnings).toEqual([]);
  });

  it("draws from and to the asked times only, and keeps the batch change where it belongs", () => {
    const { description } = controlChartFigure({
      title,
      series: wholeLine(10),
      from: timeOf(4),
      to: "2026-03-07",
    });
    expect(description).toContain("5 Mar 2026 to 7 Mar 2026, 3 strips");
    expect(description).toContain("batch 41 → 42");
    const before = controlChartFigure({ title, series: wholeLine(10), to: timeOf(2) }).description;
    expect(before).not.toContain("batch");
  });

  it("draws a parameter without any limits", async () => {
    const series = [seriesOf([0.5, -0.2], { limits: limitsOf(null, null) })];
    const figure = controlChartFigure({ title, series });
    expect(figure.description).toContain("LD (speed) (no process limits)");
    expect((await drawn(figure)).warnings).toEqual([]);
  });

  it("gives the same bytes for the same readings, and leaves them as they were", async () => {
    const series = wholeLine(40);
    const before = JSON.stringify(series);
    const once = await drawn(controlChartFigure({ title, series }));
    const again = await drawn(controlChartFigure({ title, series: wholeLine(40) }));
    expect(JSON.stringify(series)).toBe(before);
    expect(once.svg.replace(/(clip|gradient)\d+/g, "")).toBe(
      again.svg.replace(/(clip|gradient)\d+/g, ""),
    );
  });

  it("stays small enough to file when ten years of strips are drawn", () => {
    const { specification } = controlChartFigure({ title, series: wholeLine(3650) });
    expect(JSON.stringify(specification).length).toBeLessThan(400_000);
  });

  it("refuses no readings, readings that are no numbers, times that are no times, two processes", () => {
    expect(() => controlChartFigure({ title, series: [] })).toThrow(/at least one reading/);
    expect(() => controlChartFigure({ title, series: [seriesOf([])] })).toThrow(
      /at least one reading/,
    );
    expect(() => controlChartFigure({ title, series: [seriesOf([Number.NaN])] })).toThrow(/finite/);
    const wrongTime = seriesOf([0], { takenAt: ["yesterday"] });
    expect(() => controlChartFigure({ title, series: [wrongTime] })).toThrow(/2026-03-02T08:05/);
    const two = [seriesOf([0]), seriesOf([0], { process: "colour-paper" })];
    expect(() => controlChartFigure({ title, series: two })).toThrow(/one process/);
  });
});
