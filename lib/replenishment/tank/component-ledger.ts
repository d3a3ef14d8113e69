import type { CheckedComponent, CheckedTank } from "./bath-tank.ts";
import { relax, relaxationOf } from "./relaxation.ts";
import type { TankFlows } from "./tank-flows.ts";
import type { ComponentLedger } from "./tank-log.ts";

/** A component on its way through a log. */
export interface LedgerState {
  readonly component: CheckedComponent;
  readonly start: number;
  concentration: number;
  broughtIn: number;
  net: number;
  carriedOut: number;
  overflowed: number;
  lost: number;
  dumped: number;
  unmet: number;
}

export function openLedger(component: CheckedComponent, start: number): LedgerState {
  const empty = {
    broughtIn: 0,
    net: 0,
    carriedOut: 0,
    overflowed: 0,
    lost: 0,
    dumped: 0,
    unmet: 0,
  };
  return { component, start, concentration: start, ...empty };
}

/** A fresh bath: what was there is poured away. */
export function refill(state: LedgerState, tank: CheckedTank): void {
  state.dumped += (state.concentration - state.start) * tank.volumeL;
  state.concentration = state.start;
}

/** One day at constant flows; says whether the component was used up in it. */
export function passDay(
  state: LedgerState,
  tank: CheckedTank,
  flows: TankFlows,
  areaM2: number,
): boolean {
  const { component } = state;
  const relaxation = relaxationOf(tank, component, flows, areaM2);
  const { concentration, integral, usedUpDays } = relax(relaxation, state.concentration, 1);
  state.concentration = concentration;
  state.broughtIn +=
    flows.replenisherL * component.replenisher + flows.carryInL * component.carryIn;
  state.net += areaM2 * component.netPerM2;
  state.unmet += -relaxation.source * tank.volumeL * usedUpDays;
  state.carriedOut += flows.carryOutL * integral;
  state.overflowed += flows.overflowL * integral;
  state.lost += component.lossPerDay * tank.volumeL * integral;
  return usedUpDays > 0;
}

/** Everything of the component accounted for. */
export function closeLedger(state: LedgerState, tank: CheckedTank): ComponentLedger {
  const { component, broughtIn, net, carriedOut, overflowed, lost, dumped, unmet } = state;
  const startG = state.start * tank.volumeL;
  const endG = state.concentration * tank.volumeL;
  return {
    name: component.name,
    startG,
    broughtInG: broughtIn,
    releasedG: Math.max(0, net),
    consumedG: Math.max(0, -net - unmet),
    carriedOutG: carriedOut,
    overflowedG: overflowed,
    lostG: lost,
    dumpedG: dumped,
    endG,
    unmetG: unmet,
    imbalanceG: startG + broughtIn + net + unmet - carriedOut - overflowed - lost - dumped - endG,
  };
}
