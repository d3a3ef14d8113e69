import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import {
  type BathTank,
  type CheckedComponent,
  type CheckedTank,
  checkedTank,
  requireAreaPerDay,
} from "./bath-tank.ts";
import { type HoldingBalance, overflowingBalance, toppedUpBalance } from "./holding-balance.ts";
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
 * grows without bound. With water topping up the level, and a rate at which nothing overflows, only
 * carry-over takes solution out: r = (w_o·c − w_i·c_i ∓ q + k·V·c/a) / c_r.
 *
 * @param tank see {@link BathTank}; its own rate is not used
 * @param areaM2PerDay load, m²/day, above 0
 * @param wanted.component name of the component to hold
 * @param wanted.concentrationGPerL where to hold it, g/L, at least 0
 * @returns the rate in mL/m², its two parts, and the steady state of all components at it
 * @throws InputError if the replenisher has the wanted concentration or lies on its wrong side, if the
 *   level would fall at that rate, or the load is too small for any rate
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
  requireObject(where, "wanted", wanted, "an object with component and concentrationGPerL");
  const area = requireAreaPerDay(where, areaM2PerDay);
  requireNumber(where, "areaM2PerDay", area, { above: 0, unit: "m²/day" });
  const checked = checkedTank(where, { ...tank, rateMlPerM2: 0 });
  const component = componentNamed(where, checked.components, wanted.component);
  const aim = requireNumber(where, "concentrationGPerL", wanted.concentrationGPerL, {
    min: 0,
    max: 1e6,
    unit: "g/L",
  });
  const overflowing = overflowingBalance(checked, component, aim);
  const plain = rateOf(overflowing, area);
  if (plain > MOST_L_PER_M2)
    throw new InputError(where, "areaM2PerDay", area, tooLittleToDo(plain));
  const settledAt = (rateL: number) =>
    tankSteadyState({ ...tank, rateMlPerM2: rateL * 1000 }, area);
  const settled = plain >= 0 ? settledAt(plain) : undefined;
  if (settled !== undefined && settled.flows.waterL === 0) {
    if (settled.flows.level === "falling") {
      throw new InputError(where, "tank", "falling", settled.flows.warnings[0] ?? "");
    }
    return answer(overflowing, plain, settled);
  }
  if (checked.topUp === "water") {
    const toppedUp = toppedUpBalance(checked, component, aim);
    const rateL = rateOf(toppedUp, area);
    if (rateL > MOST_L_PER_M2) {
      throw new InputError(where, "areaM2PerDay", area, tooLittleToDo(rateL));
    }
    const still = rateL >= 0 ? settledAt(rateL) : undefined;
    if (still?.flows.overflowL === 0) return answer(toppedUp, rateL, still);
    if (settled !== undefined) {
      const advice = `at ${Number((plain * 1000).toPrecision(4))} mL/m² nothing overflows and water tops up the level, which leaves it weaker, and more only thins it; write a stronger replenisher, or a lower aim`;
      throw new InputError(where, "concentrationGPerL", aim, advice);
    }
  }
  throw new InputError(where, "concentrationGPerL", aim, whyNone(checked, component, aim, area));
}

const MOST_L_PER_M2 = 10_000;

/** L/m²; NaN where a litre of replenisher changes nothing. */
function rateOf({ leverGPerL, perM2G, perDayG }: HoldingBalance, area: number): number {
  return leverGPerL === 0 ? Number.NaN : (perM2G + perDayG / area) / leverGPerL;
}

function answer(
  { leverGPerL, perM2G, perDayG }: HoldingBalance,
  rateL: number,
  settled: TankSteadyState,
): RateForSteadyState {
  return {
    rateMlPerM2: rateL * 1000,
    perAreaMlPerM2: (perM2G / leverGPerL) * 1000,
    standingMlPerDay: (perDayG / leverGPerL) * 1000,
    settled,
    assumptions: settled.assumptions,
    warnings: settled.warnings,
  };
}

function tooLittleToDo(rateL: number): string {
  const found = Number.isFinite(rateL) ? `${rateL.toPrecision(2)} L/m² is no rate` : "no rate does";
  return `so little work would want all its replenisher for what the tank loses by itself (${found}); write a greater load, or feed by the day`;
}

function whyNone(
  tank: CheckedTank,
  component: CheckedComponent,
  aim: number,
  area: number,
): string {
  const { leverGPerL, perM2G, perDayG } = overflowingBalance(tank, component, aim);
  const needed = perM2G + perDayG / area;
  if (needed < 0 && perM2G > 0 && leverGPerL > 0) {
    const water = tank.topUp === "water" ? "" : ', or let water top up the level (topUp: "water")';
    return `at ${area} m² a day evaporation makes it stronger faster than the material uses it, and no rate of this replenisher holds it; cover the tank, write a greater load${water}`;
  }
  const side = needed > 0 ? "stronger" : "weaker";
  return `the replenisher has ${component.replenisher} g/L and must be ${side} than the ${aim} g/L to be held; see replenisherForRate`;
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
