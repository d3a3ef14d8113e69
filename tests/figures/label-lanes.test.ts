import { describe, expect, it } from "vitest";
import { timeAxis } from "../../lib/figures/parts/chart-time.ts";
import { lanes, spread } from "../../lib/figures/parts/label-lanes.ts";
import fc from "../properties/fast-check.ts";

const HAIR = 1e-6;

describe("spread", () => {
  it("leaves labels alone that do not touch, and pushes two at one place apart evenly", () => {
    expect(
      spread(
        [
          { at: 10, size: 8 },
          { at: 30, size: 8 },
        ],
        [0, 100],
      ),
    ).toEqual([10, 30]);
    expect(
      spread(
        [
          { at: 50, size: 10 },
          { at: 50, size: 10 },
        ],
        [0, 100],
      ),
    ).toEqual([45, 55]);
    expect(spread([], [0, 100])).toEqual([]);
  });

  it("never lets two labels touch, keeps their order, and stays inside where there is room", () => {
    const label = fc.record({
      at: fc.double({ min: 0, max: 100, noNaN: true }),
      size: fc.constant(10),
    });
    fc.assert(
      fc.property(fc.array(label, { maxLength: 8 }), (labels) => {
        const places = spread(labels, [0, 100]);
        const sorted = [...places].sort((a, b) => a - b);
        sorted.forEach((place, i) => {
          if (i > 0) expect(place - (sorted[i - 1] ?? 0)).toBeGreaterThanOrEqual(10 - HAIR);
          expect(place).toBeGreaterThanOrEqual(-HAIR);
          expect(place).toBeLessThanOrEqual(100 + HAIR);
        });
      }),
    );
  });
});

describe("lanes", () => {
  it("puts overlapping labels in different lanes, the left one higher", () => {
    expect(
      lanes([
        { from: 0, to: 50 },
        { from: 20, to: 70 },
        { from: 60, to: 90 },
      ]),
    ).toEqual([2, 1, 0]);
    expect(
      lanes([
        { from: 0, to: 10 },
        { from: 20, to: 30 },
      ]),
    ).toEqual([0, 0]);
  });
});

describe("timeAxis", () => {
  it("names the unit of its numbers and has between two and twelve ticks, from one hour to ten years", () => {
    const start = Date.UTC(2026, 0, 5, 8);
    for (const days of [0, 0.05, 1, 3, 5, 12, 30, 90, 200, 400, 900, 3650]) {
      const { ticks, title, domain } = timeAxis([start, start + days * 86_400_000], "Strip");
      expect(title).toMatch(/\(.+\)/);
      expect(ticks.length).toBeGreaterThanOrEqual(days < 1 ? 1 : 2);
      expect(ticks.length).toBeLessThanOrEqual(13);
      expect(ticks.every((tick) => tick >= domain[0] && tick <= domain[1])).toBe(true);
    }
  });
});
