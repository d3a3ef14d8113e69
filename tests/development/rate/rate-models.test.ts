import { describe, expect, it } from "vitest";
import {
  activationEnergyModel,
  defaultRateModel,
  factorPerTenDegreesModel,
  publishedTableModel,
  type RateModel,
  rangeWarnings,
} from "wetside/development";
import { InputError } from "wetside/input";

const rows = [
  { temperatureC: 24, timeMin: 5 },
  { temperatureC: 20, timeMin: 6.5 },
  { temperatureC: 22, timeMin: 5.5 },
];
const models: readonly (readonly [string, RateModel])[] = [
  ["activation energy", activationEnergyModel({ activationEnergyKJPerMol: 60 })],
  ["factor per 10 °C", factorPerTenDegreesModel({ factorPerTenDegrees: 2 })],
  ["published table", publishedTableModel({ rows })],
  ["the default", defaultRateModel()],
];

// Rounding of an exponential and a quotient in double precision.
const DOUBLE = 1e-14;

describe("every rate model", () => {
  for (const [name, model] of models) {
    it(`answers 1 at its reference temperature (${name})`, () => {
      expect(model.relativeRate(model.referenceTemperatureC)).toBeCloseTo(1, 14);
    });
    it(`is never slower when warmer, inside its range and out to its reach (${name})`, () => {
      const low = model.range.minC - model.refuseBeyondC;
      const high = model.range.maxC + model.refuseBeyondC;
      let before = 0;
      for (let i = 0; i <= 400; i++) {
        const rate = model.relativeRate(low + ((high - low) * i) / 400);
        expect(rate).toBeGreaterThanOrEqual(before);
        before = rate;
      }
    });
    it(`warns outside its range and refuses beyond its reach (${name})`, () => {
      expect(rangeWarnings(model, [model.range.minC, model.range.maxC])).toEqual([]);
      expect(rangeWarnings(model, [model.range.maxC + 0.5])[0]).toContain("0.5 °C outside");
      const tooHot = model.range.maxC + model.refuseBeyondC + 0.01;
      expect(() => model.relativeRate(tooHot)).toThrow(InputError);
      expect(() => model.relativeRate(Number.NaN)).toThrow(InputError);
      expect(() => rangeWarnings(model, [tooHot])).toThrow("rests on evidence from");
    });
    it(`leaves everything but its one function safe for JSON (${name})`, () => {
      const { relativeRate, ...rest } = model;
      expect(typeof relativeRate).toBe("function");
      expect(JSON.parse(JSON.stringify(rest))).toEqual(rest);
    });
  }

  it("says each warning once however often a temperature comes", () => {
    expect(rangeWarnings(defaultRateModel(), [27, 27, 27])).toHaveLength(1);
  });
});

describe("the published table", () => {
  it("gives every printed row back exactly, whatever the order of the rows", () => {
    const model = publishedTableModel({ rows });
    for (const row of rows) {
      expect(Math.abs(6.5 / model.relativeRate(row.temperatureC) - row.timeMin)).toBeLessThan(
        10 * DOUBLE,
      );
    }
  });
  it("is a straight line of ln t against 1/T between rows", () => {
    const two = [
      { temperatureC: 18, timeMin: 10 },
      { temperatureC: 24, timeMin: 6 },
    ];
    const table = publishedTableModel({ rows: two, referenceTemperatureC: 18 });
    const energy =
      (8.31446261815324e-3 * Math.log(10 / 6)) / (1 / (18 + 273.15) - 1 / (24 + 273.15));
    const law = activationEnergyModel({
      activationEnergyKJPerMol: energy,
      referenceTemperatureC: 18,
    });
    for (const t of [18, 19.3, 21, 23.99, 24, 26]) {
      expect(table.relativeRate(t)).toBeCloseTo(law.relativeRate(t), 12);
    }
  });
  it("goes on beyond its end with the slope of the whole table, not of the last step", () => {
    const flat = publishedTableModel({
      rows: [
        { temperatureC: 20, timeMin: 6.5 },
        { temperatureC: 21, timeMin: 6.5 },
        { temperatureC: 22, timeMin: 6 },
        { temperatureC: 24, timeMin: 5.5 },
      ],
    });
    expect(flat.relativeRate(19)).toBeLessThan(1);
  });
  it("takes the row nearest to 20 °C as its reference when 20 °C is not in it", () => {
    const hot = [
      { temperatureC: 24, timeMin: 6 },
      { temperatureC: 28, timeMin: 4.5 },
    ];
    expect(publishedTableModel({ rows: hot }).referenceTemperatureC).toBe(24);
  });
  it("refuses one row, equal temperatures, times that grow with temperature, a reference outside", () => {
    const bad = (given: readonly { temperatureC: number; timeMin: number }[]) => () =>
      publishedTableModel({ rows: given });
    expect(bad([{ temperatureC: 20, timeMin: 8 }])).toThrow("at least two rows");
    expect(
      bad([
        { temperatureC: 20, timeMin: 8 },
        { temperatureC: 20, timeMin: 7 },
      ]),
    ).toThrow("one row for each temperature");
    expect(
      bad([
        { temperatureC: 20, timeMin: 6 },
        { temperatureC: 24, timeMin: 7 },
      ]),
    ).toThrow("do not grow with temperature");
    expect(() => publishedTableModel({ rows, referenceTemperatureC: 30 })).toThrow(
      "must lie inside the table",
    );
  });
  it("does not change the rows it was given", () => {
    const frozen = Object.freeze(rows.map((each) => Object.freeze({ ...each })));
    expect(() => publishedTableModel({ rows: frozen })).not.toThrow();
    expect(frozen[0]?.temperatureC).toBe(24);
  });
});

describe("the coefficients at the door", () => {
  it("refuses an energy in J/mol and says what was meant", () => {
    expect(() => activationEnergyModel({ activationEnergyKJPerMol: 60000 })).toThrow(
      "60000 J/mol is 60 kJ/mol",
    );
  });
  it("refuses a factor of 1 or less, and one that is no number", () => {
    for (const factorPerTenDegrees of [1, 0.5, 0, -2, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => factorPerTenDegreesModel({ factorPerTenDegrees })).toThrow(InputError);
    }
  });
  it("refuses a range that is upside down", () => {
    expect(() =>
      factorPerTenDegreesModel({ factorPerTenDegrees: 2, range: { minC: 24, maxC: 18 } }),
    ).toThrow("minC lower than maxC");
  });
  it("rests on the range of hand processing with any reference inside it, else on one of its own", () => {
    const at = (referenceTemperatureC: number) => defaultRateModel({ referenceTemperatureC }).range;
    expect(at(18)).toEqual({ minC: 18, maxC: 26 });
    expect(at(24)).toEqual({ minC: 18, maxC: 26 });
    expect(at(38)).toEqual({ minC: 36, maxC: 44 });
    expect(at(1)).toEqual({ minC: 0, maxC: 7 });
  });
  it("keeps the range it is given in place of the default", () => {
    const model = factorPerTenDegreesModel({
      factorPerTenDegrees: 2,
      range: { minC: 10, maxC: 30 },
      refuseBeyondC: 0,
    });
    expect(rangeWarnings(model, [10, 30])).toEqual([]);
    expect(() => model.relativeRate(30.1)).toThrow(InputError);
  });
  it("says of the default coefficient that it is one", () => {
    expect(defaultRateModel().assumptions[0]).toContain("no rate model was given");
  });
});
