import { requireNumber, requireObject, requireOneOf } from "../../input/index.ts";
import { upperCusumKernel } from "./cusum-kernel.ts";
import { settledCusumPair } from "./cusum-pair.ts";
import { kernelReadingsFrom, kernelRunLength } from "./kernel-run-length.ts";
import type { AverageRunLength } from "./run-length.ts";
import { computable } from "./survival-operator.ts";

/** A tabular CUSUM of standardised readings. */
export interface CusumDesign {
  /** Reference value (allowance) k in standard deviations, 0 to 5; half the shift worth catching. */
  readonly referenceValue: number;
  /** Decision interval h in standard deviations, 0.1 to 40. */
  readonly decisionInterval: number;
}

/** What the run length is wanted for. */
export interface CusumRunLengthOptions {
  /** Shift of the mean in standard deviations of a reading, −10 to 10; default 0, in control. */
  readonly shift?: number;
  /** `"two-sided"` (default) or `"upper"`. */
  readonly sides?: "two-sided" | "upper";
  /** Start of each sum as a fraction of h, 0 to 1; default 0. 0.5 is the usual fast initial response. */
  readonly headStart?: number;
  /** Whether the steady state of two sides is wanted too; it takes some 0.1 s. h up to 15. Default false. */
  readonly steadyState?: boolean;
}

/**
 * Average run length of a tabular CUSUM, S = max(0, S + X − k), that signals when S > h.
 *
 * Solves N(s) = 1 + N(0)·Φ(k − s − shift) + ∫ N(y)·φ(y + k − s − shift) dy by Gauss–Legendre
 * collocation; good to about ten digits. Two sides are put together exactly from one-sided run
 * lengths. The two sums share their readings, so for their steady state both are followed together on
 * two grids of cells, whose difference takes the error of the cells away; good to some six digits.
 * Readings are independent and normal with known mean and standard deviation.
 *
 * @param design `referenceValue` k and `decisionInterval` h
 * @param options `shift`, `sides`, `headStart`, `steadyState`
 * @returns `zeroState` in readings, and `steadyState` for one side, or for two sides if it is asked for
 * @throws InputError if an argument is out of range or the run length is beyond double precision
 *
 * @example
 * cusumRunLength({ referenceValue: 0.5, decisionInterval: 5 }).zeroState // => 465.443506
 *
 * Source: D. Brook and D. A. Evans, Biometrika 59 (1972) 539–549; J. M. Lucas and R. B. Crosier,
 * Technometrics 24 (1982) 199–205 (head start, two sides).
 */
export function cusumRunLength(
  design: CusumDesign,
  options: CusumRunLengthOptions = {},
): Pick<AverageRunLength, "zeroState"> & Partial<AverageRunLength> {
  const where = "cusumRunLength";
  requireObject(where, "design", design, "an object with referenceValue and decisionInterval");
  const k = requireNumber(where, "referenceValue", design.referenceValue, { min: 0, max: 5 });
  const h = requireNumber(where, "decisionInterval", design.decisionInterval, {
    min: 0.1,
    max: 40,
  });
  const shift = requireNumber(where, "shift", options.shift ?? 0, { min: -10, max: 10 });
  const sides = requireOneOf(where, "sides", options.sides ?? "two-sided", ["two-sided", "upper"]);
  const headStart = requireNumber(where, "headStart", options.headStart ?? 0, { min: 0, max: 1 });
  const kernel = upperCusumKernel(k, h);
  if (sides === "upper") return kernelRunLength(where, kernel, shift, headStart * h);
  const up = kernelReadingsFrom(where, kernel, shift);
  const down = kernelReadingsFrom(where, kernel, -shift);
  const start = headStart * h;
  // The side that hardly ever signals counts only in proportion, so its size may be too long.
  const [up0, down0] = [up(0), down(0)];
  const both = (up(start) * down0 + down(start) * up0 - up0 * down0) / (up0 + down0);
  const zeroState = computable(where, both);
  if (options.steadyState !== true) return { zeroState };
  requireNumber(where, "decisionInterval", h, {
    max: 15,
    hint: "for the steady state of two sides",
  });
  const settled = (cells: number) => {
    const width = (2 * h) / (2 * cells + 1);
    const upper = settledCusumPair(k, h, cells);
    const side = (from: (start: number) => number) =>
      upper.reduce((sum, share, i) => sum + share * from(i * width), 0);
    return (side(up) * down0 + side(down) * up0 - up0 * down0) / (up0 + down0);
  };
  const coarse = Math.max(20, Math.ceil(4 * h));
  const fine = Math.ceil(1.5 * coarse);
  const finer = ((2 * fine + 1) / (2 * coarse + 1)) ** 2;
  const steadyState = (finer * settled(fine) - settled(coarse)) / (finer - 1);
  return { zeroState, steadyState: computable(where, steadyState) };
}
