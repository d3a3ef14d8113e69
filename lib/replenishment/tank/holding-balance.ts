import type { CheckedComponent, CheckedTank } from "./bath-tank.ts";

/** What holding a component at an aim asks of the replenisher: per square metre, and every day. */
export interface HoldingBalance {
  /** g/L that a litre of replenisher brings above what it makes leave. */
  readonly leverGPerL: number;
  /** g/m² that the material calls for. */
  readonly perM2G: number;
  /** g/day that are called for whatever the load; negative where evaporation does some of the work. */
  readonly perDayG: number;
}

/** While the tank overflows: a litre in drives a litre out, and evaporation drives less out. */
export function overflowingBalance(
  tank: CheckedTank,
  component: CheckedComponent,
  aim: number,
): HoldingBalance {
  const lossL = component.lossPerDay * tank.volumeL;
  return {
    leverGPerL: component.replenisher - aim,
    perM2G: tank.carryInLPerM2 * (aim - component.carryIn) - component.netPerM2,
    perDayG: (lossL - tank.evaporationLPerDay) * aim,
  };
}

/** While nothing overflows and water tops up the level: only carry-over takes solution out. */
export function toppedUpBalance(
  tank: CheckedTank,
  component: CheckedComponent,
  aim: number,
): HoldingBalance {
  return {
    leverGPerL: component.replenisher,
    perM2G: tank.carryOutLPerM2 * aim - tank.carryInLPerM2 * component.carryIn - component.netPerM2,
    perDayG: component.lossPerDay * tank.volumeL * aim,
  };
}

/** Load from which on the tank overflows, m²/day; infinite if it never does. */
export function overflowsFrom(tank: CheckedTank): number {
  const perM2L = tank.rateLPerM2 + tank.carryInLPerM2 - tank.carryOutLPerM2;
  if (tank.evaporationLPerDay === 0) return perM2L >= 0 ? 0 : Number.POSITIVE_INFINITY;
  return perM2L > 0 ? tank.evaporationLPerDay / perM2L : Number.POSITIVE_INFINITY;
}
