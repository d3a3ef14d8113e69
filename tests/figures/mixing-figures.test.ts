import { describe, expect, it } from "vitest";
import {
  cautionWords,
  densityFigure,
  hydrometerFigure,
  mixingCostTable,
  mixingSheetTable,
  stockFigure,
} from "../../lib/figures/index.ts";
import {
  dilutionSheet,
  hydrometerCheck,
  priceMixingSheet,
  stockForecast,
  stockLevels,
} from "../../lib/solutions/index.ts";
import { drawn } from "./drawn.ts";

const shelf = {
  onShelfMl: 12_000,
  weekUseMl: [900, 900, 900, 900, 1400, 0, 0],
  from: "2026-03-02",
};
const points = [
  { specificGravity: 1, strength: 0 },
  { specificGravity: 1.05, strength: 1.25 },
];
const check = (reading: number) =>
  hydrometerCheck({
    reading,
    temperatureC: 20,
    points,
    target: 1,
    tankMl: 12_000,
    presentMl: 10_000,
    concentrateStrength: 5,
  });

describe("stockFigure", () => {
  const levels = stockLevels({ ...shelf, days: 18 });
  const forecast = stockForecast({ ...shelf, leadDays: 5, reserveMl: 500 });
  it("draws without a warning, with both days and the reserve", async () => {
    const figure = stockFigure(levels, forecast, { title: "Fixer", reserveMl: 500 });
    const { warnings, svg } = await drawn(figure);
    expect(warnings).toEqual([]);
    expect(svg).toContain("short on 2026-03-17");
    expect(svg).toContain("order by 2026-03-12");
    expect(svg).toContain("reserve 0.5 L");
  });
  it("says the dates in words, or that it lasts", () => {
    expect(stockFigure(levels, forecast, { title: "Fixer" }).description).toContain("5 L a week");
    const idle = stockForecast({ ...shelf, weekUseMl: [0, 0, 0, 0, 0, 0, 0], leadDays: 5 });
    const description = stockFigure(levels, idle, { title: "Fixer" }).description;
    expect(description).toContain("does not run short");
  });
  it("refuses a single morning", () => {
    expect(() => stockFigure(levels.slice(0, 1), forecast, { title: "t" })).toThrow("two mornings");
  });
});

describe("hydrometerFigure", () => {
  it.each([
    [1.04, "within tolerance", "nothing is added"],
    [1.044, "too strong", "add 1 L of water"],
    [1.036, "too weak", "of concentrate"],
  ])("draws %d and says the verdict and what to do", async (reading, verdict, done) => {
    const figure = hydrometerFigure(check(reading), points, { title: "Fixer" });
    const { warnings, svg } = await drawn(figure);
    expect(warnings).toEqual([]);
    expect(svg).toContain(`${verdict}: ${reading.toFixed(4)}`);
    expect(figure.description).toContain(verdict);
    expect(figure.description).toContain(done);
  });
  it("refuses one point", () => {
    const one = points.slice(0, 1);
    expect(() => hydrometerFigure(check(1.04), one, { title: "t" })).toThrow("two known points");
  });
});

describe("densityFigure", () => {
  it("draws the curve and its marks", async () => {
    const marks = [{ massPercent: 28, label: "for stop baths" }];
    const { warnings, svg } = await drawn(densityFigure({ substance: "acetic acid", marks }));
    expect(warnings).toEqual([]);
    expect(svg).toContain("for stop baths");
  });
  it("says whether the density has a top or only rises", () => {
    expect(densityFigure({ substance: "acetic acid" }).description).toContain("near 78 %");
    const salt = densityFigure({ substance: "sodium thiosulfate", upToPercent: 40 });
    expect(salt.description).toContain("goes from 0.9982 to 1.38");
  });
  it("refuses to draw beyond the data", () => {
    expect(() => densityFigure({ substance: "sodium sulfite" })).toThrow("at most 20");
    expect(() => densityFigure({ substance: "acetic acid", upToPercent: 0 })).toThrow(
      "more than 0",
    );
  });
});

