import {
  closestWord,
  InputError,
  requireEntries,
  requireNumber,
  requireObject,
} from "../../input/index.ts";
import { requireVolumeOrNoneMl } from "../dilution/require-volume.ts";
import type { BatchesToMix, ReplenisherKit } from "./batches-to-mix.ts";
import { type StockForecast, stockForecast } from "./stock-forecast.ts";

/** One bottle of the shelf: what today takes of it, and how long it lasts. */
export interface ShelfForecast extends StockForecast {
  readonly what: string;
  readonly shelfL: number;
  /** What today's mixes take, L. */
  readonly todayL: number;
  /** Whether the shelf holds what today's mixes take. */
  readonly enoughToday: boolean;
  /** What counts on from today: the shelf less what fills fresh tanks, mL. */
  readonly onShelfMl: number;
  /** Use of each weekday, Monday first, mL. */
  readonly weekUseMl: readonly number[];
}

/**
 * The shelf of concentrates: whether it reaches for today's mixes, and until when at this week's load.
 *
 * today = Σ mixed · mL/L; use of a weekday = Σ area · rate · mL/L / 1000, over all kits that a bottle
 * serves. What is mixed for the week still counts as there until film has used it; what fills a fresh
 * tank is gone.
 *
 * @param given.kits parts per litre and rate of each replenisher
 * @param given.mixes from `batchesToMix`, of the same replenishers
 * @param given.shelf what was counted this morning, mL; a part that is not there counts as none
 * @param given.areaM2ByWeekday seven areas, Monday first, as `weekLoad` gives them
 * @param given.from the morning, `YYYY-MM-DD`
 * @param given.leadDays calendar days from order to delivery
 * @returns one row a part, in the order of the kits; a part of several kits stands once, with the use
 *   of all; one that does not reach for today is to be ordered now
 * @throws InputError for a kit without its mix, a bottle counted twice, and as `stockForecast`
 *
 * @example
 * const kits = [{ name: "fixer", rateMlPerM2: 800, parts: [{ what: "concentrate", mlPerL: 200 }] }]
 * const mixes = batchesToMix({ replenishers: kits, areaM2: 25, batchMl: 5000 })
 * shelfForecast({ kits, mixes, shelf: [{ what: "concentrate", onShelfMl: 6000 }], areaM2ByWeekday: [5, 5, 5, 5, 5, 0, 0], from: "2026-03-02", leadDays: 5 })[0]?.emptyOn // => "2026-03-11"
 *
 * Source: arithmetic.
 */
export function shelfForecast(given: {
  readonly kits: readonly Pick<ReplenisherKit, "name" | "rateMlPerM2" | "parts">[];
  readonly mixes: readonly BatchesToMix[];
  readonly shelf: readonly { readonly what: string; readonly onShelfMl: number }[];
  readonly areaM2ByWeekday: readonly number[];
  readonly from: string;
  readonly leadDays: number;
}): readonly ShelfForecast[] {
  requireObject("shelfForecast", "given", given, "an object with kits, mixes, shelf, …");
  requireEntries("shelfForecast", "areaM2ByWeekday", given.areaM2ByWeekday, "a list of numbers");
  requireEntries("shelfForecast", "shelf", given.shelf);
  requireEntries("shelfForecast", "mixes", given.mixes);
  requireEntries("shelfForecast", "kits", given.kits);
  const { from, leadDays } = given;
  const uses = given.kits.flatMap((kit) => usesOf(kit, given.mixes));
  return [...new Set(uses.map(({ what }) => what))].map((what) => {
    const own = uses.filter((use) => use.what === what);
    const sum = (key: "todayMl" | "tankMl" | "mlPerM2") =>
      own.reduce((total, use) => total + use[key], 0);
    const { counted, warnings } = countedOf(what, given.shelf);
    const shelfMl = requireVolumeOrNoneMl("shelfForecast", `onShelfMl of ${what}`, counted);
    const onShelfMl = Math.max(0, shelfMl - sum("tankMl"));
    const weekUseMl = given.areaM2ByWeekday.map((areaM2) => areaM2 * sum("mlPerM2"));
    const enoughToday = shelfMl >= sum("todayMl") * (1 - 1e-12);
    const forecast = stockForecast({ onShelfMl, weekUseMl, from, leadDays });
    return {
      what,
      shelfL: shelfMl / 1000,
      todayL: sum("todayMl") / 1000,
      enoughToday,
      onShelfMl,
      weekUseMl,
      ...forecast,
      orderNow: forecast.orderNow || !enoughToday,
      warnings: [
        ...warnings,
        ...(enoughToday ? [] : ["does not reach for today's mixes"]),
        ...forecast.warnings,
      ],
    };
  });
}

/** What one kit takes of each of its parts, mL. */
function usesOf(
  kit: Pick<ReplenisherKit, "name" | "rateMlPerM2" | "parts">,
  mixes: readonly BatchesToMix[],
) {
  const mix = mixes.find(({ name }) => name === kit.name);
  if (mix === undefined) {
    const advice = "write the row that batchesToMix gives for it";
    throw new InputError("shelfForecast", `mix of ${kit.name}`, undefined, advice);
  }
  requireNumber("shelfForecast", `mixL of ${kit.name}`, mix.mixL, { min: 0, unit: "L" });
  requireNumber("shelfForecast", `tankL of ${kit.name}`, mix.tankL, { min: 0, unit: "L" });
  return kit.parts.map(({ what, mlPerL }) => ({
    what,
    todayMl: mix.mixL * mlPerL,
    tankMl: mix.tankL * mlPerL,
    mlPerM2: (kit.rateMlPerM2 * mlPerL) / 1000,
  }));
}

/** The morning's count of a bottle; one that was not counted is none, and is said to be so. */
function countedOf(
  what: string,
  shelf: readonly { readonly what: string; readonly onShelfMl: number }[],
): { readonly counted: number; readonly warnings: readonly string[] } {
  const found = shelf.filter((each) => each.what === what);
  if (found.length > 1) {
    const advice = "write each bottle once, with all that is there";
    throw new InputError("shelfForecast", "shelf", what, advice);
  }
  if (found[0]) return { counted: found[0].onShelfMl, warnings: [] };
  const near = closestWord(
    what,
    shelf.map((each) => each.what),
  );
  const meant = near === undefined ? "" : ` (is "${near}" the same?)`;
  return { counted: 0, warnings: [`not counted on the shelf, taken as none${meant}`] };
}
