import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import {
  mixSolutions,
  type SolutionComposition,
  type SolutionSource,
  solutionComposition,
} from "./solution-composition.ts";

/** A bath into which film carries the bath before it. */
export interface CarryInBath {
  /** The fresh bath. */
  readonly bath: SolutionSource;
  readonly bathVolumeMl: number;
  /** What the film carries in. */
  readonly carriedIn: SolutionSource;
  /**
   * mL of it per m² of film. Published figures run from 19 (good squeegees) over 70 (drained by
   * hand) to 390 (not drained), so there is no default.
   */
  readonly carryInMlPerM2: number;
  /** mL of the bath that the film takes out again; as much as it carries in if left out. */
  readonly carryOutMlPerM2?: number;
}

/** A bath after an area of film has passed through it. */
export interface BathAfterCarryIn {
  readonly areaM2: number;
  readonly volumeMl: number;
  /** Part of the bath that is now carried-in solution, 0 to 1. */
  readonly carriedInShare: number;
  readonly composition: SolutionComposition;
}

/**
 * Composition of a bath after an area of film has carried another solution into it.
 *
 * V dc/dA = w_i (c_i − c), V = V₀ + (w_i − w_o) A; so the share of the bath that is carried-in
 * solution is 1 − exp(−w_i A/V₀) for w_i = w_o, else 1 − (V/V₀)^(−w_i/(w_i − w_o)).
 *
 * @param options bath and what is carried in, volume in mL, carry-in and carry-out in mL/m²
 * @param areaM2 film area, at least 0; both sides of a sheet are one area, as the carry-over is stated
 * @returns volume, share and composition
 * @throws InputError for negative numbers, or an area after which the tank would be empty
 *
 * @example
 * bathAfterCarryIn({ bath: pureWater, bathVolumeMl: 1000, carriedIn: pureWater, carryInMlPerM2: 70 }, 1).carriedInShare // => 0.0676
 *
 * Source: mass balance of a stirred tank.
 */
export function bathAfterCarryIn(options: CarryInBath, areaM2: number): BathAfterCarryIn {
  const where = "bathAfterCarryIn";
  requireObject(where, "options", options, "an object with bath, bathVolumeMl, carriedIn, …");
  const area = requireNumber(where, "areaM2", areaM2, { min: 0, unit: "m²" });
  const start = requireNumber(where, "bathVolumeMl", options.bathVolumeMl, {
    above: 0,
    unit: "mL",
  });
  const bounds = { min: 0, unit: "mL/m²" };
  const inward = requireNumber(where, "carryInMlPerM2", options.carryInMlPerM2, bounds);
  const outward = requireNumber(
    where,
    "carryOutMlPerM2",
    options.carryOutMlPerM2 ?? inward,
    bounds,
  );
  const volume = start + (inward - outward) * area;
  if (!(volume > 0)) {
    const most = (start / (outward - inward)).toFixed(2);
    const advice = `the tank is empty after ${most} m², as more is carried out than in`;
    throw new InputError(where, "areaM2", area, advice);
  }
  const share = carriedInShare(area, start, inward, outward);
  return {
    areaM2: area,
    volumeMl: volume,
    carriedInShare: share,
    composition: mixSolutions(
      solutionComposition(options.bath),
      solutionComposition(options.carriedIn),
      share,
    ),
  };
}

function carriedInShare(area: number, start: number, inward: number, outward: number): number {
  const growth = ((inward - outward) * area) / start;
  // ln(V/V₀)/(w_i − w_o) tends to A/V₀ as the two become equal; log1p keeps its digits near there.
  const perInward =
    Math.abs(growth) < 1e-12 ? area / start : Math.log1p(growth) / (inward - outward);
  return Math.min(1, Math.max(0, -Math.expm1(-inward * perInward)));
}
