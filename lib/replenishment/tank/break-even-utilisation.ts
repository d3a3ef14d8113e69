import { requireNumber, requireObject } from "../../input/index.ts";
import { quotient } from "../quotient.ts";
import { type BathTank, type CheckedTank, checkedTank } from "./bath-tank.ts";
import {
  type HoldingBalance,
  overflowingBalance,
  overflowsFrom,
  toppedUpBalance,
} from "./holding-balance.ts";
import { componentNamed } from "./rate-for-steady-state.ts";

/** The load at which a tank's own losses begin to rule. */
export interface BreakEvenUtilisation {
  /** Load at which loss by itself equals what the material uses, m²/day; null if it uses none. */
  readonly lossEqualsUseM2PerDay: number | null;
  /**
   * Load above which the tank's rate keeps level and component (at least at the aim), m²/day; 0 if it
   * does at any load, null if there is no such load.
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
 * a_equal = k·V·c/q; a_holds = (k·V − e)·c / (r·(c_r − c) − w_i·(c − c_i) − q) while the tank
 * overflows; below that load, topped up with water, a_holds = k·V·c / (r·c_r + w_i·c_i − w_o·c − q)
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
  requireObject(where, "tank", tank, "an object with volumeL, rateMlPerM2 and components");
  requireObject(where, "aim", aim, "an object with component and concentrationGPerL");
  const checked = checkedTank(where, tank);
  const component = componentNamed(where, checked.components, aim.component);
  const c = requireNumber(where, "concentrationGPerL", aim.concentrationGPerL, {
    above: 0,
    max: 1e6,
    unit: "g/L",
  });
  const overflowing = gainOf(overflowingBalance(checked, component, c), checked.rateLPerM2);
  const toppedUp = gainOf(toppedUpBalance(checked, component, c), checked.rateLPerM2);
  const gains = { overflowing, toppedUp, from: overflowsFrom(checked) };
  const lossGPerDay = component.lossPerDay * checked.volumeL * c;
  const used = -component.netPerM2;
  return {
    lossEqualsUseM2PerDay: used > 0 ? quotient(lossGPerDay, used) : null,
    rateHoldsFromM2PerDay: holdsFrom(checked.topUp, gains),
    lossGPerDay,
    assumptions: ["The loss by itself goes with the concentration, day and night."],
    warnings: warningsOf(checked.topUp, gains, `${aim.component} at ${c} g/L`),
  };
}

/** g/m² that the rate brings beyond what holds the aim, and g/day that are missing without work. */
interface Gain {
  readonly perM2: number;
  readonly standing: number;
}

interface Gains {
  readonly overflowing: Gain;
  readonly toppedUp: Gain;
  /** Load from which on the tank overflows, m²/day. */
  readonly from: number;
}

function gainOf({ leverGPerL, perM2G, perDayG }: HoldingBalance, rateLPerM2: number): Gain {
  return { perM2: rateLPerM2 * leverGPerL - perM2G, standing: perDayG };
}

/** Least load with perM2·a ≥ standing there and above; null if there is none. */
function least({ perM2, standing }: Gain): number | null {
  if (perM2 < 0) return null;
  return standing <= 0 ? 0 : quotient(standing, perM2);
}

function holdsFrom(topUp: CheckedTank["topUp"], { overflowing, toppedUp, from }: Gains) {
  // With no overflow at any load, only water keeps the level.
  if (!Number.isFinite(from)) return topUp === "water" ? least(toppedUp) : null;
  const load = least(overflowing);
  if (load === null || load >= from) return load;
  return topUp === "water" ? least(toppedUp) : from;
}

function warningsOf(topUp: CheckedTank["topUp"], gains: Gains, aim: string): string[] {
  const { perM2, standing } = gains.overflowing;
  const shown = (value: number) => String(Number(value.toPrecision(3)));
  const falls = topUp === "water" ? 0 : gains.from;
  if (!Number.isFinite(falls)) {
    return ["The level falls at every load: more evaporates and is carried out than comes in."];
  }
  const below = `Below ${shown(falls)} m² a day the level falls; top up with water (topUp: "water").`;
  const level = falls > 0 ? [below] : [];
  if (!Number.isFinite(gains.from) || perM2 > 0 || (perM2 === 0 && standing <= 0)) return level;
  const takes = `a square metre takes ${shown(-perM2)} g more than its replenisher brings above the aim; see rateForSteadyState.`;
  const most = quotient(standing, perM2) ?? 0;
  const fewest = topUp === "water" ? (least(gains.toppedUp) ?? 0) : gains.from;
  return most > gains.from
    ? [
        ...level,
        `This rate holds ${aim} only from ${shown(fewest)} to ${shown(most)} m² a day: above, ${takes}`,
      ]
    : [...level, `At no load does this rate hold ${aim}: ${takes}`];
}
