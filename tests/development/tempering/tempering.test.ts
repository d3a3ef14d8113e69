import { describe, expect, it } from "vitest";
import {
  bottleTemperingTime,
  heaterTime,
  heatProperties,
  iceToCool,
  mixedTemperature,
  temperWater,
  waterTemperatureFor,
} from "wetside/development";

const steelTank = { massG: 300, temperatureC: 14, material: "stainless steel" };

describe("mixedTemperature", () => {
  it("is the temperature itself when all parts agree", () => {
    const liquids = [
      { volumeMl: 100, temperatureC: 20 },
      { volumeMl: 0, temperatureC: 90 },
    ];
    expect(mixedTemperature({ liquids }).temperatureC).toBe(20);
  });
  it("weighs by heat capacity: dense, less thirsty acetic acid counts less than water", () => {
    const acid = { volumeMl: 500, temperatureC: 40, specificHeatJPerGK: 2.05, densityGPerMl: 1.05 };
    const mix = mixedTemperature({ liquids: [acid, { volumeMl: 500, temperatureC: 20 }] });
    const c = 500 * 1.05 * 2.05;
    expect(mix.temperatureC).toBeCloseTo((c * 40 + 2090 * 20) / (c + 2090), 12);
  });
  it("asks for something to mix, and for a vessel's material", () => {
    expect(() => mixedTemperature({ liquids: [] })).toThrow("at least one liquid");
    const liquids = [{ volumeMl: 100, temperatureC: 20 }];
    expect(() =>
      mixedTemperature({ liquids, vessels: [{ massG: 100, temperatureC: 20 }] }),
    ).toThrow("stainless steel, polypropylene");
    expect(() =>
      mixedTemperature({ liquids, vessels: [{ ...steelTank, material: "glas" }] }),
    ).toThrow('did you mean "glass"?');
  });
});

describe("temperWater", () => {
  it("gives volumes that add up and mix to the target, tank and all", () => {
    const water = { totalMl: 1000, targetC: 38, hotC: 55, coldC: 18 };
    const mix = temperWater({ ...water, vessels: [steelTank] });
    expect(mix.hotMl + mix.coldMl).toBeCloseTo(1000, 10);
    const check = mixedTemperature({
      liquids: [
        { volumeMl: mix.hotMl, temperatureC: 55 },
        { volumeMl: mix.coldMl, temperatureC: 18 },
      ],
      vessels: [steelTank],
    });
    expect(check.temperatureC).toBeCloseTo(38, 10);
    expect(mix.hotMl).toBeGreaterThan(temperWater(water).hotMl);
  });
  it("takes only one of the waters at the ends of its reach", () => {
    expect(temperWater({ totalMl: 500, targetC: 55, hotC: 55, coldC: 18 }).coldMl).toBe(0);
    expect(temperWater({ totalMl: 500, targetC: 18, hotC: 55, coldC: 18 }).hotMl).toBe(0);
  });
  it("refuses what two taps cannot give, says what they can, and points to ice", () => {
    const call = (targetC: number) => () =>
      temperWater({ totalMl: 500, targetC, hotC: 45, coldC: 22 });
    expect(call(20)).toThrow("from 22 to 45 °C");
    expect(call(20)).toThrow("iceToCool");
    expect(call(50)).toThrow("heat the water further");
    expect(() => temperWater({ totalMl: 500, targetC: 20, hotC: 20, coldC: 20 })).toThrow("warmer");
  });
  it("cautions when the hot water scalds", () => {
    expect(temperWater({ totalMl: 1, targetC: 38, hotC: 60, coldC: 18 }).cautions[0]).toContain(
      "scalds",
    );
    expect(temperWater({ totalMl: 1, targetC: 38, hotC: 50, coldC: 18 }).cautions).toEqual([]);
  });
  it("recognises a tap in °F", () => {
    expect(() => temperWater({ totalMl: 1, targetC: 38, hotC: 131, coldC: 18 })).toThrow(
      "131 °F would be 55.0 °C",
    );
  });
});

describe("waterTemperatureFor", () => {
  it("answers how warm to pour a developer into a cold tank", () => {
    const pour = waterTemperatureFor({ waterMl: 600, targetC: 20, vessels: [steelTank] });
    const check = mixedTemperature({
      liquids: [{ volumeMl: 600, temperatureC: pour.waterC }],
      vessels: [steelTank],
    });
    expect(check.temperatureC).toBeCloseTo(20, 12);
    expect(pour.waterC).toBeGreaterThan(20);
  });
  it("refuses to ask for ice or steam", () => {
    const cold = [{ volumeMl: 900, temperatureC: 5 }];
    expect(() => waterTemperatureFor({ waterMl: 100, targetC: 38, liquids: cold })).toThrow(
      "temper the concentrate",
    );
  });
});

