import type { Densities, Patches } from "../../../lib/control/index.ts";
import type { SimulatedBatch } from "../../../lib/simulate/index.ts";
import { CROSSOVERS } from "./plan.ts";

type Three = readonly [red: number, green: number, blue: number];

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

/**
 * The batches of each line, in order. The printed correction is never quite right, which is why a
 * crossover is run: the last argument is how far a batch's strips truly lie off the aims it gives.
 */
export const batches: Readonly<Record<"film" | "paper", readonly SimulatedBatch[]>> = {
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

const [firstOfFilm] = batches.film;

/** The film line's batch before these, in use during the step test of the winter, and the change from it. */
export const batchesOfStepTest: readonly SimulatedBatch[] = [
  batch(
    "N-40",
    "colour-negative",
    "2026-01-12",
    moved(film, { ld: [-0.01, 0.02, 0.01], hd: [0.02, -0.01, -0.02], dMax: [0.01, 0.02, -0.03] }),
    { ld: [0, 0, 0.01], hd: [0, 0.01, 0] },
  ),
  ...(firstOfFilm === undefined ? [] : [{ ...firstOfFilm, pairedDays: 5 }]),
];

function batch(
  id: string,
  process: string,
  firstUsed: string,
  reference: Readonly<Record<string, Three>>,
  correction: Readonly<Record<string, Three>>,
  aimsOff?: Readonly<Record<string, Three>>,
): SimulatedBatch {
  const full = Object.fromEntries(
    Object.keys(reference).map((patch) => [patch, correction[patch] ?? ([0, 0, 0] as const)]),
  );
  return {
    id,
    process,
    reference: named(reference),
    correction: named(full),
    firstUsed,
    ...(aimsOff === undefined
      ? {}
      : { aimsOff: named(aimsOff), pairedDays: CROSSOVERS[lineOf(process)].length }),
  };
}

function lineOf(process: string): "film" | "paper" {
  return process === "colour-negative" ? "film" : "paper";
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