describe("the tables of a mixing day", () => {
  const sheet = dilutionSheet({ title: "Fixer", ratio: "1+4", totalMl: 1000, names: ["fixer"] });
  const priced = (currency: string) =>
    priceMixingSheet(sheet, {
      currency,
      prices: [{ what: "fixer", price: 8, amount: 1, unit: "L" }],
    });
  it("list every step in order", () => {
    const made = mixingSheetTable(sheet);
    expect(made.rows.map(({ what }) => what)).toEqual(["water", "fixer"]);
    expect(made.rows.map(({ amount }) => amount)).toEqual(["800 mL", "200 mL"]);
    expect(() => mixingSheetTable({ ...sheet, steps: [] })).toThrow("with steps");
  });
  it("sum the costs", () => {
    const made = mixingCostTable([priced("EUR"), priced("EUR")]);
    expect(made.rows.at(-1)).toMatchObject({ title: "Total", cost: 3.2 });
  });
  it("pay once for what a tank takes from its replenisher", () => {
    const kit = { title: "replenisher", ratio: "1+4", totalMl: 10_000, names: ["fixer"] };
    const fill = { title: "tank", ratio: "1+1", totalMl: 4000, names: ["Replenisher"] };
    const list = {
      currency: "EUR",
      prices: [
        { what: "fixer", price: 8, amount: 1, unit: "L" },
        { what: "replenisher", price: 1.6, amount: 1, unit: "L" },
      ],
    } as const;
    const both = [kit, fill].map((each) => priceMixingSheet(dilutionSheet(each), list));
    const rows = mixingCostTable(both).rows.map(({ cost }) => Number(cost));
    // 2 L of concentrate at 8; the tank's 2 L of replenisher are part of it.
    expect(rows).toEqual([16, 3.2, -3.2, 16]);
    expect(mixingCostTable(both.slice(1)).rows.at(-1)?.cost).toBe(3.2);
  });
  it("refuse a sheet without prices, and two currencies", () => {
    expect(() => mixingCostTable([sheet])).toThrow("priceMixingSheet");
    expect(() => mixingCostTable([priced("EUR"), priced("GBP")])).toThrow("one currency");
    expect(() => mixingCostTable([])).toThrow("one currency");
  });
});

describe("cautionWords", () => {
  it("says warnings first, and each sentence once over several sheets", () => {
    const [a, b] = ["1+9", "1+4"].map((ratio) =>
      dilutionSheet({ title: "t", ratio, totalMl: 100, names: ["glacial acetic acid"] }),
    );
    const lines = cautionWords(
      { ...a, warnings: ["late"], cautions: a?.cautions ?? [] },
      { cautions: b?.cautions ?? [] },
    ).split("\n");
    expect(lines[0]).toBe("- **late**");
    expect(lines[1]).toContain("acid into water");
    expect(new Set(lines).size).toBe(lines.length);
  });
  it("does not call a mix safe for want of cautions", () => {
    expect(cautionWords({ cautions: [] })).toContain("not a proof of safety");
  });
});

describe("densityFigure's names of mixes", () => {
  it("stand below the curve: right of the mark where it rises, left where it falls", () => {
    const marks = [
      { massPercent: 28, label: "weak" },
      { massPercent: 99.5, label: "glacial" },
    ];
    const { specification } = densityFigure({ substance: "acetic acid", marks });
    const layers = (
      specification as {
        layer: { mark: { align?: string }; data: { values: { label?: string }[] } }[];
      }
    ).layer;
    const named = layers.filter(({ mark }) => mark.align !== undefined);
    expect(
      named.map(({ mark, data }) => [mark.align, data.values.map(({ label }) => label)]),
    ).toEqual([
      ["right", ["glacial"]],
      ["left", ["weak"]],
    ]);
  });
});
