import { limitCrossing, linearTrend } from "wetside/control";
import type { Computed } from "./run.ts";

interface Calibration {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly limit: number;
  readonly confidence: number;
  readonly of: "line" | "reading";
}

function crossing({ x, y, limit, confidence, of }: Calibration): number[] {
  const { time = Number.NaN, interval = [] } = limitCrossing(
    linearTrend(x, y, { confidence }),
    limit,
    of,
  );
  return [time, ...interval];
}

export const computed: Computed = {
  "thermostat-104": crossing,
  "thermostat-100": crossing,
  "chamber-400": crossing,
  "thermostat-104-full": crossing,
  "chamber-400-full": crossing,
};
