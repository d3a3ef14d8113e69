import { describe, expect, it } from "vitest";
import {
  nelsonRules,
  runRuleFalseAlarms,
  westernElectricRules,
  westernElectricZoneRules,
  zoneRulesRunLength,
} from "wetside/control";

// The published run lengths are printed to two decimals.
const printed = 0.005;

describe("false alarms of run rules", () => {
  it("compute the run length of the 3 sigma limits alone", () => {
    const { averageRunLength } = runRuleFalseAlarms({ rules: ["nelson-1"] });
    expect(averageRunLength).toBeCloseTo(370.3983473449564, 9);
  });
  it("say the published run length of the four rules and of the eight tests", () => {
    expect(runRuleFalseAlarms().averageRunLength).toBe(91.75);
    expect(runRuleFalseAlarms({ rules: nelsonRules }).averageRunLength).toBe(73.5);
    expect(runRuleFalseAlarms().sentence).toMatch(/once in 91\.75 readings/);
  });
  it("agree with the computed run length of every set of Western Electric rules", () => {
    for (let set = 1; set < 16; set++) {
      const inSet = (_: unknown, i: number) => (set & (1 << i)) !== 0;
      const rules = westernElectricRules.filter(inSet);
      const { averageRunLength } = runRuleFalseAlarms({ rules });
      if (!rules.includes("western-electric-1")) {
        expect(averageRunLength, rules.join()).toBeNull();
        continue;
      }
      const exact = zoneRulesRunLength(westernElectricZoneRules.filter(inSet)).zeroState;
      expect(Math.abs((averageRunLength ?? 0) - exact), rules.join()).toBeLessThan(printed);
    }
  });
  it("give a bound where the set or the variant is not published", () => {
    const odd = runRuleFalseAlarms({ rules: ["nelson-2", "nelson-3"] });
    expect(odd.averageRunLength).toBeNull();
    expect(odd.sentence).toMatch(/at most 0\.67 %/);
    expect(runRuleFalseAlarms({ oneSideLength: 7 }).averageRunLength).toBeNull();
    expect(runRuleFalseAlarms({ zoneSignals: "every window" }).averageRunLength).toBeNull();
  });
  it("bound the published rate from above", () => {
    for (const rules of [undefined, nelsonRules]) {
      const told = runRuleFalseAlarms(rules === undefined ? {} : { rules });
      expect(1 / (told.averageRunLength ?? 0)).toBeLessThan(told.highestRatePerReading);
    }
  });
  it("say so when no rule is on", () => {
    expect(runRuleFalseAlarms({ rules: [] }).sentence).toBe("no run rule is switched on");
  });
});
