import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { basePositions, excludedPositions, noBase } from "../charts/base-positions.ts";
import type { BasePeriod } from "../charts/chart-choices.ts";
import { readingDecimals } from "../strips/reading-decimals.ts";
import type { StripHistory } from "../strips/strip-history.ts";
import { type FaultComponent, limitHalfWidth } from "./fault-component.ts";
import { type StripCovariance, stripCovariance } from "./strip-covariance.ts";
import { stripVectors } from "./strip-vectors.ts";

/** What fault finding looks at: the last strips' deviations, and how strips vary by themselves. */
export interface FaultEvidence {
  readonly process: string;
  readonly components: readonly FaultComponent[];
  /** Time of each strip of the window, the latest last. */
  readonly takenAt: readonly string[];
  /** Deviations in density: one row for each strip, one column for each component. */
  readonly deviations: readonly (readonly number[])[];
  /** Covariance of one strip while nothing is wrong, density². */
  readonly noise: readonly (readonly number[])[];
  /** Correlation of a strip with the one before while nothing is wrong, 0 to below 1. */
  readonly lagOne: number;
  /** Variance by which the mean of an orderly process may have wandered, in variances of one strip. */
  readonly wander: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** What `faultEvidence` needs besides the strips. */
export interface FaultEvidenceInput extends StripHistory {
  /** A period in which nothing was wrong: noise and centre are taken from it. */
  readonly basePeriod: BasePeriod;
  /** Strips of the base period with a known cause, by local date or time. */
  readonly exclude?: readonly string[];
  /** Strips looked at, the latest of the process. Default 24. */
  readonly lastStrips?: number;
  /**
   * Variance by which the mean of an orderly process wanders from the base period to now, as a share
   * of one strip's variance. Default 0.1 (common practice, no source).
   */
  readonly wander?: number;
}

/**
 * Gathers what fault finding looks at from strips: deviations of the last strips from the base
 * period's mean in every parameter and colour, and the covariance of strips in the base period.
 *
 * No reading is taken to be surer than its rounding, to a hundredth or a thousandth as the strips are
 * read. Colour spread follows from the others and is left out. A patch that the latest strip lacks is left
 * out altogether; an earlier strip that lacks another is left out of the window.
 *
 * @param input strips with batches and specification (as `seriesOfStrips`), the base period (at least
 * 5 strips, 20 wanted), how many of the last strips to look at (1 to 60, default 24)
 * @returns deviations and noise in density, JSON-safe
 * @throws InputError for a base period with too few whole strips, no strip outside it, and as
 * `seriesOfStrips`
 *
 * @example
 * const grey = (d: number) => ({ red: d, green: d, blue: d });
 * const reference = { dMin: grey(0.1), ld: grey(0.8), hd: grey(1.6), dMax: grey(2.4) };
 * const batches = [{ id: "77", process: "colour-paper", reference, correction: {} }];
 * const { normal } = seededRandom(1);
 * const read = (d: number) => ({ red: d + 0.01 * normal(), green: d + 0.01 * normal(), blue: d + 0.01 * normal() });
 * const strips = Array.from({ length: 24 }, (_, day) => ({
 *   takenAt: `2026-08-${String(day + 1).padStart(2, "0")}T07:10`, process: "colour-paper", stripBatch: "77",
 *   operator: "A", patches: { dMin: read(0.1), ld: read(0.8), hd: read(1.6), dMax: read(2.4) },
 * }));
 * const base = { basePeriod: { from: "2026-08-01", to: "2026-08-21" }, lastStrips: 3 };
 * faultEvidence({ strips, batches, specification: colourPaperProcess, ...base }).takenAt.length // => 3
 */
export function faultEvidence(input: FaultEvidenceInput): FaultEvidence {
  const where = "faultEvidence";
  requireObject(where, "input", input, "an object with basePeriod, strips, batches, …");
  requireObject(where, "basePeriod", input.basePeriod, "an object");
  const last = requireNumber(where, "lastStrips", input.lastStrips ?? 24, {
    min: 1,
    max: 60,
    whole: true,
  });
  const share = requireNumber(where, "wander", input.wander ?? 0.1, { min: 0, max: 10 });
  const { vectors, keys, takenAt, calendar } = stripVectors(where, input);
  const period = basePositions(where, calendar, input.basePeriod);
  if (period === undefined) throw noBase(where, calendar, input.basePeriod);
  const { first, last: lastBase } = period;
  const excluded = new Set(excludedPositions(where, calendar, input.exclude));
  const after = vectors.length - 1 - lastBase;
  if (after < 1) {
    const advice = "write a base period that ends before the strips to be explained";
    throw new InputError(where, "strips after the base period", after, advice);
  }
  const newest = vectors.at(-1) ?? [];
  const kept = keys.map((_, j) => j).filter((j) => !Number.isNaN(newest[j]));
  const missing = keys.filter((_, j) => !kept.includes(j)).map(({ words }) => words);
  if (kept.length === 0) {
    throw new InputError(where, "latest strip", takenAt.at(-1), "it has no reading; read it again");
  }
  const whole = (row: readonly number[]) => kept.every((j) => !Number.isNaN(row[j]));
  const take = (row: readonly number[]) => kept.map((j) => row[j] ?? 0);
  const base = vectors
    .filter((row, i) => i >= first && i <= lastBase && !excluded.has(i) && whole(row))
    .map(take);
  const resolution = 10 ** -readingDecimals(input.strips, calendar.rows);
  const noise: StripCovariance = baseNoise(where, base, resolution);
  const constant = kept.filter((_, k) => base.every((row) => row[k] === base[0]?.[k]));
  const window = vectors
    .map((row, i) => ({ row, at: takenAt[i] ?? "" }))
    .slice(Math.max(lastBase + 1, vectors.length - last));
  const used = window.filter(({ row }) => whole(row));
  const components = kept.map((j, k) => {
    const { parameter, colour } = keys[j] ?? { parameter: undefined, colour: "red" as const };
    const sd = Math.sqrt(noise.covariance[k]?.[k] ?? 0);
    const limit = (parameter && limitHalfWidth(parameter)) ?? 3 * sd;
    return { parameter: parameter?.id ?? "", name: parameter?.name ?? "", colour, limit };
  });
  return {
    process: input.specification.id,
    components,
    takenAt: used.map(({ at }) => at),
    deviations: used.map(({ row }) => take(row).map((v, k) => v - (noise.mean[k] ?? 0))),
    noise: noise.covariance,
    lagOne: noise.lagOne,
    wander: share + 1 / noise.strips,
    assumptions: [
      "deviations are counted from the mean of the base period, in which nothing was wrong",
      `strips vary now as they did in the base period, and its mean wanders by ${share} of one strip's variance`,
    ],
    warnings: [
      ...noise.warnings,
      ...(constant.length > 0
        ? [
            `never varied in the base period, so that its noise is taken as that of reading to ${resolution}: ${constant.map((j) => keys[j]?.words).join("; ")}`,
          ]
        : []),
      ...(missing.length > 0
        ? [`not read on the latest strip, left out: ${missing.join("; ")}`]
        : []),
      ...(used.length < window.length
        ? [`${window.length - used.length} strips that lack a patch were left out`]
        : []),
    ],
  };
}

function baseNoise(
  where: string,
  base: readonly (readonly number[])[],
  resolution: number,
): StripCovariance {
  if (base.length < 5) {
    const advice = "write a base period with at least 5 whole strips, 20 if there are so many";
    throw new InputError(where, "strips in the base period", base.length, advice);
  }
  return stripCovariance(base, { resolution });
}
