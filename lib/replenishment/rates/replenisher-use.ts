import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { type StockForecast, stockForecast } from "../../solutions/index.ts";
import { formatAreaM2 } from "../../units/index.ts";
import { requireVolume } from "../require-volume.ts";

/** A replenisher and what it costs. */
export interface ReplenisherRate {
  readonly name: string;
  /** mL/m², at least 0. */
  readonly rateMlPerM2: number;
  /** Price of a litre, ready to use, in any currency; at least 0. */
  readonly pricePerL?: number;
}

/** What an area takes of each replenisher. */
export interface ReplenisherUse {
  readonly areaM2: number;
  readonly lines: readonly {
    readonly name: string;
    readonly volumeMl: number;
    /** null without a price. */
    readonly cost: number | null;
  }[];
  /** Of everything priced; null if nothing is. */
  readonly cost: number | null;
  readonly costPerM2: number | null;
  /** Cost of one of each format asked for. */
  readonly costEach: readonly { readonly format: string; readonly cost: number | null }[];
  readonly unpriced: readonly string[];
}

/**
 * Replenisher that an area takes, and what it costs, in all and by format.
 *
 * V = a · r; cost = Σ V · price
 *
 * @param use.replenishers rates in mL/m² and perhaps prices
 * @param use.areaM2 area, m², at least 0
 * @param use.formats names in `photoFormats`, for the cost of one
 * @returns volumes in mL and costs in the price's currency
 * @throws InputError for a negative rate, price or area, or an unknown format
 *
 * @example
 * replenisherUse({ replenishers: [{ name: "developer", rateMlPerM2: 600, pricePerL: 2.5 }], areaM2: 20, formats: ["135-36"] }).cost // => 30
 *
 * Source: arithmetic; prices are the caller's.
 */
export function replenisherUse(use: {
  readonly replenishers: readonly ReplenisherRate[];
  readonly areaM2: number;
  readonly formats?: readonly string[];
}): ReplenisherUse {
  const where = "replenisherUse";
  requireObject(where, "use", use, "an object with replenishers and areaM2");
  if (use.formats !== undefined) requireEntries(where, "formats", use.formats, "a list of texts");
  requireEntries(where, "replenishers", use.replenishers);
  const area = requireNumber(where, "areaM2", use.areaM2, { min: 0, max: 1e9, unit: "m²" });
  const priced = use.replenishers.map(({ name, rateMlPerM2, pricePerL }) => {
    const rate = requireNumber(where, `rateMlPerM2 of ${name}`, rateMlPerM2, {
      min: 0,
      max: 1e7,
      unit: "mL/m²",
    });
    if (pricePerL === undefined) return { name, rate, perM2: null };
    const price = requireNumber(where, `pricePerL of ${name}`, pricePerL, { min: 0, max: 1e9 });
    return { name, rate, perM2: (rate * price) / 1000 };
  });
  const known = priced.filter(({ perM2 }) => perM2 !== null);
  const costPerM2 =
    known.length > 0 ? known.reduce((sum, { perM2 }) => sum + (perM2 ?? 0), 0) : null;
  return {
    areaM2: area,
    lines: priced.map(({ name, rate, perM2 }) => ({
      name,
      volumeMl: area * rate,
      cost: perM2 === null ? null : area * perM2,
    })),
    cost: costPerM2 === null ? null : area * costPerM2,
    costPerM2,
    costEach: (use.formats ?? []).map((format) => ({
      format,
      cost: costPerM2 === null ? null : costPerM2 * formatAreaM2(format),
    })),
    unpriced: priced.filter(({ perM2 }) => perM2 === null).map(({ name }) => name),
  };
}

/**
 * How long the replenisher on the shelf lasts at this week's load, and the last day to order.
 *
 * use of a weekday = area · r · share; then as `stockForecast`
 *
 * @param given.rateMlPerM2 replenishment rate, mL/m², at least 0
 * @param given.areaM2ByWeekday m² of each weekday, Monday first, seven numbers (see `weekLoad`)
 * @param given.onShelfMl on the shelf, mL, at least 0; of concentrate, if `share` is the concentrate's
 * @param given.share share of the ready replenisher that comes from the shelf, above 0, at most 1;
 *   default 1
 * @param given.from date `YYYY-MM-DD`
 * @param given.leadDays calendar days from order to delivery
 * @param given.reserveMl kept untouched, mL; default 0
 * @returns days left, dates, whether the order is due; see `stockForecast`
 * @throws InputError for a number out of range or not seven weekdays
 *
 * @example
 * replenisherForecast({ rateMlPerM2: 600, areaM2ByWeekday: [3, 3, 3, 3, 4, 0, 0], onShelfMl: 40000, from: "2026-03-02", leadDays: 5 }).emptyOn // => "2026-03-30"
 *
 * Source: arithmetic.
 */
export function replenisherForecast(given: {
  readonly rateMlPerM2: number;
  readonly areaM2ByWeekday: readonly number[];
  readonly onShelfMl: number;
  readonly share?: number;
  readonly from: string;
  readonly leadDays: number;
  readonly reserveMl?: number;
}): StockForecast {
  const where = "replenisherForecast";
  requireObject(where, "given", given, "an object with rateMlPerM2, areaM2ByWeekday, onShelfMl, …");
  const rate = requireNumber(where, "rateMlPerM2", given.rateMlPerM2, {
    min: 0,
    max: 1e7,
    unit: "mL/m²",
  });
  const onShelfMl = requireVolume(where, "onShelfMl", given.onShelfMl, {
    min: 0,
    max: 1e12,
    unit: "mL",
  });
  const share = requireNumber(where, "share", given.share ?? 1, { above: 0, max: 1 });
  const { areaM2ByWeekday: areas } = given;
  if (!Array.isArray(areas) || areas.length !== 7) {
    const advice = "write seven areas in m², Monday first, 0 for a day of rest";
    throw new InputError(where, "areaM2ByWeekday", areas, advice);
  }
  const weekUseMl = areas.map((area, i) => {
    const bounds = { min: 0, max: 1e7, unit: "m²" };
    return requireNumber(where, `areaM2ByWeekday[${i}]`, area, bounds) * rate * share;
  });
  return stockForecast({
    onShelfMl,
    weekUseMl,
    from: given.from,
    leadDays: given.leadDays,
    ...(given.reserveMl === undefined ? {} : { reserveMl: given.reserveMl }),
  });
}
