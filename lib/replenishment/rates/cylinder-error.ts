import { mean, sampleStandardDeviation } from "simple-statistics";
import { studentTQuantile } from "../../numerics/index.ts";
import type { PumpCounterReading } from "./pump-days.ts";

/** What the measuring cylinder says about a pump, against its setting. */
export interface CylinderError {
  readonly error: number;
  readonly errorInterval: readonly [number, number];
  readonly readings: number;
}

/** How pumps of a line scatter from check to check, as a fraction of the volume. */
export interface CylinderScatter {
  readonly sd: number;
  readonly degreesOfFreedom: number;
}

/** Volume a stroke over the setting, minus 1, of every check. */
export function cylinderErrors(
  readings: readonly PumpCounterReading[],
  within: (date: string) => boolean,
): readonly number[] {
  return readings.flatMap(({ cylinder, readAt, settingMlPerStroke }) =>
    cylinder !== undefined &&
    cylinder.strokes > 0 &&
    settingMlPerStroke > 0 &&
    within(readAt.slice(0, 10))
      ? [cylinder.volumeMl / cylinder.strokes / settingMlPerStroke - 1]
      : [],
  );
}

/** Pooled over groups of checks, each of one pump in one state. */
export function pooledScatter(groups: readonly (readonly number[])[]): CylinderScatter {
  const several = groups.filter((group) => group.length > 1);
  const degreesOfFreedom = several.reduce((sum, group) => sum + group.length - 1, 0);
  const squares = several.reduce(
    (sum, group) => sum + (group.length - 1) * sampleStandardDeviation([...group]) ** 2,
    0,
  );
  return { sd: degreesOfFreedom > 0 ? Math.sqrt(squares / degreesOfFreedom) : 0, degreesOfFreedom };
}

/** Mean error of some checks; one check alone has the scatter that the others show. */
export function cylinderError(
  errors: readonly number[],
  scatter: CylinderScatter,
  readToFraction: number,
): CylinderError | null {
  if (errors.length === 0) return null;
  const error = mean([...errors]);
  const u = Math.sqrt((scatter.sd ** 2 + readToFraction ** 2 / 12) / errors.length);
  const degrees = scatter.degreesOfFreedom > 0 ? scatter.degreesOfFreedom : 1e6;
  const half = u * studentTQuantile(0.975, degrees);
  return { error, errorInterval: [error - half, error + half], readings: errors.length };
}
