import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { type BathTank, checkedTank, requireAreaPerDay, requireStart } from "./bath-tank.ts";
import { relax, relaxationOf } from "./relaxation.ts";
import { flowsOf } from "./tank-flows.ts";

/** A tank at one moment after a change. */
export interface TankMoment {
  readonly days: number;
  readonly turnovers: number;
  /** g/L by name of the component. */
  readonly concentrationGPerL: Readonly<Record<string, number>>;
}

/**
 * How a tank answers a step: from the start concentrations, under the tank's present flows and load.
 *
 * c(t) = c_ss + (c_0 − c_ss)·e^(−t/τ), exactly
 *
 * @param tank see {@link BathTank}, with `startGPerL` of each component; flows as they are after the step
 * @param areaM2PerDay load after the step, m²/day, at least 0
 * @param days moments, days after the step, each at least 0
 * @returns concentrations in g/L at each moment; a component that is used up stays at 0
 * @throws InputError for a falling tank, a missing start, or a number out of range
 *
 * @example
 * const bromide = { name: "bromide", replenisherGPerL: 0, releasedGPerM2: 0.8, startGPerL: 0 };
 * const tank = { volumeL: 20, rateMlPerM2: 646.794, components: [bromide] };
 * tankStepResponse(tank, 1, [tankSteadyState(tank, 1).turnoverDays])[0].concentrationGPerL // => { bromide: 0.78185 }
 *
 * Source: mass balance of a well-stirred tank.
 */
export function tankStepResponse(
  tank: BathTank,
  areaM2PerDay: number,
  days: readonly number[],
): readonly TankMoment[] {
  const where = "tankStepResponse";
  requireObject(where, "tank", tank, "an object with volumeL, rateMlPerM2 and components");
  requireEntries(where, "days", days, "a list of numbers");
  const area = requireAreaPerDay(where, areaM2PerDay);
  const checked = checkedTank(where, tank);
  const flows = flowsOf(checked, area, area * checked.rateLPerM2);
  if (flows.level === "falling") {
    throw new InputError(where, "tank", "falling", flows.warnings[0] ?? "correct the flows");
  }
  const bound = checked.components.map((component) => ({
    name: component.name,
    start: requireStart(where, component),
    relaxation: relaxationOf(checked, component, flows, area),
  }));
  return days.map((t, i) => {
    requireNumber(where, `days[${i}]`, t, { min: 0, max: 1e9, unit: "days" });
    const states = bound.map(({ name, start, relaxation }) => [
      name,
      relax(relaxation, start, t).concentration,
    ]);
    return {
      days: t,
      turnovers: flows.turnoversPerDay * t,
      concentrationGPerL: Object.fromEntries(states),
    };
  });
}
