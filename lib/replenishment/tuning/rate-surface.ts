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
    const fits = stepSums(1 + error, moments, turnovers, centred);
    for (let m = 0; m < moments.length; m++) {
      const spread = fits.spread[m] ?? 0;
      const cross = fits.cross[m] ?? 0;
      rest[e * moments.length + m] = Math.max(
        0,
        total - 2 * amplitude * cross + amplitude * amplitude * spread,
      );
    }
  });
  return { grid, strips: n, restWithoutChange: total, rest };
}

/** Σ(g − ḡ)² and Σ(g − ḡ)z for every moment, with g = 1 − e^(−ρ(n − τ)) after it and 0 before. */
export interface StepSums {
  readonly spread: Float64Array;
  readonly cross: Float64Array;
}

/** @param z readings less their mean */
export function stepSums(
  pace: number,
  moments: readonly number[],
  turnovers: readonly number[],
  z: ArrayLike<number>,
): StepSums {
  const n = turnovers.length;
  const spread = new Float64Array(moments.length);
  const cross = new Float64Array(moments.length);
  // Sums over the strips from `next` on; exponentials are taken from that strip's turnovers.
  let next = n;
  let [count, once, twice, sumZ, sumZe] = [0, 0, 0, 0, 0];
  for (let m = moments.length - 1; m >= 0; m--) {
    const at = moments[m] ?? 0;
    while (next > 0 && (turnovers[next - 1] ?? 0) > at) {
      next -= 1;
      const here = turnovers[next] ?? 0;
      const decay = count === 0 ? 0 : Math.exp(-pace * ((turnovers[next + 1] ?? here) - here));
      const value = z[next] ?? 0;
      once = 1 + decay * once;
      twice = 1 + decay * decay * twice;
      sumZe = value + decay * sumZe;
      sumZ += value;
      count += 1;
    }
    if (count === 0) continue;
    const lead = Math.exp(-pace * ((turnovers[next] ?? 0) - at));
    const g = count - lead * once;
    const gg = count - 2 * lead * once + lead * lead * twice;
    const own = Math.max(0, gg - (g * g) / n);
    // Below this no strip shows the change.
    if (own < 1e-12) continue;
    spread[m] = own;
    cross[m] = sumZ - lead * sumZe;
  }
  return { spread, cross };
}
