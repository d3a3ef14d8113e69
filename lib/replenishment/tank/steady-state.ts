import { quotient } from "../quotient.ts";
import { type BathTank, checkedTank, requireAreaPerDay } from "./bath-tank.ts";
import { relaxationOf } from "./relaxation.ts";
import { flowsOf, type TankFlows } from "./tank-flows.ts";

/** Where one component settles. */
export interface SteadyComponent {
  readonly name: string;
  /** g/L; null if the level falls, if nothing ever leaves, or if more is used up than is brought. */
  readonly steadyGPerL: number | null;
  /** Days after which 63 % of a change has come about; null if nothing ever leaves. */
  readonly timeConstantDays: number | null;
}

/** Where a tank settles at a load. */
export interface TankSteadyState {
  readonly flows: TankFlows;
  readonly components: readonly SteadyComponent[];
  /** Area in which one tank volume of replenisher is delivered, m²; null without replenishment. */
  readonly turnoverM2: number | null;
  /** Days for one tank turnover; null without replenishment. */
  readonly turnoverDays: number | null;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** What every answer about a tank rests on. */
export const TANK_ASSUMPTIONS: readonly string[] = [
  "The tank is well stirred; what overflows and what is carried out is tank liquid.",
  "Volumes are additive; water evaporates, what is dissolved stays.",
  "Use and release go with the area, loss by itself with concentration and time.",
];

/**
 * Where each component of a tank settles when the load goes on, and how fast.
 *
 * c_ss = (a·r·c_r + a·w_i·c_i ± a·q) / (a·r + a·w_i − e + k·V), τ = V / (a·r + a·w_i − e + k·V)
 *
 * @param tank see {@link BathTank}
 * @param areaM2PerDay load, m²/day, at least 0
 * @returns concentrations in g/L, time constants and the turnover in days; null where there is none,
 *   with the reason in `warnings`
 * @throws InputError for a number out of range
 *
 * @example
 * const bromide = { name: "bromide", replenisherGPerL: 0, releasedGPerM2: 0.8 };
 * tankSteadyState({ volumeL: 20, rateMlPerM2: 646.794, components: [bromide] }, 3).components[0].steadyGPerL // => 1.23687
 *
 * Source: mass balance of a well-stirred tank.
 */
export function tankSteadyState(tank: BathTank, areaM2PerDay: number): TankSteadyState {
  const where = "tankSteadyState";
  const area = requireAreaPerDay(where, areaM2PerDay);
  const checked = checkedTank(where, tank);
  const flows = flowsOf(checked, area, area * checked.rateLPerM2);
  const warnings = [...flows.warnings];
  const components = checked.components.map((component): SteadyComponent => {
    const { name } = component;
    const { source, rate } = relaxationOf(checked, component, flows, area);
    if (flows.level === "falling") return { name, steadyGPerL: null, timeConstantDays: null };
    // A loss too small for a quotient is none.
    if (!Number.isFinite(1 / rate) || !Number.isFinite(source / rate)) {
      warnings.push(`${name}: nothing leaves the tank, so it never settles.`);
      return { name, steadyGPerL: null, timeConstantDays: null };
    }
    if (source < 0) {
      warnings.push(`${name}: the material uses up more than the replenisher brings.`);
      return { name, steadyGPerL: null, timeConstantDays: 1 / rate };
    }
    return { name, steadyGPerL: source / rate, timeConstantDays: 1 / rate };
  });
  const { rateLPerM2, volumeL } = checked;
  return {
    flows,
    components,
    turnoverM2: quotient(volumeL, rateLPerM2),
    turnoverDays: quotient(1, flows.turnoversPerDay),
    assumptions: TANK_ASSUMPTIONS,
    warnings,
  };
}
