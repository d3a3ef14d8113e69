import { describe, expect, it } from "vitest";
import {
  activationEnergyModel,
  contrastCurveFromFit,
  contrastExample,
  developmentForRange,
  developUntil,
  fitContrastTime,
  fitTimeTemperature,
  loggedTemperatures,
  newtonCooling,
  powerOfTime,
  publishedTimeTables,
  rateModelFromFit,
} from "wetside/development";
import {
  arrheniusFigure,
  coefficientSpreadFigure,
  contrastTimeFigure,
  driftFigure,
} from "wetside/figures";
import { drawn, marksOf } from "./drawn.ts";
import { holdFigureLaws } from "./figure-laws.ts";

const fits = publishedTimeTables.map(({ developer, film, format, rows, roundingMin }) => ({
  name: `${developer}, ${film}, ${format}`,
  fit: fitTimeTemperature({ rows, roundingMin }),
}));
const model = activationEnergyModel({ activationEnergyKJPerMol: 60 });
const cooling = newtonCooling({ startTemperatureC: 24, surroundingsC: 16, ratePerMin: 0.03 });
const warming = newtonCooling({ startTemperatureC: 18, surroundingsC: 23, ratePerMin: 0.03 });
const log = loggedTemperatures(
  [22.5, 22.1, 21.6, 21.3, 20.9, 20.7].map((temperatureC, i) => ({
    timeMin: 2 * i,
    temperatureC,
  })),
);
const planOf = (course: typeof cooling | typeof log) =>
  driftFigure({ model, course, plan: developUntil({ model, course, targetMin: 9.5 }) });
const curve = contrastCurveFromFit(fitContrastTime({ rows: contrastExample.rows }));
const developments = developmentForRange({ curve, normalTimeMin: 9 });

const figures = holdFigureLaws(() => ({
  "Arrhenius plot of six tables": arrheniusFigure(fits),
  "Arrhenius plot of one table": arrheniusFigure(fits.slice(0, 1)),
  "cooling developer": planOf(cooling),
  "warming developer": planOf(warming),
  "logged developer": planOf(log),
  "contrast curve": contrastTimeFigure({
    curve,
    readings: contrastExample.rows,
    developments,
  }),
  "contrast curve without ceiling": contrastTimeFigure({
    curve: powerOfTime({
      atOneMinute: 0.2,
      exponent: 0.5,
      range: { minMin: 4, maxMin: 12 },
    }),
  }),
  "spread of coefficients": coefficientSpreadFigure({
    timeMin: 8,
    atTemperatureC: 20,
    model: rateModelFromFit(fits[2]?.fit ?? fitTimeTemperature({ rows: [] })),
  }),
}));

describe("arrheniusFigure", () => {
  it("names every table with coefficient, interval and largest residual", () => {
    const { description } = figures["Arrhenius plot of six tables"];
    for (const { name } of fits) expect(description).toContain(`${name}: 4 printed times`);
    expect(description).toContain("49.2 kJ/mol (39.0 to 59.4), largest residual 1.1 %");
  });
  it("tells tables apart by shape as well as by colour", () => {
    const shapes = marksOf(figures["Arrhenius plot of six tables"].specification)
      .map((mark) => mark.shape)
      .filter((shape) => shape !== undefined);
    expect(new Set(shapes).size).toBe(6);
  });
  it("draws one whisker in each panel for each printed time", async () => {
    const { svg } = await drawn(figures["Arrhenius plot of one table"]);
    expect(svg).toContain("1000 / temperature (1/K)");
    expect(svg).toContain("Temperature (°C)");
  });
  it("refuses no fit and more than six", () => {
    expect(() => arrheniusFigure([])).toThrow("one to six fits");
    expect(() => arrheniusFigure([...fits, ...fits])).toThrow("12 fits");
  });
});

describe("driftFigure", () => {
  it("says when to pour out and what the clock alone would have cost", () => {
    const { description } = figures["cooling developer"];
    const plan = developUntil({ model, course: cooling, targetMin: 9.5 });
    expect(description).toContain(`pour out after ${plan.timeMin.toFixed(1)} min`);
    expect(description).toMatch(/miss the dose by \+\d/);
    expect(description).toMatch(/start temperature alone by −\d/);
  });
  it("marks the readings of a log, and only those in view", () => {
    const text = JSON.stringify(figures["logged developer"].specification);
    expect(text).toContain('"reading"');
    expect(JSON.stringify(figures["cooling developer"].specification)).not.toContain('"reading"');
  });
  it("refuses a plan made from another course", () => {
    const plan = developUntil({ model, course: warming, targetMin: 9.5 });
    expect(() => driftFigure({ model, course: cooling, plan })).toThrow("from this course");
  });
});

describe("contrastTimeFigure", () => {
  it("gives the times of all developments, and says which cannot be had", () => {
    expect(figures["contrast curve"].description).toContain("N−2 6.0 min");
    const far = developmentForRange({ curve, normalTimeMin: 12 });
    const { description } = contrastTimeFigure({ curve, developments: far });
    expect(description).toContain("N+2 cannot be had");
  });
});

describe("coefficientSpreadFigure", () => {
  it("draws a model of one's own only over its range", () => {
    const text = JSON.stringify(figures["spread of coefficients"].specification);
    expect(text).toContain("own table");
    const owns = [...text.matchAll(/\{"t":([\d.]+),"own"/g)].map((each) => Number(each[1]));
    expect(Math.min(...owns)).toBeGreaterThanOrEqual(20);
    expect(Math.max(...owns)).toBeLessThanOrEqual(23.89);
  });
  it("refuses a range upside down", () => {
    expect(() =>
      coefficientSpreadFigure({ timeMin: 8, atTemperatureC: 20, fromC: 25, toC: 18 }),
    ).toThrow("fromC below toC");
  });
});
