import { describe, expect, it } from "vitest";
import { typedVolumeAdvice } from "wetside/units";

describe("what to write for a volume typed with its unit", () => {
  it("is both meanings where a unit has two, and one where the typist said which", () => {
    expect(typedVolumeAdvice("5 gal", "L")).toBe(
      "write litres: 18.927 for US gallons, 22.73 for imperial gallons",
    );
    expect(typedVolumeAdvice("0.5 US gal", "mL")).toBe("write millilitres: 1892.7 for US gallons");
    expect(typedVolumeAdvice("3 imperial pints", "mL")).toBe(
      "write millilitres: 1704.8 for imperial pints",
    );
    expect(typedVolumeAdvice("12 fl. oz", "mL")).toContain("354.88 for US fluid ounces");
    expect(typedVolumeAdvice("1 quart", "L")).toContain("0.94635 for US quarts");
  });
  it("is the number alone, converted, for metric units", () => {
    expect(typedVolumeAdvice("20 L", "L")).toBe("write litres, the number alone: 20");
    expect(typedVolumeAdvice("20 litres", "mL")).toBe("write millilitres, the number alone: 20000");
    expect(typedVolumeAdvice("500cc", "L")).toBe("write litres, the number alone: 0.5");
    expect(typedVolumeAdvice("2,5 l", "L")).toBe("write litres, the number alone: 2.5");
  });
  it("is silent about anything else, and about a comma that may mean thousands", () => {
    for (const typed of ["20", "gal", "", "20 kg", "-5 gal", "1,500 L", 20, null, undefined]) {
      expect(typedVolumeAdvice(typed, "L")).toBeUndefined();
    }
  });
});
