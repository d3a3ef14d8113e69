import { type ChartConstants, chartConstants } from "wetside/control";
import type { Computed } from "./run.ts";

interface Sizes {
  readonly n: readonly number[];
}

const each = (name: keyof ChartConstants) => (inputs: Sizes) =>
  inputs.n.map((n) => chartConstants(n)[name]);
const one = (name: keyof ChartConstants) => (inputs: Sizes) => each(name)(inputs)[0] ?? Number.NaN;

export const computed: Computed = {
  d2: each("d2"),
  d3: each("d3"),
  c4: each("c4"),
  A2: each("A2"),
  A3: each("A3"),
  B3: each("B3"),
  B4: each("B4"),
  D1: each("D1"),
  D2: each("D2"),
  D3: each("D3"),
  D4: each("D4"),
  E2: each("E2"),
  "d4-2": one("d4"),
  "d2-exact": one("d2"),
  "d3-exact": one("d3"),
  "D4-printed": each("D4"),
  "D4-3-printed": one("D4"),
  "D4-5-nist": one("D4"),
};
