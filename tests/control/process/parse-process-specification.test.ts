import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  colourNegativeProcess,
  colourPaperProcess,
  parseProcessSpecification,
  replaceLimits,
} from "wetside/control";

type Loose = Record<string, unknown> & { parameters: Record<string, unknown>[] };
const copy = (): Loose => JSON.parse(JSON.stringify(colourNegativeProcess));
const limit = (lower: unknown, upper: unknown) => ({
  lower,
  upper,
  source: "the lab",
  howObtained: "the lab's own",
});
const withLd = (limits: unknown): Loose => {
  const loose = copy();
  Object.assign(loose.parameters[1] ?? {}, { limits });
  return loose;
};

describe("a process specification", () => {
  it("is sound in every file that comes with the library", () => {
    const folder = new URL("../../../data/processes/", import.meta.url);
    const files = readdirSync(folder).filter((name) => name.endsWith(".json"));
    expect(files.length).toBeGreaterThanOrEqual(2);
    for (const file of files) {
      const text = readFileSync(new URL(file, folder), "utf8");
      expect(`${parseProcessSpecification(text).id}.json`).toBe(file);
    }
  });
  it("comes back from JSON as it went", () => {
    for (const process of [colourNegativeProcess, colourPaperProcess]) {
      expect(parseProcessSpecification(JSON.stringify(process))).toEqual(process);
    }
  });
  it("marks where each limit is from", () => {
    for (const process of [colourNegativeProcess, colourPaperProcess]) {
      for (const { limits } of process.parameters) {
        for (const each of [limits.action, limits.control, limits.adjustment]) {
          if (each !== null)
            expect(each.source.length * each.howObtained.length).toBeGreaterThan(0);
        }
      }
    }
  });
  it("says which kind its limits are", () => {
    const loose = withLd({ action: null, control: limit(-0.1, 0.1) });
    expect(parseProcessSpecification(loose).parameters[1]?.limits).toEqual({
      kind: "process limits",
      action: null,
      control: limit(-0.1, 0.1),
      adjustment: null,
    });
  });
  it("refuses crossed limits", () => {
    expect(() => parseProcessSpecification(withLd({ control: limit(0.1, -0.1) }))).toThrow(
      /parameters\[1\] \(ld\)\.limits\.control has lower 0\.1 above upper -0\.1; the limits are crossed/,
    );
  });
  it("refuses action limits wider than control limits, and asks whether they were exchanged", () => {
    const exchanged = { action: limit(-0.1, 0.1), control: limit(-0.06, 0.06) };
    expect(() => parseProcessSpecification(withLd(exchanged))).toThrow(
      /action\.upper \(0\.1\) is wider than .*control\.upper \(0\.06\); are the two exchanged\?/,
    );
    const loose = { adjustment: limit(-0.2, 0.2), control: limit(-0.1, 0.1) };
    expect(() => parseProcessSpecification(withLd(loose))).toThrow(/adjustment\.lower \(-0\.2\)/);
  });
  it("refuses limits that leave the aim outside, that have no side, or that are not numbers", () => {
    const control = (lower: unknown, upper: unknown) => () =>
      parseProcessSpecification(withLd({ control: limit(lower, upper) }));
    expect(control(0.02, 0.1)).toThrow(/control\.lower is 0\.02; it is a deviation from aim/);
    expect(control(-0.1, -0.02)).toThrow(/control\.upper is -0\.02/);
    expect(control(null, null)).toThrow(/has neither side/);
    expect(control("-0.1", 0.1)).toThrow(/control\.lower is "-0\.1"; write a density or null/);
    expect(control(null, 0.1)).not.toThrow();
  });
  it("refuses misspelt words and names the nearest", () => {
    const loose = copy();
    loose.geometry = "transmision";
    Object.assign(loose.parameters[0] ?? {}, { patch: "dmin" });
    Object.assign(loose.parameters[1] ?? {}, { colours: ["red", "grn", "red"] });
    Object.assign(loose.parameters[4] ?? {}, { of: "hdLessld" });
    expect(() => parseProcessSpecification(loose)).toThrow(/did you mean "transmission"/);
    expect(() => parseProcessSpecification(loose)).toThrow(/did you mean "dMin"/);
    expect(() => parseProcessSpecification(loose)).toThrow(/names "red" twice/);
    expect(() => parseProcessSpecification(loose)).toThrow(/did you mean "hdLessLd"/);
  });
  it("lists everything that is wrong at once", () => {
    const loose = copy();
    loose.id = "";
    loose.source = 7;
    loose.patches = {};
    const message = (() => {
      try {
        parseProcessSpecification(loose);
      } catch (error) {
        return String(error);
      }
      return "";
    })();
    for (const part of ["id is", "source is 7", "patches is empty", "parameters[0] (dMin).patch"]) {
      expect(message).toContain(part);
    }
  });
  it("refuses a repeated parameter, a spread of one colour and a negative spread", () => {
    const twice = copy();
    twice.parameters.push(twice.parameters[0] ?? {});
    expect(() => parseProcessSpecification(twice)).toThrow(/\.id is used twice/);
    const one = copy();
    Object.assign(one.parameters[4] ?? {}, { of: "retainedSilver" });
    expect(() => parseProcessSpecification(one)).toThrow(/has one colour only/);
    const negative = copy();
    Object.assign(negative.parameters[4] ?? {}, { limits: { control: limit(-0.1, 0.1) } });
    expect(() => parseProcessSpecification(negative)).toThrow(/a spread is never negative/);
  });
  it("refuses what is not a specification at all", () => {
    for (const wrong of ["", "date;red;green", "[]", "null", 7, null, undefined]) {
      expect(() => parseProcessSpecification(wrong)).toThrow(/parseProcessSpecification/);
    }
    const noParameters = { ...copy(), parameters: [] };
    expect(() => parseProcessSpecification(noParameters)).toThrow(/at least one parameter/);
    expect(() => parseProcessSpecification({ ...copy(), parameters: [7] })).toThrow(
      /is 7; write an/,
    );
    expect(() => parseProcessSpecification(withLd("wide"))).toThrow(/limits is "wide"/);
    expect(() => parseProcessSpecification(withLd({ stop: null }))).toThrow(/write one of/);
  });
});

