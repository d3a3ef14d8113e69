import { InputError, requireNumber } from "../../input/index.ts";
import { findRoot } from "../../numerics/index.ts";
import type { ContrastCurve } from "./contrast-curve.ts";
import { requireTimeInReach } from "./time-for-contrast.ts";

/** What error is allowed: of the time's effect, of contrast, or of a density. */
export type AllowedError =
  | { readonly timePercent: number }
  | {
      readonly contrast: number;
      readonly curve: ContrastCurve;
      readonly timeMin: number;
    }
  | {
      readonly density: number;
      readonly logExposureAboveThreshold: number;
      readonly curve: ContrastCurve;
      readonly timeMin: number;
    };

/** Least and most dose, as multiples of the right one; missing where contrast runs into a bound. */
export function allowedDoses(
  where: string,
  allowed: AllowedError,
): {
  readonly least?: number;
  readonly most?: number;
} {
  if ("timePercent" in allowed) {
    const bounds = { above: 0, below: 100, unit: "%" };
    const p = requireNumber(where, "allowed.timePercent", allowed.timePercent, bounds) / 100;
    return { least: 1 - p, most: 1 + p };
  }
  const error = allowedContrast(where, allowed);
  const { curve } = allowed;
  if (curve === undefined) {
    const advice = "write the contrast curve that the error belongs to";
    throw new InputError(where, "allowed.curve", curve, advice);
  }
  const time = requireTimeInReach(where, "allowed.timeMin", allowed.timeMin, curve);
  const contrast = curve.contrastAt(time);
  const longest = 1000 * time;
  const solve = (target: number) => {
    const excess = (t: number) => curve.contrastAt(t) - target;
    if (target <= 0 || excess(longest) <= 0) return undefined;
    return findRoot(excess, { lower: time / 1e6, upper: longest }) / time;
  };
  const least = solve(contrast - error);
  const most = solve(contrast + error);
  return {
    ...(least === undefined ? {} : { least }),
    ...(most === undefined ? {} : { most }),
  };
}

function allowedContrast(where: string, allowed: Exclude<AllowedError, { timePercent: number }>) {
  if ("contrast" in allowed) {
    return requireNumber(where, "allowed.contrast", allowed.contrast, { above: 0 });
  }
  if (!("density" in allowed)) {
    const advice = "write timePercent, contrast or density";
    throw new InputError(where, "allowed", allowed, advice);
  }
  const density = requireNumber(where, "allowed.density", allowed.density, { above: 0 });
  const bounds = { above: 0, max: 4 };
  const above = requireNumber(
    where,
    "allowed.logExposureAboveThreshold",
    allowed.logExposureAboveThreshold,
    bounds,
  );
  return density / above;
}
