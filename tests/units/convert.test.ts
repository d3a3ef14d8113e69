import { describe, expect, it } from "vitest";
import {
  areaRateFromFilmLength,
  convertArea,
  convertAreaRate,
  convertLength,
  convertMass,
  convertMassConcentration,
  convertVolume,
  type VolumeUnit,
} from "wetside/units";

describe("convertVolume", () => {
  it("keeps the binary parts of a gallon exact", () => {
    expect(convertVolume(1, "usGallon", "usQuart")).toBe(4);
    expect(convertVolume(1, "usGallon", "usFluidOunce")).toBe(128);
    expect(convertVolume(1, "imperialGallon", "imperialFluidOunce")).toBe(160);
    expect(convertVolume(1, "usFluidOunce", "usMinim")).toBe(480);
    expect(convertVolume(1, "imperialFluidOunce", "imperialFluidDram")).toBe(8);
  });
  it("gives zero for zero and keeps the sign", () => {
    expect(convertVolume(0, "usPint", "mL")).toBe(0);
    expect(convertVolume(-2, "L", "mL")).toBe(-2000);
  });
  it("tells the imperial gallon from the US gallon", () => {
    expect(convertVolume(1, "imperialGallon", "usGallon")).toBeCloseTo(1.2009499255, 9);
  });
  it.each([
    ["gallon", "usGallon", "imperialGallon"],
    ["gal", "usGallon", "imperialGallon"],
    ["Pints", "usPint", "imperialPint"],
    ["qt", "usQuart", "imperialQuart"],
    ["fl oz", "usFluidOunce", "imperialFluidOunce"],
    ["oz", "usFluidOunce", "imperialFluidOunce"],
  ])("refuses a bare %s and spells both meanings", (name, us, imperial) => {
    const wrong = name as VolumeUnit;
    expect(() => convertVolume(1, wrong, "mL")).toThrow(us);
    expect(() => convertVolume(1, "mL", wrong)).toThrow(imperial);
  });
  it("names the closest unit for a misspelt one", () => {
    expect(() => convertVolume(1, "ml" as VolumeUnit, "L")).toThrow('did you mean "mL"');
  });
  it("refuses what is not a finite number, and a result that would not be one", () => {
    expect(() => convertVolume(Number.NaN, "mL", "L")).toThrow("value is NaN");
    expect(() => convertVolume(Number.POSITIVE_INFINITY, "mL", "L")).toThrow("Infinity");
    expect(() => convertVolume(1e308, "m3", "usMinim")).toThrow("too large");
  });
});

describe("convertMass", () => {
  it("counts 16 ounces and 7000 grains to the pound", () => {
    expect(convertMass(1, "lb", "oz")).toBe(16);
    expect(convertMass(1, "lb", "grain")).toBe(7000);
    expect(convertMass(1, "lb", "kg")).toBe(0.45359237);
  });
});

describe("convertLength and convertArea", () => {
  it("take the inch as 25.4 mm", () => {
    expect(convertLength(1, "ft", "in")).toBe(12);
    expect(convertLength(36, "in", "mm")).toBe(914.4);
    expect(convertArea(144, "in2", "ft2")).toBe(1);
    expect(convertArea(1, "ft2", "m2")).toBe(0.09290304);
  });
});

describe("convertMassConcentration", () => {
  it("counts grains to the ounce in each system", () => {
    expect(convertMassConcentration(1, "oz/usFluidOunce", "grain/usFluidOunce")).toBe(437.5);
    expect(convertMassConcentration(1, "oz/imperialPint", "oz/imperialGallon")).toBe(8);
    expect(convertMassConcentration(1, "g/100mL", "g/L")).toBe(10);
  });
  it("refuses ounces per a gallon of no country", () => {
    const wrong = "oz/gal" as "oz/usGallon";
    expect(() => convertMassConcentration(1, wrong, "g/L")).toThrow("oz/imperialGallon");
    expect(() => convertMassConcentration(1, "g/L", "lb/gallon" as "g/L")).toThrow("lb/usGallon");
  });
});

describe("convertAreaRate", () => {
  it("multiplies by the square feet in a square metre", () => {
    expect(convertAreaRate(1, "mL/ft2", "mL/m2")).toBeCloseTo(1 / 0.09290304, 12);
    expect(convertAreaRate(144, "mL/in2", "mL/ft2")).toBe(144 * 144);
  });
  it("takes a rate per length of film by its width", () => {
    const perMetre = { volumeMl: 35, lengthM: 1, widthMm: 35 };
    expect(areaRateFromFilmLength(perMetre)).toBeCloseTo(1000, 10);
    expect(areaRateFromFilmLength({ ...perMetre, volumeMl: 0 })).toBe(0);
    expect(() => areaRateFromFilmLength({ ...perMetre, widthMm: 0 })).toThrow("widthMm");
  });
});
