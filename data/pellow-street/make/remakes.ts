import { seededRandom } from "../../../lib/numerics/index.ts";
import type { ProductionRow, RemakesDay } from "../../../lib/records/index.ts";
import { HEATER_FAULT, PUMP_FAULT, STREAMS } from "./plan.ts";

/** Share of prints made again for each reason on an ordinary day. */
const USUAL = { tooBright: 0.008, tooDim: 0.009, unsharp: 0.004, colour: 0.007, marks: 0.005 };
/** Days differ by more than chance alone, as they do where people judge prints. */
const DAY_SD = 0.12;

/** Remakes by reason; a warm paper developer makes dim prints, a weak film developer some. */
export function makeRemakes(
  days: readonly string[],
  production: readonly ProductionRow[],
): readonly RemakesDay[] {
  const { normal, uniform } = seededRandom(STREAMS.remakes);
  return days.map((date) => {
    const printsMade = production
      .filter((row) => row.date === date && row.process === "colour-paper")
      .reduce((total, row) => total + row.count, 0);
    const warm = date >= HEATER_FAULT.from && date < HEATER_FAULT.until;
    const weak = date >= PUMP_FAULT.from ? 1.15 : 1;
    const day = Math.exp(DAY_SD * normal());
    const factors: Readonly<Record<string, number>> = {
      tooDim: (warm ? 1.9 : 1) * weak,
      colour: warm ? 1.4 : 1,
    };
    const remade = Object.fromEntries(
      Object.entries(USUAL).map(([reason, share]) => {
        const expected = printsMade * share * day * (factors[reason] ?? 1);
        return [reason, poisson(expected, uniform)];
      }),
    );
    return { date, printsMade, remade };
  });
}

/** A Poisson number by counting exponential waits. */
function poisson(expected: number, uniform: () => number): number {
  let waited = -Math.log(1 - uniform());
  let count = 0;
  while (waited < expected) {
    waited -= Math.log(1 - uniform());
    count += 1;
  }
  return count;
}
