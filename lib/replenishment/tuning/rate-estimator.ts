import { requireNumber } from "../../input/index.ts";
import {
  addStrip,
  emptySums,
  type MomentFit,
  momentFit,
  type ReadingSums,
  type ResponseSums,
} from "./response-sums.ts";

/** What the strips so far say about a step in delivered rate: one fit for every moment it may have come. */
export interface RateProfile {
  readonly strips: number;
  /** Residual sum of squares without any change. */
  readonly restWithoutChange: number;
  /** Fits by moment of change, in ascending order. */
  readonly moments: readonly MomentFit[];
}

/** A fit that is kept up to date strip by strip. */
export interface RateEstimator {
  /** Adds one strip: its turnovers and its weighted deviation z. The last takes as long as the first. */
  readonly add: (turnovers: number, z: number) => void;
  readonly profile: () => RateProfile;
}

/**
 * A bank of recursive regressions, one for each moment of change that is considered: the tank's
 * answer to a step, dx/dn = ε − x, in state-space form with unknown baseline, ε and moment.
 */
export function rateEstimator(moments: readonly number[]): RateEstimator {
  const bank: ResponseSums[] = moments.map(emptySums);
  const readings: ReadingSums = { count: 0, z: 0, zz: 0 };
  let origin = 0;
  return {
    add: (turnovers, z) => {
      requireNumber("rateEstimator", "turnovers", turnovers, { min: 0 });
      requireNumber("rateEstimator", "z", z);
      if (readings.count === 0) origin = z;
      const value = z - origin;
      readings.count += 1;
      readings.z += value;
      readings.zz += value * value;
      for (const sums of bank) addStrip(sums, turnovers, value);
    },
    profile: () => ({
      strips: readings.count,
      restWithoutChange: readings.zz - (readings.z * readings.z) / readings.count,
      moments: bank.map((sums) => {
        const fit = momentFit(sums, readings);
        return { ...fit, baseline: fit.baseline + origin };
      }),
    }),
  };
}

/** Moments from `first` up to before `last`, at a fixed spacing, so that a longer series only adds some. */
export function momentGrid(first: number, last: number, spacing: number): number[] {
  const count = Math.max(1, Math.ceil((last - first) / spacing - 1e-9));
  return Array.from({ length: count }, (_, i) => first + i * spacing);
}
