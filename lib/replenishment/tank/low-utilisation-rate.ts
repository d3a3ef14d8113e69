import { InputError } from "../../input/index.ts";
import { type BathTank, checkedTank } from "./bath-tank.ts";
import { overflowingBalance } from "./holding-balance.ts";
import {
  componentNamed,
  type RateForSteadyState,
  rateForSteadyState,
} from "./rate-for-steady-state.ts";

/** A replenishment setting for a line with little to do. */
export interface LowUtilisationRate extends RateForSteadyState {
  /** The rate that serves a busy line: the same, without loss and evaporation. */
  readonly busyRateMlPerM2: number;
  /** Low-utilisation rate over busy rate. */
  readonly factor: number;
  /** Share of the tank exchanged in a day. */
  readonly turnoversPerDay: number;
}

/**
 * The rate for a load at which loss by itself dominates, against the rate of a busy line.
 *
 * r(a) = r_∞ + (k·V − e)·c / (a·(c_r − c))
 *
 * A higher rate washes out what the material gives off: look at the other components in `settled`
 * before setting it. Often a special replenisher or starter dose with each day serves better.
 *
 * @param tank see {@link BathTank}; its own rate is not used
 * @param areaM2PerDay load, m²/day, above 0
 * @param aim.component component to hold, as a rule the developing agent
 * @param aim.concentrationGPerL its aim, g/L, above 0
 * @returns the rate in mL/m², the busy line's, their ratio, and where every component settles
 * @throws InputError as `rateForSteadyState`
 *
 * @example
 * const agent = { name: "developing agent", replenisherGPerL: 5.2, consumedGPerM2: 1, lossPerDay: 0.02 };
 * lowUtilisationRate({ volumeL: 20, rateMlPerM2: 0, components: [agent] }, 1.4, { component: "developing agent", concentrationGPerL: 3.5 }).factor // => 2
 *
 * Source: the tank's mass balance, solved for the rate.
 */
export function lowUtilisationRate(
  tank: BathTank,
  areaM2PerDay: number,
  aim: { readonly component: string; readonly concentrationGPerL: number },
): LowUtilisationRate {
  const where = "lowUtilisationRate";
  const at = rateForSteadyState(tank, areaM2PerDay, aim);
  const checked = checkedTank(where, { ...tank, rateMlPerM2: 0 });
  const component = componentNamed(where, checked.components, aim.component);
  const busy = overflowingBalance(checked, component, aim.concentrationGPerL);
  const busyRateMlPerM2 = (1000 * busy.perM2G) / busy.leverGPerL;
  if (!(busyRateMlPerM2 > 0)) {
    const advice = "write a component that the material uses up; this one needs no replenishing";
    throw new InputError(where, "component", aim.component, advice);
  }
  const { turnoversPerDay } = at.settled.flows;
  const falls = busy.perDayG < 0;
  return {
    ...at,
    busyRateMlPerM2,
    factor: at.rateMlPerM2 / busyRateMlPerM2,
    turnoversPerDay,
    warnings: [
      ...at.warnings,
      ...(falls
        ? ["Evaporation concentrates the tank faster than it loses; cover it or top up with water."]
        : []),
    ],
  };
}
