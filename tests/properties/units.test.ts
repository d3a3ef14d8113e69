import { describe, expect, it } from "vitest";
import {
  celsiusFromFahrenheit,
  convertArea,
  convertAreaRate,
  convertLength,
  convertMass,
  convertMassConcentration,
  convertVolume,
  fahrenheitFromCelsius,
  formatMinutes,
  parseMinutes,
  parseNumber,
  parseRatio,
} from "wetside/units";
import fc from "./fast-check.ts";

// A double holds 15 decimal digits; what comes back must print the same to all of them.
const DIGITS = 15;
const printed = (value: number) => Number(value.toPrecision(DIGITS));

// Numbers as people write them: up to 12 digits, twelve powers of ten.
const written = fc
  .tuple(fc.integer({ min: 1, max: 999_999_999_999 }), fc.integer({ min: -12, max: 6 }))
  .map(([digits, power]) => Number(`${digits}e${power}`));

type AnyConvert = (value: number, from: never, to: never) => number;

const quantities: Readonly<Record<string, [AnyConvert, string[]]>> = {
  volume: [
    convertVolume,
    ["mL", "L", "m3", "usGallon", "usQuart", "usPint", "usFluidOunce", "usMinim"].concat([
      "imperialGallon",
      "imperialQuart",
      "imperialPint",
      "imperialFluidOunce",
      "imperialMinim",
    ]),
  ],
  mass: [convertMass, ["mg", "g", "kg", "lb", "oz", "grain"]],
  length: [convertLength, ["mm", "cm", "m", "in", "ft"]],
  area: [convertArea, ["mm2", "cm2", "m2", "in2", "ft2"]],
  concentration: [
    convertMassConcentration,
    ["g/L", "g/100mL", "oz/usGallon", "oz/imperialGallon", "grain/usFluidOunce"],
  ],
  "area rate": [convertAreaRate, ["mL/m2", "mL/ft2", "mL/in2", "usFluidOunce/ft2"]],
};

describe("converting there and back", () => {
  for (const [name, [convert, units]] of Object.entries(quantities)) {
    const change = convert as (value: number, from: string, to: string) => number;
    const unit = fc.constantFrom(...units);
    it(`gives the same ${name} to every digit`, () => {
      fc.assert(
        fc.property(written, unit, unit, (value, from, to) => {
          expect(printed(change(change(value, from, to), to, from))).toBe(printed(value));
        }),
      );
    });
    it(`of ${name} is the same by a third unit`, () => {
      fc.assert(
        fc.property(written, unit, unit, unit, (value, from, by, to) => {
          const direct = change(value, from, to);
          expect(change(change(value, from, by), by, to) / direct).toBeCloseTo(1, 14);
        }),
      );
    });
  }
  it("gives the same temperature within a millionth of a millionth", () => {
    fc.assert(
      fc.property(fc.double({ min: -40, max: 200, noNaN: true }), (celsius) => {
        expect(celsiusFromFahrenheit(fahrenheitFromCelsius(celsius))).toBeCloseTo(celsius, 12);
      }),
    );
  });
});

const anyText = fc.oneof(
  fc.string(),
  fc.stringMatching(/^[0-9]{0,4}[-+:.,/ es%]{0,2}[0-9]{0,400}( min| s|[.:+][0-9]{1,3})?$/),
);

describe("times and numbers", () => {
  it("read back from a clock to the second", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 360_000 }), (seconds) => {
        expect(Math.round(parseMinutes(formatMinutes(seconds / 60)) * 60)).toBe(seconds);
      }),
    );
  });
  it("read back as JavaScript prints them", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(parseNumber(String(value))).toBe(value === 0 ? Number(String(value)) : value);
      }),
    );
  });
  it("never come out of any text as anything but a finite number", () => {
    const readers = [parseNumber, parseMinutes, (text: string) => parseRatio(text).totalParts];
    fc.assert(
      fc.property(anyText, fc.constantFrom(...readers), (text, read) => {
        let value = 0;
        try {
          value = read(text);
        } catch (error) {
          expect((error as Error).name).toBe("InputError");
        }
        expect(Number.isFinite(value)).toBe(true);
      }),
    );
  });
});