describe("iceToCool", () => {
  it("conserves energy: what the water gives is what ice and meltwater take", () => {
    const cooled = iceToCool({
      volumeMl: 2000,
      temperatureC: 26,
      targetC: 20,
      iceTemperatureC: -18,
    });
    const taken = cooled.iceG * (2.1 * 18 + 334 + 4.18 * 20);
    expect(taken).toBeCloseTo(2000 * 4.18 * 6, 6);
    expect(cooled.volumeAfterMl).toBeCloseTo(2000 + cooled.iceG, 10);
    expect(cooled.strengthFactor).toBeCloseTo(2000 / (2000 + cooled.iceG), 12);
  });
  it("needs less of colder ice, and more with a warm tank around", () => {
    const base = { volumeMl: 1000, temperatureC: 26, targetC: 20 };
    const wet = iceToCool(base).iceG;
    expect(iceToCool({ ...base, iceTemperatureC: -18 }).iceG).toBeLessThan(wet);
    const warm = { ...steelTank, temperatureC: 26 };
    expect(iceToCool({ ...base, vessels: [warm] }).iceG).toBeGreaterThan(wet);
  });
  it("refuses to warm with ice", () => {
    expect(() => iceToCool({ volumeMl: 1000, temperatureC: 20, targetC: 20 })).toThrow(
      "ice only cools",
    );
  });
});

describe("heaterTime", () => {
  const bath = { volumeMl: 20000, fromC: 20, toC: 38, powerW: 1500 };
  it("takes longer against a loss, and the same against a vanishing one", () => {
    const free = heaterTime(bath).minutes;
    expect(heaterTime({ ...bath, lossWPerK: 20 }).minutes).toBeGreaterThan(free);
    expect(heaterTime({ ...bath, lossWPerK: 1e-9 }).minutes).toBeCloseTo(free, 6);
  });
  it("names the highest temperature it can hold when that is too low", () => {
    expect(() => heaterTime({ ...bath, powerW: 300, lossWPerK: 20 })).toThrow("below 35 °C");
  });
  it("refuses to cool", () => {
    expect(() => heaterTime({ ...bath, toC: 20 })).toThrow("above fromC");
  });
});

describe("bottleTemperingTime", () => {
  const bottle = { volumeMl: 1000, diameterMm: 90, heightMm: 180 };
  it("waits twice as long to come within 0.5 °C as within 2 °C, from 8 °C away", () => {
    const wait = (withinC: number) =>
      bottleTemperingTime({ bottle, startC: 16, bathC: 24, withinC }).minutes;
    expect(wait(0.5) / wait(2)).toBeCloseTo(2, 12);
  });
  it("brackets its estimate, and gives the same for cooling as for warming", () => {
    const time = bottleTemperingTime({ bottle, startC: 16, bathC: 24 });
    expect(time.shortestMin).toBeLessThan(time.minutes);
    expect(time.longestMin).toBeGreaterThan(time.minutes);
    expect(time.targetC).toBe(23.5);
    expect(bottleTemperingTime({ bottle, startC: 24, bathC: 16 }).minutes).toBeCloseTo(
      time.minutes,
      12,
    );
  });
  it("says so when the bottle is there already", () => {
    expect(() => bottleTemperingTime({ bottle, startC: 23.8, bathC: 24 })).toThrow("already");
  });
});

describe("the table of heat properties", () => {
  it("holds only numbers above 0, each with its source and how it was obtained", () => {
    for (const each of [...heatProperties.materials, ...heatProperties.surroundings]) {
      expect(each.source.length).toBeGreaterThan(10);
      expect(each.howObtained.length).toBeGreaterThan(5);
      for (const value of Object.values(each)) {
        if (typeof value === "number") expect(value).toBeGreaterThan(0);
      }
    }
    for (const { lowestWPerM2K, typicalWPerM2K, highestWPerM2K } of heatProperties.surroundings) {
      expect(lowestWPerM2K).toBeLessThanOrEqual(typicalWPerM2K);
      expect(typicalWPerM2K).toBeLessThanOrEqual(highestWPerM2K);
    }
    expect(heatProperties.water.source).not.toBe("");
    expect(heatProperties.ice.source).not.toBe("");
  });
});
