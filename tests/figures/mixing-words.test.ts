import { describe, expect, it } from "vitest";
import { acidMixWords, hydrometerWords } from "wetside/figures";
import { acidToStrength, hydrometerCheck } from "wetside/solutions";

const points = [
  { specificGravity: 1, strength: 0 },
  { specificGravity: 1.05, strength: 1 },
];
const dip = { temperatureC: 20, points, target: 1, tankMl: 10000, dump: true };

describe("acidMixWords", () => {
  it("pours acid into water, and says what is lost and the rule", () => {
    const mix = acidToStrength({
      substance: "acetic acid",
      strongPercent: 99.5,
      targetPercent: 28,
      totalMl: 2000,
    });
    const words = acidMixWords(mix, "glacial acid");
    expect(words).toContain("555 mL of glacial acid into 1490 mL of water**, never the other way");
    expect(words).toContain("44 mL are lost");
    expect(words).toContain("**3+8**");
  });
});

describe("hydrometerWords", () => {
  it("leaves a right mix alone", () => {
    const words = hydrometerWords(hydrometerCheck({ ...dip, reading: 1.0495 }));
    expect(words).toMatch(/^\*\*Within tolerance\*\*: 99\.0 %.*Leave it\.$/);
  });
  it("dumps before it would overflow", () => {
    const words = hydrometerWords(hydrometerCheck({ ...dip, reading: 1.055, extrapolate: true }));
    expect(words).toContain("Dump 0.91 L first, then add **0.91 L of water**");
    expect(words).toContain("holds 10.00 L");
  });
  it("adds concentrate to a weak mix", () => {
    const weak = { ...dip, reading: 1.04, presentMl: 8000, concentrateStrength: 5 };
    expect(hydrometerWords(hydrometerCheck(weak))).toContain("Too weak**: 80.0 %");
    expect(hydrometerWords(hydrometerCheck(weak))).toContain("of concentrate**");
  });
});
