import { requireEntries, requireNumber } from "../../input/index.ts";
import type { KnownRateChange } from "./rate-sensitivity.ts";

/**
 * How a tank answers to changes of the rate that the lab made itself, in units of the sensitivity:
 * x' = f/(1 + f) − x, with f the sum of the changes so far, solved exactly between them, turnovers
 * counted as set.
 *
 * @param changes each with its moment and its own step against the first rate, −0.9 to 2: 0.1, then −0.1
 *   is 10 % more and back again
 * @param turnovers at which the answer is wanted
 * @returns x at each; times the sensitivity it is a density
 * @throws InputError for a number out of range, or a rate set to nothing
 *
 * @example
 * knownRateAnswer([{ atTurnovers: 1, fraction: 0.1 }, { atTurnovers: 2, fraction: -0.1 }], [1, 2, 3]) // => [0, 0.0574655, 0.0211404]
 *
 * Source: derived from the balance of a well-stirred tank.
 */
export function knownRateAnswer(
  changes: readonly KnownRateChange[],
  turnovers: readonly number[],
): readonly number[] {
  return knownAnswers("knownRateAnswer", changes, turnovers).map(({ answer }) => answer);
}

/** The tank's answer x to changes that the lab made itself, and x as the tank carries it on. */
export interface KnownAnswer {
  readonly answer: number;
  /** u' = x − u: what an error of the rate has met so far, on the average that the tank keeps. */
  readonly carried: number;
}

export function knownAnswers(
  where: string,
  changes: readonly KnownRateChange[],
  turnovers: readonly number[],
): readonly KnownAnswer[] {
  requireEntries(where, "changes", changes);
  requireEntries(where, "turnovers", turnovers, "a list of numbers");
  let sum = 0;
  const steps = changes
    .map(({ atTurnovers, fraction }, i) => {
      requireNumber(where, `changes[${i}].atTurnovers`, atTurnovers);
      requireNumber(where, `changes[${i}].fraction`, fraction, { min: -0.9, max: 2 });
      return { atTurnovers, fraction };
    })
    .toSorted((a, b) => a.atTurnovers - b.atTurnovers)
    .map(({ atTurnovers, fraction }) => {
      sum += fraction;
      return { atTurnovers, rate: requireNumber(where, "rate left", 1 + sum, { min: 0.1 }) };
    });
  return turnovers.map((n, i) => {
    requireNumber(where, `turnovers[${i}]`, n);
    let [state, rate, at]: [KnownAnswer, number, number] = [{ answer: 0, carried: 0 }, 1, n];
    for (const step of steps) {
      if (step.atTurnovers >= n) break;
      state = later(state, rate, step.atTurnovers - at);
      [rate, at] = [step.rate, step.atTurnovers];
    }
    return later(state, rate, n - at);
  });
}

/** The answer after `turnovers` more at one rate; before the first change nothing moves. */
function later(state: KnownAnswer, rate: number, turnovers: number): KnownAnswer {
  if (state.answer === 0 && state.carried === 0 && rate === 1) return state;
  const settled = (rate - 1) / rate;
  const [off, carriedOff] = [state.answer - settled, state.carried - settled];
  const left = Math.exp(-turnovers);
  return {
    answer: settled + off * left,
    carried: settled + (carriedOff + off * turnovers) * left,
  };
}
