import { requireNumber } from "../../input/index.ts";
import { type BathTank, checkedTank } from "./bath-tank.ts";
import { componentNamed } from "./rate-for-steady-state.ts";

/** The load at which a tank's own losses begin to rule. */
export interface BreakEvenUtilisation {
  /** Load at which loss by itself equals what the material uses, m²/day; null if it uses none. */
  readonly lossEqualsUseM2PerDay: number | null;
  /**
   * Load above which the tank's rate keeps the component at least at the aim, m²/day; 0 if it does at
   * any load, null if at none.
   */
  readonly rateHoldsFromM2PerDay: number | null;
  /** Loss by itself at the aim, g/day. */
  readonly lossGPerDay: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * The load below which a tank loses more by itself (aerial oxidation) than its work takes, and the
 * load from which its present rate still holds the aim.
 *
 * a_equal = k·V·c/q; a_holds = (k·V − e)·c / (r·(c_r − c) − w_i·(c − c_i) − q)
 *
 * @param tank see {@link BathTank}
 * @param aim.component a component that is used up or lost: the developing agent, sulfite
 * @param aim.concentrationGPerL its aim, g/L, above 0
 * @returns loads in m²/day, loss in g/day
 * @throws InputError for an unknown component or a number out of range
 *
 * @example
 * const agent = { name: "developing agent", replenisherGPerL: 5.2, consumedGPerM2: 1, lossPerDay: 0.02 };
 * breakEvenUtilisation({ volumeL: 20, rateMlPerM2: 700, components: [agent] }, { component: "developing agent", concentrationGPerL: 3.5 }).lossEqualsUseM2PerDay // => 1.4
 *
 * Source: the tank's mass balance; the loss constant comes from the lab's own readings over idle days.
 */
export function breakEvenUtilisation(
  tank: BathTank,
  aim: { readonly component: string; readonly concentrationGPerL: number },
): BreakEvenUtilisation {
  const where = "breakEvenUtilisation";
  const checked = checkedTank(where, tank);
  const component = componentNamed(where, checked.components, aim.component);
  const c = requireNumber(where, "concentrationGPerL", aim.concentrationGPerL, {
    above: 0,
    max: 1e6,
    unit: "g/L",
  });
  const lossGPerDay = component.lossPerDay * checked.volumeL * c;
  const perDay = lossGPerDay - checked.evaporationLPerDay * c;
  const perArea =
    checked.rateLPerM2 * (component.replenisher - c) -
    checked.carryInLPerM2 * (c - component.carryIn) +
    component.netPerM2;
  const never = perArea <= 0 && perDay > 0;
  return {
    lossEqualsUseM2PerDay: component.netPerM2 < 0 ? lossGPerDay / -component.netPerM2 : null,
    rateHoldsFromM2PerDay: perDay <= 0 && perArea >= 0 ? 0 : perArea > 0 ? perDay / perArea : null,
    lossGPerDay,
    assumptions: ["The loss by itself goes with the concentration, day and night."],
    warnings: never
      ? [
          `At no load does this rate hold ${aim.component} at ${c} g/L: a square metre takes ${Number((-perArea).toPrecision(3))} g more than its replenisher brings above the aim; see rateForSteadyState.`,
        ]
      : [],
  };
}
