import { InputError, requireNumber } from "../../input/index.ts";
import {
  type BathTank,
  type CheckedComponent,
  checkedTank,
  requireAreaPerDay,
} from "./bath-tank.ts";
import { type TankSteadyState, tankSteadyState } from "./steady-state.ts";

/** A rate that holds one component where it is wanted, and where the others then settle. */
export interface RateForSteadyState {
  readonly rateMlPerM2: number;
  /** Of that rate: what the material calls for, whatever the load. */
  readonly perAreaMlPerM2: number;
  /**
   * The rest, as a volume a day that does not depend on the load: it makes up for what is lost by
   * itself; negative where evaporation does some of the work.
   */
  readonly standingMlPerDay: number;
  readonly settled: TankSteadyState;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * The replenishment rate that holds a component at a wanted concentration.
 *
 * r = (w_i·(c − c_i) ∓ q + (k·V − e)·c/a) / (c_r − c), with + q for use and − q for release
 *
 * The part with 1/a is what a line at low utilisation needs more: divide a small load into it and it
 * grows without bound. With water topping up the level, e counts only as far as there is overflow.
 *
 * @param tank see {@link BathTank}; its own rate is not used
 * @param areaM2PerDay load, m²/day, above 0
 * @param wanted.component name of the component to hold
 * @param wanted.concentrationGPerL where to hold it, g/L, at least 0
 * @returns the rate in mL/m², its two parts, and the steady state of all components at it
 * @throws InputError if the replenisher has the wanted concentration or lies on its wrong side, or
 *   the level would fall at that rate
 *
 * @example
 * const bromide = { name: "bromide", replenisherGPerL: 0, releasedGPerM2: 0.8 };
 * rateForSteadyState({ volumeL: 20, rateMlPerM2: 0, components: [bromide] }, 3, { component: "bromide", concentrationGPerL: 1.23687 }).rateMlPerM2 // => 646.794
 *
 * Source: the tank's mass balance, solved for the rate.
 */
export function rateForSteadyState(
  tank: BathTank,
  areaM2PerDay: number,
  wanted: { readonly component: string; readonly concentrationGPerL: number },
): RateForSteadyState {
  const where = "rateForSteadyState";
  const area = requireAreaPerDay(where, areaM2PerDay);
  requireNumber(where, "areaM2PerDay", area, { above: 0, unit: "m²/day" });
  const checked = checkedTank(where, { ...tank, rateMlPerM2: 0 });
  const component = componentNamed(where, checked.components, wanted.component);
  const aim = requireNumber(where, "concentrationGPerL", wanted.concentrationGPerL, {
    min: 0,
    max: 1e6,
    unit: "g/L",
  });
  const lever = component.replenisher - aim;
  const perArea = checked.carryInLPerM2 * (aim - component.carryIn) - component.netPerM2;
  const lossL = component.lossPerDay * checked.volumeL * aim;
  const standing = lossL - checked.evaporationLPerDay * aim;
  const needed = perArea + standing / area;
  const rateL = lever === 0 ? Number.NaN : needed / lever;
  if (!Number.isFinite(rateL) || rateL < 0) {
    const side = needed > 0 ? "stronger" : "weaker";
    const airWins = needed < 0 && perArea > 0 && lever > 0;
    const advice = airWins
      ? `at ${area} m² a day evaporation makes it stronger faster than the material uses it, and no rate of this replenisher holds it; cover the tank, write a greater load, or let water top up the level (topUp: "water")`
      : `the replenisher has ${component.replenisher} g/L and must be ${side} than the ${aim} g/L to be held; see replenisherForRate`;
    throw new InputError(where, "concentrationGPerL", aim, advice);
  }
  const atRate = { ...tank, rateMlPerM2: rateL * 1000 };
  const settled = tankSteadyState(atRate, area);
  if (settled.flows.level === "falling") {
    throw new InputError(where, "tank", "falling", settled.flows.warnings[0] ?? "");
  }
  if (settled.flows.waterL > 0) {
    const advice = `at ${Number((rateL * 1000).toPrecision(4))} mL/m² nothing overflows and water tops up the level, so no rate of this replenisher holds it; write a weaker replenisher, or less evaporation`;
    throw new InputError(where, "concentrationGPerL", aim, advice);
  }
  return {
    rateMlPerM2: rateL * 1000,
    perAreaMlPerM2: (perArea / lever) * 1000,
    standingMlPerDay: (standing / lever) * 1000,
    settled,
    assumptions: settled.assumptions,
    warnings: settled.warnings,
  };
}

/** The component of that name, or an error that lists the names. */
export function componentNamed(
  where: string,
  components: readonly CheckedComponent[],
  name: string,
): CheckedComponent {
  const found = components.find((each) => each.name === name);
  if (found) return found;
  const names = components.map((each) => `"${each.name}"`).join(", ");
  throw new InputError(where, "component", name, `write one of ${names}`);
}
