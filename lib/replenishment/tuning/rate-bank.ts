import type { RateGrid, RateSurface } from "./rate-surface.ts";

/** Fits that are kept up to date strip by strip; the last strip takes as long as the first. */
export interface RateBank {
  readonly add: (turnovers: number, z: number) => void;
  readonly surface: () => RateSurface;
}

/**
 * A bank of recursive regressions in state-space form, one for every pair of error and moment: each
 * carries the share of its answer that is still to come, x ← x·e^(−ρΔn), and the sums of its regression.
 */
export function rateBank(grid: RateGrid): RateBank {
  const { errors, moments } = grid;
  const size = errors.length * moments.length;
  const toCome = new Float64Array(size).fill(1);
  const [g, gg, gz] = [new Float64Array(size), new Float64Array(size), new Float64Array(size)];
  let [count, sumZ, sumZz, last] = [0, 0, 0, Number.NEGATIVE_INFINITY];
  let origin = 0;
  return {
    add: (turnovers, reading) => {
      if (count === 0) origin = reading;
      const z = reading - origin;
      count += 1;
      sumZ += z;
      sumZz += z * z;
      errors.forEach((error, e) => {
        const pace = 1 + error;
        const decay = Math.exp(-pace * (turnovers - last));
        for (let m = 0; m < moments.length; m++) {
          const at = moments[m] ?? 0;
          if (at >= turnovers) break;
          const i = e * moments.length + m;
          const left = at < last ? (toCome[i] ?? 1) * decay : Math.exp(-pace * (turnovers - at));
          toCome[i] = left;
          const share = 1 - left;
          g[i] = (g[i] ?? 0) + share;
          gg[i] = (gg[i] ?? 0) + share * share;
          gz[i] = (gz[i] ?? 0) + share * z;
        }
      });
      last = turnovers;
    },
    surface: () => {
      const restWithoutChange = Math.max(0, sumZz - (sumZ * sumZ) / count);
      const rest = new Float64Array(size);
      errors.forEach((error, e) => {
        const amplitude = error / (1 + error);
        for (let i = e * moments.length; i < (e + 1) * moments.length; i++) {
          const sum = g[i] ?? 0;
          const spread = (gg[i] ?? 0) - (sum * sum) / count;
          const cross = (gz[i] ?? 0) - (sum * sumZ) / count;
          const visible = spread >= 1e-12;
          const change = visible ? amplitude * (amplitude * spread - 2 * cross) : 0;
          rest[i] = Math.max(0, restWithoutChange + change);
        }
      });
      return { grid, strips: count, restWithoutChange, rest };
    },
  };
}
