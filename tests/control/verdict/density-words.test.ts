import { describe, expect, it } from "vitest";
import { type Crossover, colourPaperProcess, processVerdict, type Strip } from "wetside/control";
import { batches, grey, morning, paperStrip, reference } from "../example-strips.ts";

const specification = colourPaperProcess;
/** Aims of the batch moved by a crossover: a mean, finer than a reading. */
const moved = (by: number): Crossover => ({
  from: "76",
  to: "77",
  pairs: 3,
  aims: {
    process: "colour-paper",
    stripBatch: "77",
    patches: { ...reference, ld: grey(0.8 + by), hd: grey(1.6 + by) },
    basis: "crossover",
  },
  differences: [],
  assumptions: [],
  warnings: ["1 pair only; run at least 3, at separate times, while old strips are left"],
});
const judge = (strips: readonly Strip[], by = 0) =>
  processVerdict({ strips, batches, specification, crossovers: by === 0 ? [] : [moved(by)] });
const reasonOf = (verdict: ReturnType<typeof judge>) =>
  verdict.parameters.find((each) => each.parameter === "ld" && each.colour === "red")?.reason;

describe("a deviation in a sentence", () => {
  it("is printed to the hundredth where strips are read to the hundredth", () => {
    const verdict = judge([paperStrip(morning(1), 0.05)], 0.0033);
    expect(verdict.readingDecimals).toBe(2);
    expect(reasonOf(verdict)).toBe("LD (speed) red is +0.05, within its limits");
  });
  it("is printed to the thousandth where any of the latest strips is read to the thousandth", () => {
    const verdict = judge([paperStrip(morning(1), 0.051), paperStrip(morning(2), 0.05)], 0.0033);
    expect(verdict.readingDecimals).toBe(3);
    expect(reasonOf(verdict)).toBe("LD (speed) red is +0.047, within its limits");
  });
  it("gets a decimal more where rounding would hide that a limit is passed", () => {
    expect(reasonOf(judge([paperStrip(morning(1), 0.08)], -0.0033))).toBe(
      "LD (speed) red is +0.083, above the action limit of +0.08",
    );
    expect(reasonOf(judge([paperStrip(morning(1), -0.1)], 0.0004))).toMatch(
      /^LD \(speed\) red is −0\.1004, below the control limit of −0\.10;/,
    );
  });
  it("is not made to look beyond a limit by rounding", () => {
    const own = {
      ...specification,
      parameters: specification.parameters.map((one) =>
        one.id !== "ld" || one.limits.control === null
          ? one
          : {
              ...one,
              limits: {
                ...one.limits,
                action: { ...one.limits.control, lower: -0.065, upper: 0.065 },
              },
            },
      ),
    };
    const strips = [paperStrip(morning(1), 0.07)];
    const verdict = processVerdict({
      strips,
      batches,
      specification: own,
      crossovers: [moved(0.005)],
    });
    expect(reasonOf(verdict)).toBe("LD (speed) red is +0.065, within its limits");
  });
  it("has no sign where it prints as nothing", () => {
    expect(reasonOf(judge([paperStrip(morning(1), 0)], 0.0033))).toBe(
      "LD (speed) red is 0.00, within its limits",
    );
  });
  it("stays whole in the result", () => {
    const { parameters } = judge([paperStrip(morning(1), 0.05)], 0.0033);
    const red = parameters.find((each) => each.parameter === "ld" && each.colour === "red");
    expect(red?.deviation).toBe(0.0467);
  });
});

describe("doubts about a crossover", () => {
  it("stand among the warnings while its batch is in use", () => {
    expect(judge([paperStrip(morning(1), 0)], 0.0033).warnings).toContain(
      "crossover 76 to 77: 1 pair only; run at least 3, at separate times, while old strips are left",
    );
    expect(judge([paperStrip(morning(1), 0)]).warnings.join()).not.toMatch(/crossover/);
  });
});
