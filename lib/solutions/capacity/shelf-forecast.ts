import { InputError } from "../../input/index.ts";
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
 * today = mixed · mL/L; use of a weekday = area · rate · mL/L / 1000. What is mixed for the week still
 * counts as there until film has used it; what fills a fresh tank is gone.
 *
 * @param given.kits parts per litre and rate of each replenisher
 * @param given.mixes from `batchesToMix`, of the same replenishers
 * @param given.shelf what was counted this morning, mL; a part that is not there counts as none
 * @param given.areaM2ByWeekday seven areas, Monday first, as `weekLoad` gives them
 * @param given.from the morning, `YYYY-MM-DD`
 * @param given.leadDays calendar days from order to delivery
 * @returns one row a part, in the order of the kits
 * @throws InputError for a kit without its mix, and as `stockForecast`
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
  const { from, leadDays } = given;
  return given.kits.flatMap((kit) => {
    const mix = given.mixes.find(({ name }) => name === kit.name);
    if (mix === undefined) {
      const advice = "write the row that batchesToMix gives for it";
      throw new InputError("shelfForecast", `mix of ${kit.name}`, undefined, advice);
    }
    return kit.parts.map(({ what, mlPerL }) => {
      const counted = given.shelf.find((each) => each.what === what)?.onShelfMl ?? 0;
      const shelfMl = requireVolumeOrNoneMl("shelfForecast", `onShelfMl of ${what}`, counted);
      const onShelfMl = Math.max(0, shelfMl - mix.tankL * mlPerL);
      const todayMl = mix.mixL * mlPerL;
      const use = (areaM2: number) => (areaM2 * kit.rateMlPerM2 * mlPerL) / 1000;
      const weekUseMl = given.areaM2ByWeekday.map(use);
      return {
        what,
        shelfL: shelfMl / 1000,
        todayL: todayMl / 1000,
        enoughToday: shelfMl >= todayMl * (1 - 1e-12),
        onShelfMl,
        weekUseMl,
        ...stockForecast({ onShelfMl, weekUseMl, from, leadDays }),
      };
    });
  });
}
