import { requireObject } from "../../input/index.ts";
import type { ContrastCurve } from "./contrast-curve.ts";

/** Lets a curve of contrast over time in. */
export function requireContrastCurve(where: string, curve: ContrastCurve): void {
  requireObject(where, "curve", curve, "an object with law, range, refuseBeyondFactor, …");
}