describe("replacing limits", () => {
  it("puts the lab's own in place and marks them so", () => {
    const strict = replaceLimits(colourNegativeProcess, { ld: { action: 0.04, control: 0.05 } });
    const { action, control, adjustment } = strict.parameters[1]?.limits ?? {};
    expect([action?.lower, action?.upper, control?.upper]).toEqual([-0.04, 0.04, 0.05]);
    expect(action?.howObtained).toBe("the lab's own");
    expect(adjustment).toEqual(colourNegativeProcess.parameters[1]?.limits.adjustment);
    expect(colourNegativeProcess.parameters[1]?.limits.action?.upper).toBe(0.06);
  });
  it("keeps a one-sided limit one-sided and can take a limit away", () => {
    const changed = replaceLimits(colourNegativeProcess, {
      colourSpread: { control: 0.12 },
      dMin: { action: null, adjustment: null },
    });
    expect(changed.parameters[4]?.limits.control).toMatchObject({ lower: null, upper: 0.12 });
    expect(changed.parameters[0]?.limits.action).toBeNull();
    const black = replaceLimits(colourPaperProcess, { dMax: { control: 0.2 } });
    expect(black.parameters[3]?.limits.control).toMatchObject({ lower: -0.2, upper: null });
  });
  it("refuses an unknown parameter, a negative width and limits that would cross", () => {
    expect(() => replaceLimits(colourNegativeProcess, { lo: {} })).toThrow(/write one of "dMin"/);
    expect(() => replaceLimits(colourNegativeProcess, { ld: { action: -1 } })).toThrow(
      /ld\.action/,
    );
    expect(() => replaceLimits(colourNegativeProcess, { ld: { action: 0.2 } })).toThrow(
      /exchanged/,
    );
  });
});
