import { describe, expect, it } from "vitest";
import {
  densityFromHydrometer,
  gravityAtReference,
  hydrometerCheck,
  hydrometerScale,
  solutionDensity,
  strengthFromGravity,
  strengthFromHydrometer,
  waterDensityGPerMl,
} from "wetside/solutions";

const points = [
  { specificGravity: 1.04, strength: 1 },
  { specificGravity: 1, strength: 0 },
];

describe("hydrometerScale", () => {
  it("reads the temperatures on the stem", () => {
    expect(hydrometerScale("20/20")).toEqual({ liquidC: 20, waterC: 20 });
    expect(hydrometerScale("15.6 / 15.6")).toEqual({ liquidC: 15.6, waterC: 15.6 });
    expect(hydrometerScale("20°C/4°C")).toEqual({ liquidC: 20, waterC: 4 });
    expect(hydrometerScale("60/60F").waterC).toBeCloseTo(15.5556, 4);
  });
  it("refuses what is not two temperatures, and 60 °C that is meant as 60 °F", () => {
    expect(() => hydrometerScale("20")).toThrow('"20/20"');
    expect(() => hydrometerScale("60/60")).toThrow('write "60/60F"');
  });
});

describe("gravityAtReference", () => {
  it("leaves a reading at the scale's own temperature", () => {
    expect(gravityAtReference({ reading: 1.05, temperatureC: 20 })).toBeCloseTo(1.05, 12);
    const fahrenheit = { reading: 1.05, scale: "60/60F", temperatureC: 140 / 9 };
    expect(gravityAtReference(fahrenheit)).toBeCloseTo(1.05, 12);
  });
  it("reads water as 1 at any temperature, once the glass's own growth is in", () => {
    for (const temperatureC of [5, 20, 38, 60]) {
      const reading =
        (waterDensityGPerMl(temperatureC) / waterDensityGPerMl(20)) *
        (1 + 25e-6 * (temperatureC - 20));
      expect(gravityAtReference({ reading, temperatureC })).toBeCloseTo(1, 12);
    }
  });
  it("rises above the reading in a warm liquid and falls below it in a cold one", () => {
    expect(gravityAtReference({ reading: 1.04, temperatureC: 38 })).toBeGreaterThan(1.04);
    expect(gravityAtReference({ reading: 1.04, temperatureC: 12 })).toBeLessThan(1.04);
  });
  it("takes the liquid's own expansion", () => {
    const own = { reading: 1.04, temperatureC: 30, liquidExpansionPerC: 4e-4 };
    expect(gravityAtReference(own)).toBeCloseTo((1.04 / 1.00025) * 1.004, 12);
  });
  it("refuses a gravity written without its one", () => {
    expect(() => densityFromHydrometer({ reading: 42, temperatureC: 20 })).toThrow("like 1.042");
    expect(() => densityFromHydrometer({ reading: 1.04, temperatureC: 101 })).toThrow("100 °C");
  });
  it("differs between 20/20 and 20/4 by the density of water", () => {
    const at4 = densityFromHydrometer({ reading: 1, scale: "20/4", temperatureC: 20 });
    expect(at4).toBeCloseTo(0.999972, 6);
  });
});

describe("strengthFromGravity", () => {
  it("draws a straight line between the points, whatever their order", () => {
    expect(strengthFromGravity({ specificGravity: 1.03, points }).strength).toBeCloseTo(0.75, 12);
    expect(strengthFromGravity({ specificGravity: 1, points }).strength).toBe(0);
    expect(strengthFromGravity({ specificGravity: 1.04, points }).strength).toBe(1);
    expect(strengthFromGravity({ specificGravity: 1.01, points }).perThousandth).toBeCloseTo(0.025);
  });
  it("uses the nearest pair of several points", () => {
    const bent = [...points, { specificGravity: 1.06, strength: 2 }];
    expect(strengthFromGravity({ specificGravity: 1.05, points: bent }).strength).toBeCloseTo(1.5);
  });
  it("refuses to go beyond the points unless asked, and then says so", () => {
    const beyond = { specificGravity: 1.044, points };
    expect(() => strengthFromGravity(beyond)).toThrow("write a gravity from 1 to 1.04");
    const asked = strengthFromGravity({ ...beyond, extrapolate: true });
    expect(asked.strength).toBeCloseTo(1.1, 12);
    expect(asked.warnings[0]).toContain("outside");
  });
  it("never gives less than nothing", () => {
    const light = { specificGravity: 0.998, points, extrapolate: true };
    expect(strengthFromGravity(light).strength).toBe(0);
  });
  it("refuses one point, or two of the same gravity", () => {
    const one = points.slice(0, 1);
    expect(() => strengthFromGravity({ specificGravity: 1, points: one })).toThrow("at least two");
    const same = [points[1], { specificGravity: 1, strength: 3 }] as typeof points;
    expect(() => strengthFromGravity({ specificGravity: 1, points: same })).toThrow("different");
  });
});

