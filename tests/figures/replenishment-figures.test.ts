import { describe, expect, it } from "vitest";
import {
  deliveredRateFigure,
  silverFigure,
  tankExplorer,
  tankLogFigure,
  washStagesFigure,
} from "wetside/figures";
import {
  deliveredRates,
  type PumpCounterReading,
  silverOverDays,
  tankOverDays,
} from "wetside/replenishment";
import { developer, unevenDays } from "../replenishment/tank/example-tank.ts";
import { holdFigureLaws } from "./figure-laws.ts";

const days = unevenDays(90);
const log = tankOverDays(developer, days);
const higher = tankOverDays({ ...developer, rateMlPerM2: 720 }, days);
const fixer = {
  tank: { volumeL: 16, rateMlPerM2: 800, carryOutMlPerM2: 60, carryInMlPerM2: 60, components: [] },
  coatedGPerM2: 5,
  fractionRemoved: 1,
};
const cell = { currentA: 4, currentEfficiency: 0.8, hoursPerDay: 6, stopsAtGPerL: 0.5 };
const readings = days.map(({ date, areaM2 }, i): PumpCounterReading => {
  const strokes = days.slice(0, i + 1).reduce((sum, day) => sum + Math.round(day.areaM2 * 120), 0);
  const share = i > 50 ? 0.84 : 1;
  return {
    readAt: `${date}T18:00`,
    counterStrokes: strokes,
    settingMlPerStroke: 5,
    deliveredMl: Math.round((areaM2 * 600 * share) / 50) * 50,
  };
});
const rates = deliveredRates({ readings, days });
const wash = {
  areaM2PerHour: 4,
  carryOverMlPerM2: 40,
  carriedInGPerL: 120,
  flow: "counter-current",
} as const;

const figures = holdFigureLaws(() => ({
  "one tank": tankLogFigure([{ name: "as set", log }], {
    title: "A developer",
    aims: { bromide: 1.2 },
  }),
  "two tanks": tankLogFigure(
    [
      { name: "600 mL/m²", log },
      { name: "720 mL/m²", log: higher },
    ],
    { title: "Two rates", components: ["developing agent", "bromide"] },
  ),
  pump: deliveredRateFigure(rates, { title: "Film developer", rateMlPerM2: 600 }),
  silver: silverFigure(
    [
      { name: "no recovery", log: silverOverDays(fixer, days) },
      { name: "cell on the tank", log: silverOverDays({ ...fixer, recovery: cell }, days) },
    ],
    { title: "Silver in the fixer", limitGPerL: 5 },
  ),
  wash: washStagesFigure(wash, { title: "Water and what it leaves" }),
}));

describe("tankLogFigure", () => {
  it("names every run with the ends of its curves", () => {
    const { description } = figures["two tanks"];
    expect(description).toContain("600 mL/m²: developing agent");
    expect(description).toContain("720 mL/m²: developing agent");
    expect(description).not.toContain("sulfite");
  });
  it("refuses components that are not there, no run, and one day", () => {
    const run = [{ name: "a", log }];
    expect(() => tankLogFigure(run, { title: "x", components: ["silver"] })).toThrow('"bromide"');
    expect(() => tankLogFigure([], { title: "x" })).toThrow("one to four");
    const short = [{ name: "a", log: tankOverDays(developer, days.slice(0, 1)) }];
    expect(() => tankLogFigure(short, { title: "x" })).toThrow("at least two days");
  });
});

describe("tankExplorer", () => {
  const runs = [
    { label: "600", log },
    { label: "720", log: higher },
  ];
  const aims = { "developing agent": 3.5, bromide: 1.2 };
  const figure = tankExplorer({ title: "Rates", slider: "Rate", runs, aims });
  it("shows one run at a time, one trace for each component", () => {
    expect(figure.data).toHaveLength(4);
    expect(figure.data.map((trace) => trace.visible)).toEqual([true, true, false, false]);
    const [slider] = figure.layout.sliders as { steps: { args: [string, boolean[]] }[] }[];
    expect(slider?.steps[1]?.args).toEqual(["visible", [false, false, true, true]]);
  });
  it("says in words where every position ends", () => {
    expect(figure.description).toMatch(
      /600: developing agent \d+ to \d+ %, at last \d+ %; bromide .*\. 720: /,
    );
  });
  it("refuses one run, aims of nothing, and a start that is not there", () => {
    const given = { title: "x", slider: "Rate", runs, aims };
    expect(() => tankExplorer({ ...given, runs: runs.slice(1) })).toThrow("two or more");
    expect(() => tankExplorer({ ...given, aims: {} })).toThrow("at least one component");
    expect(() => tankExplorer({ ...given, aims: { bromide: 0 } })).toThrow("greater than 0");
    expect(() => tankExplorer({ ...given, start: 2 })).toThrow("from 0 to 1");
  });
});

describe("the other figures", () => {
  it("give a pump's running sum in words, and refuse a log without measured volumes", () => {
    expect(figures.pump.description).toMatch(/delivered minus set comes to −\d+\.\d L/);
    const blind = {
      ...rates,
      intervals: rates.intervals.map((each) => ({ ...each, deliveredMl: null })),
    };
    expect(() => deliveredRateFigure(blind, { title: "x" })).toThrow("measured volumes");
  });
  it("name the day on which silver passes the limit", () => {
    expect(figures.silver.description).toMatch(/no recovery: .*above the limit from 2026-0\d-\d\d/);
    expect(figures.silver.description).toContain("never above the limit");
    expect(() => silverFigure([], { title: "x" })).toThrow("one to four");
  });
  it("give the water of every number of tanks, or that none is enough", () => {
    expect(figures.wash.description).toContain("1 tank: 14 L/m²; 2 tanks: 0.72 L/m²");
    const slow = washStagesFigure({ ...wash, exchange: 0.5 }, { title: "x", stages: [1, 2] });
    expect(slow.description).toContain("by no amount of water");
    expect(() => washStagesFigure(wash, { title: "x", stages: [] })).toThrow("one to six");
  });
});
