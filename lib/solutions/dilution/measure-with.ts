import { InputError, requireNumber } from "../../input/index.ts";
import { type Graduate, graduateFor } from "./graduate.ts";

/** A volume as a graduate can measure it. */
export interface MeasuredVolume {
  readonly wantedMl: number;
  /** The nearest division. */
  readonly measuredMl: number;
  /** measured − wanted, mL. */
  readonly errorMl: number;
  /** (measured − wanted) / wanted. */
  readonly relativeError: number;
  /** Largest error of the vessel for this volume, ± mL, all fills together. */
  readonly toleranceMl: number;
  readonly graduate: string;
  /** How many times the vessel is filled. */
  readonly fills: number;
  readonly warnings: readonly string[];
}

/** Below this share of its capacity a vessel's relative error grows past what strength needs. */
const SMALL_SHARE = 0.1;

/**
 * Rounds a volume to the graduate in use and states the error that makes.
 *
 * measured = division · round(volume / division); error = measured − wanted
 *
 * @param volumeMl volume wanted, mL, above 0, at most 1e9
 * @param vessel a name in `graduates`, or an object with capacity, division and tolerance
 * @returns the volume to read off, its error, the vessel's tolerance and how often to fill it
 * @throws InputError for a volume that is not positive, that rounds to nothing, or for an unknown vessel
 *
 * @example
 * measureWith(31.25, "cylinder-50-b").measuredMl // => 31
 * measureWith(31.25, "cylinder-50-b").relativeError // => -0.008
 *
 * Source: rounding; tolerances per vessel in data/solutions/graduates.json.
 */
export function measureWith(volumeMl: number, vessel: string | Graduate): MeasuredVolume {
  const where = "measureWith";
  const wantedMl = requireNumber(where, "volumeMl", volumeMl, {
    above: 0,
    max: 1e9,
    unit: "mL",
  });
  const used = graduateFor(where, vessel);
  const measuredMl = Number(
    (Math.round(wantedMl / used.divisionMl) * used.divisionMl).toPrecision(12),
  );
  if (measuredMl === 0) {
    const advice = `use a smaller vessel; ${used.name} reads to ${used.divisionMl} mL`;
    throw new InputError(where, "volumeMl", volumeMl, advice);
  }
  const fills = Math.ceil((measuredMl / used.capacityMl) * (1 - 1e-12));
  return {
    wantedMl,
    measuredMl,
    errorMl: measuredMl - wantedMl,
    relativeError: measuredMl / wantedMl - 1,
    toleranceMl: fills * used.toleranceMl,
    graduate: used.name,
    fills,
    warnings: warningsFor(measuredMl, fills, used),
  };
}

function warningsFor(measuredMl: number, fills: number, used: Graduate): string[] {
  const warnings: string[] = [];
  if (measuredMl < used.capacityMl * SMALL_SHARE) {
    warnings.push(
      `${measuredMl} mL is less than a tenth of the ${used.name}; a smaller one is closer`,
    );
  }
  if (fills > 1) {
    warnings.push(`the ${used.name} is filled ${fills} times; its error is counted each time`);
  }
  return warnings;
}
