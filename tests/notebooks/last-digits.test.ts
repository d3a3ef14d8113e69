import { describe, expect, it } from "vitest";
import { withoutLastDigits } from "./last-digits.ts";

describe("a text without the last digits of its numbers", () => {
  it("is the same for two roundings of one number", () => {
    const cut = withoutLastDigits(
      "[9.999999999999999e-05, 4.562678900000001, -0.9999999999999998]",
    );
    expect(cut).toBe(withoutLastDigits("[0.0001, 4.5626789, -1.0]"));
  });
  it("differs where the tenth digit does, and in every word", () => {
    expect(withoutLastDigits("1.000000001")).not.toBe(withoutLastDigits("1.000000002"));
    expect(withoutLastDigits("a 0.1")).not.toBe(withoutLastDigits("b 0.1"));
  });
  it("leaves dates, counts and versions of three parts readable", () => {
    expect(withoutLastDigits('"2026-08-14", 17')).toBe('"2026-08-14", 17');
  });
});
