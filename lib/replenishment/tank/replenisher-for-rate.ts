import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { type BathTank, checkedTank, requireAreaPerDay } from "./bath-tank.ts";
import { componentNamed } from "./rate-for-steady-state.ts";
import { flowsOf, solutionOutL } from "./tank-flows.ts";

/**
 * The concentration a replenisher must have to hold a component at the tank's rate.
 *
 * c_r = c + (w_i·(c − c_i) ∓ q + (k·V − e)·c/a) / r, with + q for use and − q for release
 *
 * @param tank see {@link BathTank}; the component's own `replenisherGPerL` is not used
 * @param areaM2PerDay load, m²/day, above 0
 * @param wanted.component name of the component to hold
 * @param wanted.concentrationGPerL where to hold it, g/L, at least 0
 * @returns concentration in the replenisher, g/L
 * @throws InputError for a falling tank, a rate of 0, or if even a replenisher without any of it
 *   would leave too much: the message gives the least rate that can hold it
 *
 * @example
 * const agent = { name: "developing agent", replenisherGPerL: 0, consumedGPerM2: 1 };
 * replenisherForRate({ volumeL: 20, rateMlPerM2: 646.794, components: [agent] }, 3, { component: "developing agent", concentrationGPerL: 3.45391 }) // => 5.00000
 *
 * Source: the tank's mass balance, solved for the replenisher.
 */
export function replenisherForRate(
  tank: BathTank,
  areaM2PerDay: number,
  wanted: { readonly component: string; readonly concentrationGPerL: number },
): number {
  const where = "replenisherForRate";
  requireObject(where, "tank", tank, "an object with volumeL, rateMlPerM2 and components");
  requireObject(where, "wanted", wanted, "an object with component and concentrationGPerL");
  const area = requireAreaPerDay(where, areaM2PerDay);
  requireNumber(where, "areaM2PerDay", area, { above: 0, unit: "m²/day" });
  requireNumber(where, "rateMlPerM2", tank.rateMlPerM2, { above: 0, unit: "mL/m²" });
  const checked = checkedTank(where, tank);
  const component = componentNamed(where, checked.components, wanted.component);
  const aim = requireNumber(where, "concentrationGPerL", wanted.concentrationGPerL, {
    min: 0,
    max: 1e6,
    unit: "g/L",
  });
  const flows = flowsOf(checked, area, area * checked.rateLPerM2);
  if (flows.level === "falling") {
    throw new InputError(where, "tank", "falling", flows.warnings[0] ?? "correct the flows");
  }
  const leaves = (solutionOutL(flows) + component.lossPerDay * checked.volumeL) * aim;
  const comes = flows.carryInL * component.carryIn + area * component.netPerM2;
  const needed = (leaves - comes) / flows.replenisherL;
  if (!Number.isFinite(needed)) {
    const advice = "so little replenisher brings nothing; write a greater rate or load";
    throw new InputError(where, "rateMlPerM2", tank.rateMlPerM2, advice);
  }
  // A release held exactly leaves a rounding error where a replenisher without any is meant.
  if (needed >= 0) return needed;
  if (needed > -1e-12 * (leaves / flows.replenisherL)) return 0;
  const least = aim > 0 ? (tank.rateMlPerM2 * (aim - needed)) / aim : null;
  const advice =
    least === null
      ? "the material brings some with it, so it cannot be held at 0"
      : `at this rate even a replenisher without it leaves more; write a rate of at least ${Math.ceil(least)} mL/m²`;
  throw new InputError(where, "concentrationGPerL", aim, advice);
}
