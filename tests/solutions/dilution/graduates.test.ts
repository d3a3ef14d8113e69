import { describe, expect, it } from "vitest";
import {
  checkConcentratePerFilm,
  diluteWithGraduates,
  graduate,
  graduates,
  measureWith,
} from "wetside/solutions";

describe("graduates", () => {
  it("have names of their own, a scale finer than their size, and a source", () => {
    expect(new Set(graduates.map(({ id }) => id)).size).toBe(graduates.length);
    for (const each of graduates) {
      expect(each.divisionMl, each.id).toBeGreaterThan(0);
      expect(each.divisionMl, each.id).toBeLessThanOrEqual(each.capacityMl);
      expect(each.toleranceMl, each.id).toBeGreaterThan(0);
      expect(each.toleranceMl, each.id).toBeLessThan(each.capacityMl * 0.06);
      expect(each.source.length * each.howObtained.length, each.id).toBeGreaterThan(0);
    }
  });
  it("of class B err twice as much as class A", () => {
    for (const b of graduates.filter(({ id }) => id.endsWith("-b"))) {
      const a = graduate(b.id.replace(/-b$/, "-a"));
      expect(b.toleranceMl / a.toleranceMl, b.id).toBeCloseTo(2, 9);
    }
  });
  it("of the international standard are never finer than the American of their class", () => {
    for (const iso of graduates.filter(({ id }) => id.includes("-iso-"))) {
      const american = graduate(iso.id.replace("-iso", ""));
      expect(iso.toleranceMl, iso.id).toBeGreaterThan(american.toleranceMl);
    }
  });
  it("are found by name, and a wrong name gets the closest", () => {
    expect(() => graduate("cylinder-100")).toThrow("did you mean");
  });
});

describe("measureWith", () => {
  it("rounds to the nearest division and states the error", () => {
    expect(measureWith(31.25, "cylinder-50-b")).toMatchObject({
      measuredMl: 31,
      errorMl: -0.25,
      relativeError: 31 / 31.25 - 1,
      toleranceMl: 0.5,
      fills: 1,
      warnings: [],
    });
  });
  it("leaves a volume on a division as it is", () => {
    expect(measureWith(0.3, "syringe-1").measuredMl).toBe(0.3);
    expect(measureWith(0.3, "syringe-1").errorMl).toBe(0);
  });
  it("counts the fillings of a small vessel, and its error each time", () => {
    const twice = measureWith(150, "cylinder-100-b");
    expect(twice).toMatchObject({ fills: 2, toleranceMl: 2 });
    expect(twice.warnings[0]).toContain("2 times");
    expect(measureWith(100, "cylinder-100-b").fills).toBe(1);
  });
  it("warns of a small volume in a large vessel, and refuses one that rounds to nothing", () => {
    expect(measureWith(50, "cylinder-1000-b").warnings[0]).toContain("tenth");
    expect(() => measureWith(4, "cylinder-1000-b")).toThrow("use a smaller vessel");
  });
  it("takes a vessel of your own", () => {
    const mine = { ...graduate("beaker-600"), divisionMl: 50, toleranceMl: 0 };
    expect(measureWith(270, mine)).toMatchObject({ measuredMl: 250, toleranceMl: 0 });
    expect(() => measureWith(270, { ...mine, divisionMl: 0 })).toThrow("divisionMl");
    expect(() => measureWith(270, { ...mine, divisionMl: 900 })).toThrow("divisionMl");
  });
  it("refuses volumes that are none", () => {
    for (const wrong of [0, -1, Number.NaN, 1e10]) {
      expect(() => measureWith(wrong, "jug-1000")).toThrow("volumeMl");
    }
  });
});

describe("diluteWithGraduates", () => {
  const vessels = ["cylinder-500-b", "cylinder-25-b"];
  it("takes the smallest vessel that holds each part", () => {
    const mix = diluteWithGraduates({ ratio: "1+31", totalMl: 500, vessels });
    expect(mix.parts.map((part) => part.graduate)).toEqual([
      "25 mL measuring cylinder, class B",
      "500 mL measuring cylinder, class B",
    ]);
    expect(mix.totalMl).toBeCloseTo(500.6, 9);
  });
  it("states the error of strength that rounding makes", () => {
    const mix = diluteWithGraduates({ ratio: "1+31", totalMl: 500, vessels });
    expect(mix.parts[0]?.strengthError).toBeCloseTo(15.6 / 500.6 / (1 / 32) - 1, 12);
    expect(mix.parts[1]?.strengthError).toBe(0);
  });
  it("bounds the error that the vessels may add", () => {
    const [part] = diluteWithGraduates({ ratio: "1+31", totalMl: 500, vessels }).parts;
    const worst = (c: number, w: number) => c / (c + w) / (15.6 / 500.6) - 1;
    const reach = Math.max(worst(15.6 + 0.34, 485 - 4), -worst(15.6 - 0.34, 485 + 4));
    // Linear law against the corners of the box: they differ by the square of 2 %.
    expect(part?.strengthTolerance).toBeCloseTo(reach, 3);
  });
  it("makes an exact mix when every part stands on a mark", () => {
    const mix = diluteWithGraduates({ ratio: "1+9", totalMl: 250, vessels });
    expect(mix.parts[0]).toMatchObject({ measuredMl: 25, strengthError: 0 });
  });
  it("measures stock alone, whatever the vessel's error, at full strength", () => {
    const mix = diluteWithGraduates({ ratio: "stock", totalMl: 300, vessels });
    expect(mix.parts).toHaveLength(1);
    expect(mix.parts[0]?.strengthTolerance).toBe(0);
  });
  it("refuses no vessels at all", () => {
    expect(() => diluteWithGraduates({ ratio: "1+9", totalMl: 1, vessels: [] })).toThrow("vessel");
  });
});

describe("checkConcentratePerFilm", () => {
  const tank = { ratio: "1+31", totalMl: 480, films: 2, smallestMlPerFilm: 7.5 };
  it("calls exactly enough enough", () => {
    expect(checkConcentratePerFilm(tank)).toMatchObject({
      concentrateMl: 15,
      perFilmMl: 7.5,
      enough: true,
      mostFilms: 2,
      totalNeededMl: 480,
      weakestRatio: "1+31",
      warnings: [],
    });
  });
  it("gives the ways out when it is not", () => {
    const short = checkConcentratePerFilm({ ...tank, films: 3 });
    expect(short).toMatchObject({ enough: false, mostFilms: 2, totalNeededMl: 720 });
    expect(short.weakestRatio).toBe("1+20.3");
    expect(short.warnings[0]).toContain("22.5 mL needed");
    const again = checkConcentratePerFilm({ ...tank, films: 3, ratio: short.weakestRatio ?? "" });
    expect(again.enough).toBe(true);
  });
  it("says when even stock is too little", () => {
    expect(checkConcentratePerFilm({ ...tank, totalMl: 10 }).weakestRatio).toBeNull();
    expect(checkConcentratePerFilm({ ...tank, totalMl: 15 }).weakestRatio).toBe("stock");
  });
  it("refuses no films and no smallest volume", () => {
    expect(() => checkConcentratePerFilm({ ...tank, films: 0 })).toThrow("films");
    expect(() => checkConcentratePerFilm({ ...tank, smallestMlPerFilm: 0 })).toThrow("smallest");
  });
});
