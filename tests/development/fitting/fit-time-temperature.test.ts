import { describe, expect, it } from "vitest";
import {
  activationEnergyModel,
  fitTimeTemperature,
  publishedTimeTables,
  rateModelFromFit,
} from "wetside/development";
import { InputError } from "wetside/input";

const law = activationEnergyModel({ activationEnergyKJPerMol: 55, range: { minC: 15, maxC: 30 } });
const exact = [16, 18, 20, 22, 25].map((temperatureC) => ({
  temperatureC,
  timeMin: 9 / law.relativeRate(temperatureC),
}));
const rounded = exact.map((row) => ({ ...row, timeMin: Math.round(row.timeMin * 4) / 4 }));
const exactFactor = [16, 18, 20, 22, 25].map((temperatureC) => ({
  temperatureC,
  timeMin: 9 / 2.2 ** ((temperatureC - 20) / 10),
}));

// A line through points that lie on it is found to rounding.
const DOUBLE = 1e-10;

describe("fitTimeTemperature", () => {
  it("finds the energy of times that follow the law exactly", () => {
    const fit = fitTimeTemperature({ rows: exact });
    expect(fit.coefficient.value).toBeCloseTo(55, 8);
    expect(fit.coefficientUnit).toBe("kJ/mol");
    expect(fit.timeAtReferenceMin.value).toBeCloseTo(9, 9);
    expect(fit.rSquared).toBeCloseTo(1, 10);
    for (const row of fit.rows) {
      expect(Math.abs(row.residualMin)).toBeLessThan(DOUBLE);
      expect(row.leftOutMin).toBeCloseTo(row.timeMin, 9);
    }
  });
  it("finds the factor of times that grow by a factor exactly", () => {
    const fit = fitTimeTemperature({ rows: exactFactor, law: "factor-per-10-degrees" });
    expect(fit.coefficient.value).toBeCloseTo(2.2, 10);
    expect(fit.factorPerTenDegrees.value).toBeCloseTo(2.2, 10);
    expect(fit.coefficientUnit).toBe("per 10 °C");
  });
  it("gives the leave-one-out time that fitting again without the row gives", () => {
    for (const name of ["activation-energy", "factor-per-10-degrees"] as const) {
      const fit = fitTimeTemperature({ rows: rounded, law: name });
      for (const [i, row] of fit.rows.entries()) {
        const others = fit.rows.filter((_, j) => j !== i);
        const again = fitTimeTemperature({
          rows: others,
          law: name,
          referenceTemperatureC: row.temperatureC,
        });
        expect(row.leftOutMin).toBeCloseTo(again.timeAtReferenceMin.value, 9);
      }
    }
  });
  it("widens its interval with the confidence and always holds the value", () => {
    const at = (confidence: number) =>
      fitTimeTemperature({ rows: rounded, confidence }).activationEnergyKJPerMol;
    expect(at(0.99).lower).toBeLessThan(at(0.95).lower);
    expect(at(0.99).upper).toBeGreaterThan(at(0.95).upper);
    expect(at(0.5).lower).toBeLessThan(at(0.5).value);
  });
  it("takes the rows in any order and does not change them", () => {
    const frozen = Object.freeze([...rounded].reverse().map((each) => Object.freeze(each)));
    const fit = fitTimeTemperature({ rows: frozen });
    expect(fit.rows[0]?.temperatureC).toBe(16);
    expect(fit.coefficient).toEqual(fitTimeTemperature({ rows: rounded }).coefficient);
  });
  it("sees from the times how they were rounded", () => {
    const step = (times: readonly number[]) =>
      fitTimeTemperature({
        rows: times.map((timeMin, i) => ({ temperatureC: 18 + 2 * i, timeMin })),
      }).rounding.stepMin;
    expect(step([9, 8, 7])).toBe(1);
    expect(step([9, 8, 6.5])).toBe(0.5);
    expect(step([9, 7.75, 6.5])).toBe(0.25);
    expect(step([9, 7.8, 6.5])).toBe(0.1);
    expect(step([9, 7.871, 6.5])).toBe(0);
  });
  it("brackets the true energy by what rounding leaves open", () => {
    const { rounding } = fitTimeTemperature({ rows: rounded, roundingMin: 0.25 });
    expect(rounding.consistent).toBe(true);
    expect(rounding.lowest).toBeLessThan(55);
    expect(rounding.highest).toBeGreaterThan(55);
  });
  it("says when no law passes through the rounded times", () => {
    const misprint = rounded.map((row, i) => (i === 2 ? { ...row, timeMin: 11 } : row));
    const fit = fitTimeTemperature({ rows: misprint, roundingMin: 0.25 });
    expect(fit.rounding.consistent).toBe(false);
    expect(fit.warnings[0]).toContain("misprint");
  });
  it("says when the table shows no effect of temperature", () => {
    const flat = [8, 8.5, 7.5, 8].map((timeMin, i) => ({ temperatureC: 18 + 2 * i, timeMin }));
    expect(fitTimeTemperature({ rows: flat }).warnings.join()).toContain(
      "no effect of temperature",
    );
  });
  it("refuses times that clearly grow with temperature: the columns may be swapped", () => {
    const swapped = exact.map(({ temperatureC }, i) => ({ temperatureC, timeMin: 5 + i }));
    expect(() => fitTimeTemperature({ rows: swapped })).toThrow("the wrong way round");
  });
  it("says the number to a time written as on a clock", () => {
    const clock = exact.map((row, i) => (i === 1 ? { ...row, timeMin: "9:30" as never } : row));
    expect(() => fitTimeTemperature({ rows: clock })).toThrow("9:30 is 9.5");
  });
  it("refuses two rows, equal temperatures, °F and impossible confidences", () => {
    expect(() => fitTimeTemperature({ rows: exact.slice(0, 2) })).toThrow("at least three points");
    expect(() =>
      fitTimeTemperature({ rows: [...exact, exact[0] ?? { temperatureC: 0, timeMin: 0 }] }),
    ).toThrow("one row for each temperature");
    expect(() =>
      fitTimeTemperature({ rows: [...exact, { temperatureC: 75, timeMin: 5 }] }),
    ).toThrow("75 °F would be 23.9 °C");
    expect(() => fitTimeTemperature({ rows: exact, confidence: 95 })).toThrow("0.95");
    expect(() =>
      fitTimeTemperature({ rows: [...exact, { temperatureC: 28, timeMin: 0 }] }),
    ).toThrow(InputError);
  });
  it("gives a result that survives JSON", () => {
    const fit = fitTimeTemperature({ rows: rounded });
    expect(JSON.parse(JSON.stringify(fit))).toEqual(fit);
  });
});

