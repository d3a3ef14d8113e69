import { describe, expect, it } from "vitest";
import { figureWidth, type VegaLiteFigure } from "wetside/figures";
import { drawn } from "./drawn.ts";

/** What every figure owes, whatever it shows. `make` draws them all afresh; the figures come back. */
export function holdFigureLaws<T extends Readonly<Record<string, VegaLiteFigure>>>(
  make: () => T,
): T {
  const figures = make();
  describe.each(Object.entries(figures))("the figure “%s”", (name, figure) => {
    it("is drawn without a warning, with every number, and fits a page", async () => {
      const { warnings, svg, width } = await drawn(figure);
      expect(warnings).toEqual([]);
      expect(svg).not.toMatch(/NaN|undefined|Infinity/);
      expect(width).toBeLessThanOrEqual(figureWidth.total);
    });
    it("is the same bytes for the same input, and passes through JSON unharmed", () => {
      expect(JSON.stringify(make()[name])).toBe(JSON.stringify(figure));
      expect(JSON.parse(JSON.stringify(figure))).toEqual(figure);
    });
  });
  return figures;
}
