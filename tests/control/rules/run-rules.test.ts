import { describe, expect, it } from "vitest";
import { nelsonRules, type RunRuleOptions, runRules, westernElectricRules } from "wetside/control";
import { frozen } from "../example-strips.ts";

const unit = { centre: 0, sigma: 1 };
const at = (values: readonly number[], options: RunRuleOptions) =>
  runRules(frozen(values), unit, options).map((signal) => signal.at);

describe("run rules", () => {
  it("are off unless named: an empty list of rules never signals", () => {
    expect(at([9, 9, 9], { rules: [] })).toEqual([]);
  });
  it("are the four of Western Electric unless others are named", () => {
    const rules = new Set(runRules([9, 9, 9, 9, 9, 9, 9, 9], unit).map((signal) => signal.rule));
    expect(rules).toEqual(new Set(westernElectricRules));
  });
  it("give the positions that led to each signal and a plain sentence", () => {
    const signals = runRules([0.1, 2.1, 0.3, 2.2], unit, { rules: ["western-electric-2"] });
    expect(signals).toEqual([
      {
        rule: "western-electric-2",
        at: 3,
        rows: [1, 3],
        side: "above",
        sentence:
          "2 of 3 readings in a row more than 2 sigma above the centre line (Western Electric rule 2)",
      },
    ]);
  });
  it("end a run at a reading on the centre line", () => {
    expect(at([1, 1, 1, 1, 0, 1, 1, 1, 1], { rules: ["western-electric-4"] })).toEqual([]);
  });
  it("end a rise and an alternation at equal neighbours", () => {
    expect(at([1, 2, 3, 3, 4, 5, 6], { rules: ["nelson-3"] })).toEqual([]);
    const saw = Array.from({ length: 14 }, (_, i) => i % 2);
    expect(at(saw, { rules: ["nelson-4"] })).toEqual([13]);
    expect(at([...saw.slice(0, 7), ...saw.slice(6)], { rules: ["nelson-4"] })).toEqual([]);
  });
  it("count six rising readings as five steps", () => {
    expect(at([0, 1, 2, 3, 4], { rules: ["nelson-3"] })).toEqual([]);
    expect(at([0, 1, 2, 3, 4, 5], { rules: ["nelson-3"] })).toEqual([5]);
    expect(at([0, 1, 2, 3, 4, 5], { rules: ["nelson-3"], trendLength: 7 })).toEqual([]);
  });
  it("take nine, eight or seven on one side, as the publications differ", () => {
    const run = new Array(9).fill(0.5);
    expect(at(run, { rules: ["nelson-2"] })).toEqual([8]);
    expect(at(run, { rules: ["western-electric-4"] })).toEqual([7, 8]);
    expect(at(run, { rules: ["nelson-2"], oneSideLength: 7 })).toEqual([6, 7, 8]);
  });
  it("take a reading on the line of 1 sigma as neither within nor beyond", () => {
    expect(at(new Array(15).fill(1), { rules: ["nelson-7", "nelson-8"] })).toEqual([]);
    const within = Array.from({ length: 15 }, (_, i) => (i % 2 ? 0.9 : -0.9));
    expect(at(within, { rules: ["nelson-7"] })).toEqual([14]);
  });
  it("ask test 8 for both sides unless told that any will do", () => {
    const above = new Array(8).fill(1.5);
    expect(at(above, { rules: ["nelson-8"] })).toEqual([]);
    expect(at(above, { rules: ["nelson-8"], outsideSides: "any" })).toEqual([7]);
    expect(at([-1.5, ...above.slice(1)], { rules: ["nelson-8"] })).toEqual([7]);
    const told = runRules(above, unit, { rules: ["nelson-8"], outsideSides: "any" });
    expect(told[0]?.side).toBe("above");
  });
  it("may complete a zone pattern at the start before its window is full", () => {
    expect(at([1.5, 1.5, 1.5, 1.5], { rules: ["western-electric-3"] })).toEqual([3]);
    expect(at([2.5, 2.5], { rules: ["western-electric-2"] })).toEqual([1]);
  });
  it("start afresh at a restart, windows and steps included", () => {
    const run = new Array(16).fill(0.5);
    expect(at(run, { rules: ["western-electric-4"], restartAt: [8] })).toEqual([7, 15]);
    expect(at([2.5, 2.5], { rules: ["western-electric-2"], restartAt: [1] })).toEqual([]);
    expect(at([0, 1, 2, 3, 4, 5], { rules: ["nelson-3"], restartAt: [3] })).toEqual([]);
    const [signal] = runRules([1.5, 1.5, 1.5, 1.5, 1.5], unit, {
      rules: ["western-electric-3"],
      restartAt: [1],
    });
    expect(signal?.rows).toEqual([1, 2, 3, 4]);
  });
  it("signal again with every further reading of a run that goes on", () => {
    expect(at(new Array(11).fill(0.5), { rules: ["nelson-2"] })).toEqual([8, 9, 10]);
  });
  it("stay silent on an empty series and on one reading", () => {
    expect(at([], { rules: nelsonRules })).toEqual([]);
    expect(at([0], { rules: nelsonRules })).toEqual([]);
  });
  it("refuse an unknown rule by naming the nearest", () => {
    expect(() => at([1], { rules: ["nelson-9" as "nelson-1"] })).toThrow(/did you mean "nelson-/);
    expect(() => at([1], { rules: "nelson-1" as unknown as [] })).toThrow(/write a list/);
  });
  it("refuse a sigma of zero, a length of one and a broken reading", () => {
    expect(() => runRules([1], { centre: 0, sigma: 0 })).toThrow(/sigma is 0/);
    expect(() => at([1], { oneSideLength: 1 })).toThrow(/oneSideLength is 1/);
    expect(() => at([Number.NaN], {})).toThrow(/values\[0\] is NaN/);
  });
  it("list a rule that is named twice once", () => {
    expect(at([9], { rules: ["nelson-1", "nelson-1"] })).toEqual([0]);
  });
});
