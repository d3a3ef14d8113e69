import { normalCdf } from "../../numerics/index.ts";

/** Readings farther out than this hardly ever come. */
const FARTHEST = 8.5;
const MAX_READINGS = 5000;
const SETTLED = 1e-11;

/** What one reading does to the pair, in cells: the upper sum goes up by `up`, the lower by `down`. */
interface PairStep {
  readonly up: Int32Array;
  readonly down: Int32Array;
  readonly probability: Float64Array;
}

/**
 * Long-run distribution of the upper sum of a two-sided CUSUM in control, given that neither side has
 * signalled; the lower sum has the same. The two sums share their readings, so both are followed: the
 * Markov chain over pairs of cells `width` wide, cell 0 holding the sums put back to 0.
 *
 * @returns probability of cell 0 … `cells`; their values are cell·width, width = 2h/(2·cells + 1)
 *
 * Source: D. Brook and D. A. Evans, Biometrika 59 (1972) 539–549 (the cells).
 */
export function settledCusumPair(k: number, h: number, cells: number): Float64Array {
  const width = (2 * h) / (2 * cells + 1);
  const step = pairStep(k, width);
  const side = cells + 1;
  let mass: Float64Array = new Float64Array(side * side);
  mass[0] = 1;
  let upper: Float64Array = new Float64Array(side);
  for (let t = 0; t < MAX_READINGS; t++) {
    const later = new Float64Array(side * side);
    for (let i = 0; i < side; i++) {
      for (let j = 0; j < side; j++) {
        const weight = mass[i * side + j] ?? 0;
        if (weight > 1e-18) spread(later, side, step, i, j, weight);
      }
    }
    const left = later.reduce((sum, each) => sum + each, 0);
    mass = later.map((each) => each / left);
    const now = new Float64Array(side);
    mass.forEach((each, at) => {
      const i = Math.floor(at / side);
      now[i] = (now[i] ?? 0) + each;
    });
    const change = now.reduce(
      (most, each, i) => Math.max(most, Math.abs(each - (upper[i] ?? 0))),
      0,
    );
    upper = now;
    if (change < SETTLED) break;
  }
  return upper;
}

function spread(
  into: Float64Array,
  side: number,
  { up, down, probability }: PairStep,
  i: number,
  j: number,
  weight: number,
): void {
  for (let s = 0; s < probability.length; s++) {
    const toUp = Math.max(0, i + (up[s] ?? 0));
    const toDown = Math.max(0, j + (down[s] ?? 0));
    if (toUp >= side || toDown >= side) continue;
    const at = toUp * side + toDown;
    into[at] = (into[at] ?? 0) + weight * (probability[s] ?? 0);
  }
}

/** The readings cut where either sum passes from one cell into the next. */
function pairStep(k: number, width: number): PairStep {
  const cuts = new Set<number>([-FARTHEST, FARTHEST]);
  for (let n = Math.ceil(-(FARTHEST + k) / width); n <= (FARTHEST + k) / width; n++) {
    const edge = k + (n + 0.5) * width;
    for (const cut of [edge, -edge]) if (Math.abs(cut) < FARTHEST) cuts.add(cut);
  }
  const sorted = [...cuts].sort((a, b) => a - b);
  const middles = sorted.slice(1).map((to, i) => (to + (sorted[i] ?? to)) / 2);
  return {
    up: Int32Array.from(middles, (x) => Math.round((x - k) / width)),
    down: Int32Array.from(middles, (x) => Math.round((-x - k) / width)),
    probability: Float64Array.from(
      middles,
      (_, i) => normalCdf(sorted[i + 1] ?? 0) - normalCdf(sorted[i] ?? 0),
    ),
  };
}
