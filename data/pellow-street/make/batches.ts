import type { Densities, Patches, StripBatch } from "../../../lib/control/strip.ts";
import type { Line } from "./lab.ts";

type Three = readonly [red: number, green: number, blue: number];

/** A batch as it is registered, and how far its strips truly lie from the aims this gives. */
export interface MadeBatch {
  readonly registered: StripBatch;
  /** Why a crossover is run: the printed correction is never quite right. */
  readonly hiddenShift: Readonly<Record<string, Three>>;
}

const film = {
  dMin: [0.26, 0.6, 0.84],
  ld: [0.46, 0.88, 1.14],
  hd: [1.3, 1.83, 2.12],
  dMax: [1.94, 2.49, 2.87],
  retainedSilver: [0.3, 0.77, 2.63],
} as const satisfies Readonly<Record<string, Three>>;

const paper = {
  dMin: [0.1, 0.11, 0.1],
  ld: [0.78, 0.8, 0.77],
  hd: [1.62, 1.66, 1.6],
  dMax: [2.46, 2.44, 2.28],
} as const satisfies Readonly<Record<string, Three>>;

/** The two batches of each line, the one used first first. */
export const madeBatches: Readonly<Record<Line, readonly [MadeBatch, MadeBatch]>> = {
  film: [
    batch("N-41", "colour-negative", "2026-04-20", film, {
      ld: [0, 0.01, 0],
      hd: [0.01, 0.01, 0],
    }),
    batch(
      "N-42",
      "colour-negative",
      "2026-06-29",
      moved(film, {
        dMin: [0.01, 0, 0.01],
        ld: [0.02, 0.03, -0.01],
        hd: [-0.02, 0.02, 0.03],
        dMax: [0.03, -0.02, 0.01],
        retainedSilver: [0, 0.01, 0.03],
      }),
      { ld: [-0.01, 0, 0.01], hd: [0, 0.01, 0], dMax: [-0.01, 0, 0] },
      { ld: [0.012, 0.008, 0.015], hd: [0.02, 0.013, 0.022] },
    ),
  ],
  paper: [
    batch("P-17", "colour-paper", "2026-05-04", paper, { ld: [0.01, 0, 0], hd: [0, 0, -0.01] }),
    batch(
      "P-18",
      "colour-paper",
      "2026-07-20",
      moved(paper, {
        ld: [-0.02, 0.01, 0.02],
        hd: [0.03, 0.02, -0.01],
        dMax: [0.02, 0.01, 0.03],
      }),
      { ld: [0, 0.01, -0.01], hd: [0.01, 0, 0] },
      { ld: [-0.01, -0.014, -0.008], hd: [-0.012, -0.018, -0.01] },
    ),
  ],
};

function batch(
  id: string,
  process: string,
  firstUsed: string,
  reference: Readonly<Record<string, Three>>,
  correction: Readonly<Record<string, Three>>,
  hiddenShift: Readonly<Record<string, Three>> = {},
): MadeBatch {
  const full = Object.fromEntries(
    Object.keys(reference).map((patch) => [patch, correction[patch] ?? ([0, 0, 0] as const)]),
  );
  const registered = {
    id,
    process,
    reference: named(reference),
    correction: named(full),
    firstUsed,
  };
  return { registered, hiddenShift };
}

function named(patches: Readonly<Record<string, Three>>): Patches {
  const entries = Object.entries(patches).map(([patch, [red, green, blue]]) => {
    const densities: Densities = { red, green, blue };
    return [patch, densities] as const;
  });
  return Object.fromEntries(entries);
}

function moved(
  patches: Readonly<Record<string, Three>>,
  by: Readonly<Record<string, Three>>,
): Readonly<Record<string, Three>> {
  const entries = Object.entries(patches).map(([patch, [red, green, blue]]) => {
    const [r, g, b] = by[patch] ?? [0, 0, 0];
    const cents = (value: number) => Math.round(value * 100) / 100;
    return [patch, [cents(red + r), cents(green + g), cents(blue + b)] as const] as const;
  });
  return Object.fromEntries(entries);
}
