import { describe, expect, it } from "vitest";
import {
  aimsOfBatch,
  colourNegativeProcess,
  colourPaperProcess,
  deviationsFromAim,
} from "wetside/control";
import { batch, frozen, grey, morning, paperStrip, reference } from "../example-strips.ts";

const aims = aimsOfBatch(batch("77"));
const strip = paperStrip(morning(1), 0);
const of = (patches: typeof reference, parameter: string) =>
  deviationsFromAim(frozen({ ...strip, patches }), frozen(aims), colourPaperProcess)
    .parameters.filter((each) => each.parameter === parameter)
    .map((each) => each.deviation);

describe("the aims of a batch", () => {
  it("are reference plus correction, to the decimals that were written", () => {
    const { patches } = aimsOfBatch(
      batch("1", { reference: { ld: grey(0.1) }, correction: { ld: grey(0.2) } }),
    );
    expect(patches.ld).toEqual(grey(0.3));
  });
  it("refuse a correction for a patch without a reference, a density for a correction, and nonsense", () => {
    const make = (change: Parameters<typeof batch>[1]) => () => aimsOfBatch(batch("1", change));
    expect(make({ correction: { hi: grey(0) } })).toThrow(/batch 1\.reference\.hi is missing/);
    expect(make({ correction: { ld: grey(0.8) } })).toThrow(/a correction is a small difference/);
    expect(make({ reference: { ld: grey(Number.NaN) } })).toThrow(/reference\.ld\.red is NaN/);
    expect(make({ reference: { ld: grey(12) } })).toThrow(/at most 6 density/);
  });
});

describe("the deviations of a strip", () => {
  it("are zero on a strip that reads its aims", () => {
    const { parameters } = deviationsFromAim(strip, aims, colourPaperProcess);
    expect(parameters.length).toBe(13);
    expect(new Set(parameters.map((each) => each.deviation))).toEqual(new Set([0]));
  });
  it("are reading minus aim, exact in decimals, and contrast is the difference of two", () => {
    const patches = { ...reference, ld: grey(0.83), hd: grey(1.6) };
    expect(of(patches, "ld")).toEqual([0.03, 0.03, 0.03]);
    expect(of(patches, "hdLessLd")).toEqual([-0.03, -0.03, -0.03]);
  });
  it("spread by the largest minus the smallest, not by red minus blue", () => {
    const patches = { ...reference, ld: { red: 0.82, green: 0.89, blue: 0.8 } };
    expect(of(patches, "colourSpread")).toEqual([0.09]);
    const negative = { ...reference, ld: { red: 0.78, green: 0.74, blue: 0.79 } };
    expect(of(negative, "colourSpread")).toEqual([0.05]);
  });
  it("are null where a patch was not read, and say which", () => {
    const { hd: _, ...patches } = reference;
    const { parameters } = deviationsFromAim({ ...strip, patches }, aims, colourPaperProcess);
    const contrast = parameters.find((each) => each.parameter === "hdLessLd");
    expect(contrast?.deviation).toBeNull();
    expect(contrast?.missingPatches).toEqual(["hd"]);
    expect(parameters.find((each) => each.parameter === "ld")?.deviation).toBe(0);
  });
  it("refuse another batch's aims, another process, and a density out of range", () => {
    const of77 = (change: object) => () =>
      deviationsFromAim({ ...strip, ...change }, aims, colourPaperProcess);
    expect(of77({ stripBatch: "88" })).toThrow(/aims of the strip's batch "88"/);
    expect(of77({ process: "colour-negative" })).toThrow(/strip\.process is "colour-negative"/);
    expect(of77({ patches: { ...reference, ld: grey(12) } })).toThrow(/ld\.red is 12/);
    expect(() => deviationsFromAim(strip, aims, colourNegativeProcess)).toThrow(/strip\.process/);
  });
  it("refuse aims that lack a patch the parameters need", () => {
    const { dMax: _, ...patches } = reference;
    expect(() => deviationsFromAim(strip, { ...aims, patches }, colourPaperProcess)).toThrow(
      /aim of batch 77 for patch dMax is missing; give the batch a reference/,
    );
  });
});
