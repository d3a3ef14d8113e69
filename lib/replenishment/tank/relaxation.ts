import type { CheckedComponent, CheckedTank } from "./bath-tank.ts";
import { solutionOutL, type TankFlows } from "./tank-flows.ts";

/** dc/dt = source − rate·c, per day; rate is never negative. */
export interface Relaxation {
  readonly source: number;
  readonly rate: number;
}

/** The balance of one component at constant flows. */
export function relaxationOf(
  tank: CheckedTank,
  component: CheckedComponent,
  flows: TankFlows,
  areaM2: number,
): Relaxation {
  const broughtIn =
    flows.replenisherL * component.replenisher +
    flows.carryInL * component.carryIn +
    areaM2 * component.netPerM2;
  return {
    source: broughtIn / tank.volumeL,
    rate: solutionOutL(flows) / tank.volumeL + component.lossPerDay,
  };
}

/** Where a component stands after a time at constant flows, solved exactly. */
export interface RelaxedState {
  readonly concentration: number;
  /** ∫c dt over the time, g·day/L. */
  readonly integral: number;
  /** Part of the time after the component was used up, days; 0 as a rule. */
  readonly usedUpDays: number;
}

/**
 * c(t) = c0·e^(−λt) + s·t·φ1(λt), φ1(x) = (1 − e^(−x))/x. A concentration that reaches 0 stays there as
 * long as more is asked for than comes in.
 */
export function relax({ source, rate }: Relaxation, start: number, days: number): RelaxedState {
  const zeroAt = source < 0 ? timeToZero(source, rate, start) : Number.POSITIVE_INFINITY;
  const lasts = Math.min(days, zeroAt);
  const x = rate * lasts;
  const integral = start * lasts * phi1(x) + source * lasts * lasts * phi2(x);
  if (zeroAt < days) return { concentration: 0, integral, usedUpDays: days - zeroAt };
  const concentration = start * Math.exp(-x) + source * lasts * phi1(x);
  return { concentration: Math.max(0, concentration), integral, usedUpDays: 0 };
}

/** ln(1 + λ·c0/|s|)/λ; infinite where so little is asked for that the quotient overflows. */
function timeToZero(source: number, rate: number, start: number): number {
  if (start === 0) return 0;
  const linear = start / -source;
  const x = rate * linear;
  if (!Number.isFinite(linear) || !Number.isFinite(x)) return Number.POSITIVE_INFINITY;
  return x < 1e-12 ? linear : linear * (Math.log1p(x) / x);
}

/** (1 − e^(−x))/x. */
export function phi1(x: number): number {
  return x < 1e-12 ? 1 - x / 2 : -Math.expm1(-x) / x;
}

/** (x − 1 + e^(−x))/x²: by its series where the formula would lose digits. */
export function phi2(x: number): number {
  if (x > 0.5) return (x + Math.expm1(-x)) / (x * x);
  let term = 0.5;
  let sum = term;
  for (let n = 3; n < 20; n++) {
    term *= -x / n;
    sum += term;
  }
  return sum;
}