describe("strengthFromHydrometer", () => {
  it("finds the strength of a known solution from the reading it would give when warm", () => {
    const substance = "sodium thiosulfate";
    for (const temperatureC of [25, 38]) {
      const real = solutionDensity({ substance, massPercent: 15, temperatureC });
      const reading =
        (real.densityGPerMl / waterDensityGPerMl(20)) * (1 + 25e-6 * (temperatureC - 20));
      const found = strengthFromHydrometer({ reading, temperatureC, substance });
      expect(found.massPercent).toBeCloseTo(15, 6);
    }
  });
  it("agrees between a table and two points of it, near them", () => {
    const substance = "sodium thiosulfate";
    const gravity = (massPercent: number) =>
      solutionDensity({ substance, massPercent }).densityGPerMl / waterDensityGPerMl(20);
    const two = [14, 16].map((massPercent) => ({
      specificGravity: gravity(massPercent),
      strength: solutionDensity({ substance, massPercent }).gPerL,
    }));
    const reading = gravity(15);
    const byPoints = strengthFromHydrometer({ reading, temperatureC: 20, points: two }).strength;
    const byTable = strengthFromHydrometer({ reading, temperatureC: 20, substance });
    expect(byPoints / byTable.strength).toBeCloseTo(1, 3);
    expect(byTable.perThousandth).toBeGreaterThan(0);
  });
  it("says that the liquid is taken to expand as water", () => {
    const warm = strengthFromHydrometer({ reading: 1.02, temperatureC: 30, points });
    expect(warm.assumptions.join("\n")).toContain("expands as water between 20 °C and 30 °C");
  });
  it("asks whether a hot bath was read in Fahrenheit", () => {
    const hot = strengthFromHydrometer({ reading: 1, temperatureC: 68, points });
    expect(hot.warnings.join()).toContain("68 °F, write 20.0");
  });
  it("wants points or a substance, not both", () => {
    const reading = { reading: 1.02, temperatureC: 20 };
    expect(() => strengthFromHydrometer(reading)).toThrow("either points");
    const both = { ...reading, points, substance: "sodium chloride" };
    expect(() => strengthFromHydrometer(both)).toThrow("either points");
  });
});

describe("hydrometerCheck", () => {
  const known = [
    { specificGravity: 1, strength: 0 },
    { specificGravity: 1.05, strength: 1.25 },
  ];
  const check = { temperatureC: 20, points: known, target: 1, tankMl: 10_000 };
  it("leaves a mix within the tolerance alone", () => {
    const done = hydrometerCheck({ ...check, reading: 1.041 });
    expect(done.verdict).toBe("within tolerance");
    expect(done.deviation).toBeCloseTo(0.025, 12);
    expect(done.correction.action).toBe("nothing");
  });
  it("adds water to a strong mix, dumping first only if told", () => {
    const strong = { ...check, reading: 1.044 };
    expect(() => hydrometerCheck(strong)).toThrow("dump 909.1 mL first");
    const done = hydrometerCheck({ ...strong, dump: true });
    expect(done.verdict).toBe("too strong");
    expect(done.correction.addMl).toBeCloseTo(909.09, 2);
  });
  it("adds concentrate to a weak mix, once its strength is known", () => {
    const weak = { ...check, presentMl: 9000, reading: 1.036 };
    expect(() => hydrometerCheck(weak)).toThrow("strength of the concentrate");
    const done = hydrometerCheck({ ...weak, concentrateStrength: 10 });
    expect(done.verdict).toBe("too weak");
    expect(done.correction.addMl).toBeCloseTo((9000 * 0.1) / 9, 6);
  });
  it("carries the cautions of what is added", () => {
    const acid = { reading: 1.02, temperatureC: 20, substance: "sulfuric acid", target: 50 };
    const check = hydrometerCheck({
      ...acid,
      tankMl: 10000,
      presentMl: 9000,
      concentrateStrength: 1762,
    });
    expect(check.cautions.join()).toContain("acid into water");
  });
  it("warns when the hydrometer is too coarse for the tolerance", () => {
    const fine = hydrometerCheck({ ...check, reading: 1.04, tolerance: 0.01 });
    expect(fine.warnings[0]).toContain("± 1.25 %");
    expect(hydrometerCheck({ ...check, reading: 1.04 }).warnings).toEqual([]);
  });
});
