import { seededRandom } from "../../../lib/numerics/index.ts";
import type { ProductionRow } from "../../../lib/records/index.ts";
import { weekday } from "./days.ts";
import { CONTAMINATION, STREAMS } from "./plan.ts";

type Share = readonly (readonly [format: string, part: number])[];

/** Sunday first: a short Sunday, a Monday of weekend films, a full Saturday. */
const WEEK = [0.35, 1.35, 1, 0.95, 0.95, 1.15, 1.25];
const ROLLS_A_DAY = 56;
const PRINTS_A_ROLL = 21;
const FILM: Share = [
  ["135-36", 0.6],
  ["135-24", 0.22],
  ["120", 0.18],
];
const PAPER: Share = [
  ["10x15cm", 0.86],
  ["13x18cm", 0.11],
  ["20x30cm", 0.03],
];

/** Rolls and prints of each format on each day; the season grows towards August. */
export function makeProduction(days: readonly string[]): readonly ProductionRow[] {
  const { normal } = seededRandom(STREAMS.production);
  return days.flatMap((date, at) => {
    const season = 0.88 + (0.3 * at) / days.length;
    const usual = ROLLS_A_DAY * (WEEK[weekday(date)] ?? 1) * season;
    const rolls = usual * (1 + 0.1 * normal());
    const prints = rolls * PRINTS_A_ROLL * (1 + 0.07 * normal());
    const morningLost = date === CONTAMINATION.day ? 0.55 : 1;
    const counted = (process: string, total: number, share: Share) =>
      share.map(([format, part]) => {
        const expected = total * part;
        const count = Math.max(0, Math.round(expected + 0.8 * Math.sqrt(expected) * normal()));
        return { date, process, format, count };
      });
    return [
      ...counted("colour-negative", rolls * morningLost, FILM),
      ...counted("colour-paper", prints, PAPER),
    ];
  });
}
