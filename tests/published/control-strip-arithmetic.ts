import {
  type Aims,
  aimsOfBatch,
  colourNegativeProcess,
  type Densities,
  deviationsFromAim,
} from "wetside/control";
import type { Computed } from "./run.ts";

type Triple = readonly [number, number, number];
const densities = ([red, green, blue]: Triple): Densities => ({ red, green, blue });
const zero = densities([0, 0, 0]);

/** Deviations of a strip whose aims are all zero are its readings. */
function deviations(patches: Record<string, Densities>) {
  const all = { dMin: zero, ld: zero, hd: zero, dMax: zero, retainedSilver: zero, ...patches };
  const names = Object.keys(all);
  const aims: Aims = {
    process: "colour-negative",
    stripBatch: "1",
    patches: Object.fromEntries(names.map((name) => [name, zero])),
    basis: "reference and correction",
  };
  const place = { takenAt: "2026-01-02T07:00", process: "colour-negative", stripBatch: "1" };
  const strip = { ...place, operator: "example", patches: all };
  const { parameters } = deviationsFromAim(strip, aims, colourNegativeProcess);
  return (id: string) =>
    parameters.filter((each) => each.parameter === id).map((each) => each.deviation ?? Number.NaN);
}

interface ExampleStrip {
  readonly Dmin: Triple;
  readonly LD: Triple;
  readonly HD: Triple;
  readonly DmaxB: number;
  readonly YB: number;
}

export const computed: Computed = {
  "hd-less-ld": ({ LD, HD }: ExampleStrip) =>
    deviations({ ld: densities(LD), hd: densities(HD) })("hdLessLd"),
  "retained-silver": ({ DmaxB, YB }: ExampleStrip) =>
    deviations({ dMax: densities([0, 0, DmaxB]), retainedSilver: densities([0, 0, YB]) })(
      "retainedSilver",
    )[0] ?? Number.NaN,
  // The spread is taken of HD − LD; LD stands at its aim here, so HD carries the deviations.
  "colour-spread": ({ R, G, B }: { R: number; G: number; B: number }) =>
    deviations({ hd: densities([R, G, B]) })("colourSpread")[0] ?? Number.NaN,
  aim: ({ reference, correction }: { reference: Triple; correction: Triple }) => {
    const { red, green, blue } = aimsOfBatch({
      id: "1",
      process: "colour-negative",
      reference: { ld: densities(reference) },
      correction: { ld: densities(correction) },
    }).patches.ld as Densities;
    return [red, green, blue];
  },
};
