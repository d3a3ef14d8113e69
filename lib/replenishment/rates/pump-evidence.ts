import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import {
  type CylinderError,
  cylinderError,
  cylinderErrors,
  pooledScatter,
} from "./cylinder-error.ts";
import { type DeliveredError, deliveredError } from "./delivered-error.ts";
import { deliveredRates } from "./delivered-rates.ts";
import type { PumpCounterReading } from "./pump-days.ts";

/** What one pump's own log says about it, before and since a day. */
export interface PumpEvidence {
  readonly pump: string;
  /** null where fewer than three evenings have both volumes. */
  readonly before: DeliveredError | null;
  readonly since: DeliveredError | null;
  /**
   * From the cylinder checks of each span, null where there was none. How checks scatter is pooled over
   * all pumps, so that a single check has an interval, too.
   */
  readonly cylinderBefore: CylinderError | null;
  readonly cylinderSince: CylinderError | null;
  readonly finding:
    | "delivers less than it is set to"
    | "delivers more than it is set to"
    | "delivers what it is set to"
    | "not measured since";
}

/** One pump with its readings, and the area by day of the material that it replenishes for. */
export interface PumpOfLine {
  readonly pump: string;
  readonly readings: readonly PumpCounterReading[];
  readonly days: readonly { readonly date: string; readonly areaM2: number }[];
}

/**
 * What the pump logs say before and since the day on which the strips began to tell of another rate:
 * by the level of the replenisher tank, and by the measuring cylinder. A pump is called off only where
 * its interval leaves out 0 and the error is worth the walk.
 *
 * @param pumps each with the readings of one pump and the area by day
 * @param options.since the day, `YYYY-MM-DD`; options.worthTheWalk smallest error called off, as a
 *   fraction, default 0.03; options.divisionMl what the cylinder is read to, default 1
 * @returns one entry a pump, in the order given
 * @throws InputError for no pump, or a pump with fewer than two readings
 *
 * @example
 * const readings = [0, 1, 2, 3, 4, 5, 6].map((i) => ({ readAt: `2026-03-0${i + 1}T18:00`, counterStrokes: 300 * i, settingMlPerStroke: 5, deliveredMl: i > 3 ? 1260 : 1500 }));
 * const days = [2, 3, 4, 5, 6, 7].map((d) => ({ date: `2026-03-0${d}`, areaM2: 2.5 }));
 * pumpEvidence([{ pump: "film-developer", readings, days }], { since: "2026-03-05" })[0].finding // => "delivers less than it is set to"
 *
 * Source: as `deliveredError`; cylinder: JCGM 100:2008, 4.2.4 (pooled estimate) and 4.3.7 (division).
 */
export function pumpEvidence(
  pumps: readonly PumpOfLine[],
  options: { readonly since: string; readonly worthTheWalk?: number; readonly divisionMl?: number },
): readonly PumpEvidence[] {
  const where = "pumpEvidence";
  requireEntries(where, "pumps", pumps);
  requireObject(where, "options", options, "an object with since");
  if (pumps.length === 0) throw new InputError(where, "pumps", "none", "write at least one pump");
  const { since, worthTheWalk = 0.03, divisionMl = 1 } = options;
  const scatter = pooledScatter(
    pumps.flatMap(({ readings }) => [
      cylinderErrors(readings, (date) => date < since),
      cylinderErrors(readings, (date) => date >= since),
    ]),
  );
  return pumps.map(({ pump, readings, days }) => {
    const { intervals } = deliveredRates({ readings, days });
    const errorOf = (span: { readonly from?: string; readonly to?: string }) => {
      const measured = intervals.filter(
        (each) =>
          each.setMl !== null &&
          each.deliveredMl !== null &&
          each.from >= (span.from ?? "") &&
          each.to <= (span.to ?? "9999"),
      );
      return measured.length < 3 ? null : deliveredError(measured);
    };
    const calibrated = (within: (date: string) => boolean) => {
      const full = readings.find(({ cylinder }) => cylinder !== undefined)?.cylinder?.volumeMl ?? 0;
      const readTo = full > 0 ? divisionMl / full : 0;
      return cylinderError(cylinderErrors(readings, within), scatter, readTo);
    };
    const dayBefore = intervals.filter(({ to }) => to < since).at(-1)?.to ?? "0000";
    const result = {
      pump,
      before: errorOf({ to: dayBefore }),
      since: errorOf({ from: since }),
      cylinderBefore: calibrated((date) => date < since),
      cylinderSince: calibrated((date) => date >= since),
    };
    return { ...result, finding: findingOf(result.since, worthTheWalk) };
  });
}

function findingOf(since: DeliveredError | null, worth: number): PumpEvidence["finding"] {
  if (since === null) return "not measured since";
  if (since.errorInterval[1] < 0 && since.error <= -worth) return "delivers less than it is set to";
  if (since.errorInterval[0] > 0 && since.error >= worth) return "delivers more than it is set to";
  return "delivers what it is set to";
}
