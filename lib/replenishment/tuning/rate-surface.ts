/** Errors of the rate and moments of change that are tried, both rising. */
export interface RateGrid {
  readonly errors: readonly number[];
  readonly moments: readonly number[];
}

/** How well every pair of error and moment fits: residual sums of squares, baseline fitted. */
export interface RateSurface {
  readonly grid: RateGrid;
  readonly strips: number;
  /** Without any change. */
  readonly restWithoutChange: number;
  /** By error, then moment: rest[e * moments.length + m]. */
  readonly rest: Float64Array;
}

/** A pump delivers between nothing and double; −1 itself would never settle. */
export const LOWEST_ERROR = -0.98;
export const HIGHEST_ERROR = 1;

/** Evenly spaced numbers, both ends included. */
export function evenlySpaced(first: number, last: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => first + (i * (last - first)) / (count - 1));
}

/** Moments from `first` up to before `last`, so that a longer series only adds some. */
export function momentGrid(first: number, last: number, spacing: number): number[] {
  const count = Math.max(1, Math.ceil((last - first) / spacing - 1e-9));
  return Array.from({ length: count }, (_, i) => first + i * spacing);
}

/**
 * Fits of all pairs at once. The answer to a change at τ is 1 − e^(−ρ(n − τ)), ρ = 1 + ε, so sums over
 * the strips after τ follow from those after the next strip by one factor, whatever τ: the cost is
 * errors × (strips + moments), not errors × strips × moments.
 */
export function rateSurface(
  grid: RateGrid,
  turnovers: readonly number[],
  z: readonly number[],
): RateSurface {
  const { errors, moments } = grid;
  const n = turnovers.length;
  const mean = z.reduce((sum, each) => sum + each, 0) / n;
  const centred = z.map((each) => each - mean);
  const total = centred.reduce((sum, each) => sum + each * each, 0);
  const rest = new Float64Array(errors.length * moments.length);
  errors.forEach((error, e) => {
    const amplitude = error / (1 + error);
    const design = stepDesign(1 + error, moments, turnovers);
    const crosses = stepCross(design, centred);
    for (let m = 0; m < moments.length; m++) {
      const spread = design.spread[m] ?? 0;
      const cross = crosses[m] ?? 0;
      rest[e * moments.length + m] = Math.max(
        0,
        total - 2 * amplitude * cross + amplitude * amplitude * spread,
      );
    }
  });
  return { grid, strips: n, restWithoutChange: total, rest };
}

/** What the strips' turnovers alone say of a step at every moment: made once, used for many series. */
export interface StepDesign {
  /** Σ(g − ḡ)², with g = 1 − e^(−ρ(n − τ)) after the moment τ and 0 before; 0 where no strip shows it. */
  readonly spread: Float64Array;
  /** First strip after the moment. */
  readonly next: Int32Array;
  /** e^(−ρ·turnovers) from the moment to that strip. */
  readonly lead: Float64Array;
  /** e^(−ρ·turnovers) from each strip to the one after it. */
  readonly decay: Float64Array;
}

/** Below this spread no strip shows the change. */
const LEAST_SPREAD = 1e-12;

export function stepDesign(
  pace: number,
  moments: readonly number[],
  turnovers: readonly number[],
): StepDesign {
  const n = turnovers.length;
  const decay = new Float64Array(n);
  const spread = new Float64Array(moments.length);
  const next = new Int32Array(moments.length).fill(n);
  const lead = new Float64Array(moments.length);
  // Sums over the strips from `first` on; exponentials are taken from that strip's turnovers.
  let first = n;
  let [once, twice] = [0, 0];
  for (let m = moments.length - 1; m >= 0; m--) {
    const at = moments[m] ?? 0;
    while (first > 0 && (turnovers[first - 1] ?? 0) > at) {
      first -= 1;
      const here = turnovers[first] ?? 0;
      const step = first === n - 1 ? 0 : Math.exp(-pace * ((turnovers[first + 1] ?? here) - here));
      decay[first] = step;
      once = 1 + step * once;
      twice = 1 + step * step * twice;
    }
    if (first === n) continue;
    const toFirst = Math.exp(-pace * ((turnovers[first] ?? 0) - at));
    const g = n - first - toFirst * once;
    const gg = n - first - 2 * toFirst * once + toFirst * toFirst * twice;
    const own = gg - (g * g) / n;
    if (own < LEAST_SPREAD) continue;
    spread[m] = own;
    next[m] = first;
    lead[m] = toFirst;
  }
  return { spread, next, lead, decay };
}

/**
 * Σ(g − ḡ)z for every moment of a design.
 *
 * @param z readings less their mean
 */
export function stepCross({ next, lead, decay }: StepDesign, z: ArrayLike<number>): Float64Array {
  const n = decay.length;
  const cross = new Float64Array(next.length);
  let first = n;
  let [sum, decayed] = [0, 0];
  for (let m = next.length - 1; m >= 0; m--) {
    const until = next[m] ?? n;
    while (first > until) {
      first -= 1;
      const value = z[first] ?? 0;
      sum += value;
      decayed = value + (decay[first] ?? 0) * decayed;
    }
    if (until < n) cross[m] = sum - (lead[m] ?? 0) * decayed;
  }
  return cross;
}
