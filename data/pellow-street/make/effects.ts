import type { Line } from "./lab.ts";

type Three = readonly [red: number, green: number, blue: number];
export type Effect = Readonly<Record<string, Three>>;

/**
 * How much each cause moves each patch. No published sizes were found, only signs, so the sizes
 * are illustrative: made up so that the faults show about as a lab would meet them.
 */
export const effects: Readonly<
  Record<Line, { readonly perReplenisherError: Effect; readonly perDegreeC: Effect }>
> = {
  film: {
    perReplenisherError: {
      dMin: [0.03, 0.04, 0.05],
      ld: [0.44, 0.48, 0.54],
      hd: [0.68, 0.74, 0.82],
      dMax: [0.74, 0.8, 0.88],
      retainedSilver: [0.1, 0.2, 0.86],
    },
    perDegreeC: {
      dMin: [0.02, 0.02, 0.03],
      ld: [0.09, 0.1, 0.11],
      hd: [0.15, 0.16, 0.17],
      dMax: [0.16, 0.17, 0.18],
      retainedSilver: [0.02, 0.04, 0.18],
    },
  },
  paper: {
    perReplenisherError: {
      dMin: [0, 0, 0],
      ld: [0.4, 0.42, 0.38],
      hd: [0.65, 0.68, 0.6],
      dMax: [0.2, 0.2, 0.25],
    },
    perDegreeC: {
      dMin: [0.002, 0.002, 0.004],
      ld: [0.07, 0.085, 0.1],
      hd: [0.12, 0.135, 0.16],
      dMax: [0.04, 0.04, 0.05],
    },
  },
};

/** Fixer in the film developer: fog and contrast up. Signs as printed, sizes illustrative. */
export const contaminated: Effect = {
  dMin: [0.03, 0.04, 0.05],
  ld: [0.06, 0.05, 0.07],
  hd: [0.18, 0.17, 0.2],
  dMax: [0.14, 0.13, 0.16],
  retainedSilver: [0.03, 0.04, 0.15],
};

/** A film strip that has seen light: everything up, the thin patches most. */
export const lightStruck: Effect = {
  dMin: [0.07, 0.08, 0.06],
  ld: [0.11, 0.12, 0.1],
  hd: [0.05, 0.05, 0.04],
  dMax: [0, 0, 0],
  retainedSilver: [0.03, 0.03, 0],
};

/** A paper strip read wet: everything reads high. */
export const readWet: Effect = {
  dMin: [0.01, 0.01, 0.01],
  ld: [0.12, 0.13, 0.13],
  hd: [0.2, 0.21, 0.2],
  dMax: [0.16, 0.16, 0.14],
};
