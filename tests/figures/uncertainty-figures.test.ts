import { describe, expect, it } from "vitest";
import {
  bathPhFigure,
  strengthIntervalFigure,
  uncertaintyBudgetTable,
  uncertaintyShareFigure,
} from "wetside/figures";
import { bathFormula, bathPhAgainstArea } from "wetside/solutions";
import {
  balanceInput,
  dilutionStrengthBudget,
  graduateInput,
  powderStrengthBudget,
  propagateUncertainty,
} from "wetside/uncertainty";
import { drawn } from "./drawn.ts";

const volume = graduateInput({ name: "total", readingMl: 500, toleranceMl: 5, divisionMl: 10 });
const dilution = dilutionStrengthBudget({
  stock: graduateInput({ name: "stock", readingMl: 20, toleranceMl: 1, divisionMl: 2 }),
  total: volume,
});
const powder = powderStrengthBudget({
  mass: balanceInput({ name: "mass", massG: 2, divisionG: 0.1 }),
  volume,
});
const mixes = [
  { name: "concentrate 1+24", budget: dilution },
  { name: "powder", budget: powder },
];

describe("figures of uncertainty and of a bath's pH", () => {
  it("show the share of every measurement and name the largest in words", async () => {
    const figure = uncertaintyShareFigure(mixes);
    expect(figure.description).toMatch(/concentrate 1\+24: stock \d+ %; powder: mass \d+ %/);
    const { svg, warnings } = await drawn(figure);
    expect(warnings).toEqual([]);
    expect(svg).toContain("Share of the variance (%)");
    expect(svg).toContain("stock");
  });

  it("give the smallest inputs one colour together where there are more than colours", async () => {
    const names = ["a", "b", "c", "d", "e", "f", "g", "h"];
    const budget = propagateUncertainty(
      (x) => names.reduce((sum, name) => sum + (x[name] ?? 0), 0),
      names.map((name, i) => ({
        name,
        distribution: { kind: "normal", mean: 1, standardUncertainty: i + 1 } as const,
      })),
    );
    const { svg } = await drawn(uncertaintyShareFigure([{ name: "mix", budget }]));
    expect(svg).toContain(">other<");
    expect(svg).toContain(">h<");
    expect(svg).not.toContain(">a<");
  });

  it("show each interval in per cent, with a band that would not be noticed", async () => {
    const figure = strengthIntervalFigure(mixes, { tolerancePercent: 5 });
    const half = (100 * dilution.expandedUncertainty) / dilution.value;
    expect(figure.description).toContain(`concentrate 1+24 ± ${half.toFixed(1)} %`);
    expect(figure.description).toContain("± 5 %");
    const { svg, warnings } = await drawn(figure);
    expect(warnings).toEqual([]);
    expect(svg).toContain(`± ${half.toFixed(1)} %`);
  });

  it("show the pH of a bath against area, with its limit", async () => {
    const points = bathPhAgainstArea(
      {
        bath: bathFormula("citric-stop-bath"),
        bathVolumeMl: 1000,
        carriedIn: bathFormula("print-developer"),
        carryInMlPerM2: 70,
      },
      [0, 0.5, 1],
    );
    const figure = bathPhFigure([{ name: "70 mL/m²", points }], { pHLimit: 5.5 });
    expect(figure.description).toContain("The limit is pH 5.5");
    const { svg, warnings } = await drawn(figure);
    expect(warnings).toEqual([]);
    expect(svg).toContain("limit pH 5.5");
    expect(svg).toContain("Film area (m²)");
  });

  it("lay a budget out as a table", () => {
    const budget = uncertaintyBudgetTable(dilution, { caption: "Strength" });
    expect(budget.rows.map((row) => row.name)).toEqual(["stock", "total", "result"]);
    expect(budget.rows.at(-1)?.value).toBe("0.04");
  });

  it.each([
    [() => uncertaintyShareFigure([]), "at least one"],
    [() => strengthIntervalFigure([]), "at least one"],
    [() => strengthIntervalFigure(mixes, { tolerancePercent: -1 }), "at least 0"],
    [
      () =>
        strengthIntervalFigure([
          {
            name: "nothing",
            budget: propagateUncertainty(
              ({ x = 0 }) => x,
              [{ name: "x", distribution: { kind: "normal", mean: 0, standardUncertainty: 1 } }],
            ),
          },
        ]),
      "per cent of 0",
    ],
    [() => bathPhFigure([]), "at least one"],
    [() => bathPhFigure([{ name: "a", points: [{ areaM2: 0, pH: 3 }] }]), "at least two points"],
    [
      () =>
        bathPhFigure(
          [
            {
              name: "a",
              points: [
                { areaM2: 0, pH: 3 },
                { areaM2: 1, pH: 4 },
              ],
            },
          ],
          { pHLimit: 20 },
        ),
      "at most 14",
    ],
  ])("refuse what cannot be drawn (%#)", (make, message) => {
    expect(make).toThrow(message);
  });
});
