import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";

/** A sum of money a month with its interval. */
export interface MonthlyCost {
  readonly perMonth: number;
  readonly interval: readonly [number, number];
}

/** What a wrong rate costs a month; a saving is negative. Money in the currency of the prices. */
export interface RateCost {
  /** Replenisher given beyond what was wanted; negative when too little is given. */
  readonly replenisher: MonthlyCost;
  /** Pieces made again; null if nothing is known of them. */
  readonly remakes: MonthlyCost | null;
  readonly litresPerMonth: number;
  readonly assumptions: readonly string[];
}

const DAYS_PER_MONTH = 365.25 / 12;

/**
 * What an error of the delivered rate costs in a month: replenisher given in excess (or saved), and
 * pieces made again.
 *
 * replenisher = ε · rate · area · price; remakes = Δshare · pieces · price
 *
 * @param given.rateMlPerM2 wanted rate, mL/m²; given.error with given.errorInterval as fractions;
 *   given.areaM2PerDay; given.pricePerL of ready replenisher
 * @param given.remakes change of the share made again (see `shareDifference`) with its interval, pieces a
 *   day, cost of one
 * @returns money a month with intervals
 * @throws InputError for a number out of range, or an interval the wrong way round
 *
 * @example
 * rateCost({ rateMlPerM2: 600, error: -0.16, errorInterval: [-0.18, -0.14], areaM2PerDay: 2.5, pricePerL: 3 }).replenisher.perMonth // => -21.92
 *
 * Source: arithmetic; prices are the caller's.
 */
export function rateCost(given: {
  readonly rateMlPerM2: number;
  readonly error: number;
  readonly errorInterval: readonly [number, number];
  readonly areaM2PerDay: number;
  readonly pricePerL: number;
  readonly remakes?: {
    readonly difference: number;
    readonly interval: readonly [number, number];
    readonly piecesPerDay: number;
    readonly costEach: number;
  };
}): RateCost {
  const where = "rateCost";
  requireObject(where, "given", given, "an object with rateMlPerM2, error, errorInterval, …");
  requireEntries(where, "errorInterval", given.errorInterval, "a list of numbers");
  const rate = requireNumber(where, "rateMlPerM2", given.rateMlPerM2, { above: 0, max: 1e6 });
  const area = requireNumber(where, "areaM2PerDay", given.areaM2PerDay, { min: 0, max: 1e6 });
  const price = requireNumber(where, "pricePerL", given.pricePerL, { min: 0, max: 1e6 });
  const litres = (rate / 1000) * area * DAYS_PER_MONTH;
  const { remakes } = given;
  const money = (of: string, middle: number, ends: readonly [number, number], unit: number) => {
    requireNumber(where, of, middle, { min: -1, max: 2 });
    if (!(ends[0] <= ends[1])) {
      throw new InputError(where, `interval of ${of}`, ends, "write the lower end first");
    }
    return { perMonth: middle * unit, interval: [ends[0] * unit, ends[1] * unit] as const };
  };
  return {
    replenisher: money("error", given.error, given.errorInterval, litres * price),
    remakes:
      remakes === undefined
        ? null
        : money(
            "remakes.difference",
            remakes.difference,
            remakes.interval,
            requireNumber(where, "remakes.piecesPerDay", remakes.piecesPerDay, { min: 0 }) *
              requireNumber(where, "remakes.costEach", remakes.costEach, { min: 0 }) *
              DAYS_PER_MONTH,
          ),
    litresPerMonth: litres,
    assumptions: [
      "The load stays as it was over the last four weeks.",
      "All of the change in remakes is put on the account of the rate; other causes share it.",
    ],
  };
}
