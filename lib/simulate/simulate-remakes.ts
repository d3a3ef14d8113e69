import type { RandomStream } from "../numerics/index.ts";
import type { RemakesDay } from "../records/index.ts";

/** Share of prints made again for each reason on an ordinary day; invented. */
const USUAL = { tooBright: 0.008, tooDim: 0.009, unsharp: 0.004, colour: 0.007, marks: 0.005 };
/** Days differ by more than chance alone, as they do where people judge prints. */
const DAY_SD = 0.12;
/** A density this far off doubles the prints that come out too dim, unless the lab looks closer. */
export const USUAL_DOUBLING_DENSITY = 0.08;

/**
 * Prints made again by reason: prints that are too dense come out too dim, colours that part too
 * coloured.
 *
 * @param densityOff by how much prints of a day are too dense, and how far their colours part
 * @param doublingDensity what doubles the prints made again, density
 */
export function simulateRemakes(
  days: readonly string[],
  printsMade: readonly number[],
  densityOff: (day: number) => { readonly density: number; readonly spread: number },
  { normal, uniform }: RandomStream,
  doublingDensity: number = USUAL_DOUBLING_DENSITY,
): readonly RemakesDay[] {
  return days.map((date, at) => {
    const prints = printsMade[at] ?? 0;
    const { density, spread } = densityOff(at);
    const ofDay = Math.exp(DAY_SD * normal());
    const factors: Readonly<Record<string, number>> = {
      tooDim: 2 ** (density / doublingDensity),
      tooBright: 2 ** (-density / doublingDensity),
      colour: 2 ** (spread / doublingDensity),
    };
    let left = prints;
    const remade = Object.entries(USUAL).map(([reason, share]) => {
      const count = Math.min(
        left,
        poisson(prints * share * ofDay * (factors[reason] ?? 1), uniform),
      );
      left -= count;
      return [reason, count] as const;
    });
    return { date, printsMade: prints, remade: Object.fromEntries(remade) };
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