describe("rateModelFromFit", () => {
  it("keeps the table's range, and stretches no farther than the table is wide", () => {
    const model = rateModelFromFit(fitTimeTemperature({ rows: rounded }));
    expect(model.range).toEqual({ minC: 16, maxC: 25 });
    expect(model.refuseBeyondC).toBe(9);
    expect(model.assumptions[0]).toContain("95 % interval");
  });
  it("gives back the fitted times", () => {
    for (const name of ["activation-energy", "factor-per-10-degrees"] as const) {
      const fit = fitTimeTemperature({ rows: rounded, law: name });
      const model = rateModelFromFit(fit);
      for (const row of fit.rows) {
        const time = fit.timeAtReferenceMin.value / model.relativeRate(row.temperatureC);
        expect(time).toBeCloseTo(row.fittedMin, 9);
      }
    }
  });
  it("refuses a fit whose rate falls with temperature", () => {
    const odd = [7, 7.5, 8].map((timeMin, i) => ({ temperatureC: 18 + 2 * i, timeMin }));
    expect(() => rateModelFromFit(fitTimeTemperature({ rows: odd }))).toThrow(InputError);
  });
});

describe("the printed tables", () => {
  it("keep both printed temperatures, agree between them to the print, and name their source", () => {
    for (const table of publishedTimeTables) {
      expect(table.source).not.toBe("");
      expect(table.howObtained).toBe("read in a copy");
      expect(table.rows.length).toBeGreaterThanOrEqual(3);
      for (const row of table.rows) {
        expect(row.temperatureC).toBeCloseTo(((row.printedF - 32) * 5) / 9, 12);
        // 75 °F is 23.9 °C, printed 24.
        expect(Math.abs(row.temperatureC - row.printedC)).toBeLessThanOrEqual(0.5);
        expect(row.timeMin / table.roundingMin).toBe(Math.round(row.timeMin / table.roundingMin));
      }
    }
  });
  it("have ids of their own", () => {
    const ids = publishedTimeTables.map((each) => each.id);
    expect(new Set(ids).size).toBe(ids.length);
  });
});
