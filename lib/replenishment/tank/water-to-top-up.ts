import { type BathTank, checkedTank, requireAreaPerDay } from "./bath-tank.ts";
import { flowsOf, solutionOutL } from "./tank-flows.ts";

/**
 * Water that must be added in a day to make up for evaporation beyond what replenisher and carry-in
 * bring: 0 while the level holds.
 *
 * max(0, e + a·w_o − a·r − a·w_i)
 *
 * @param tank see {@link BathTank}
 * @param areaM2PerDay load, m²/day, at least 0
 * @returns mL of water a day, and the share of the tank's solution that leaves in a day
 * @throws InputError for a number out of range
 *
 * @example
 * waterToTopUp({ volumeL: 20, rateMlPerM2: 600, evaporationMlPerDay: 400, components: [] }, 0.2).waterMlPerDay // => 280
 *
 * Source: volume balance.
 */
export function waterToTopUp(
  tank: BathTank,
  areaM2PerDay: number,
): { readonly waterMlPerDay: number; readonly exchangedPerDay: number } {
  const where = "waterToTopUp";
  const area = requireAreaPerDay(where, areaM2PerDay);
  const checked = checkedTank(where, { ...tank, topUp: "water" });
  const flows = flowsOf(checked, area, area * checked.rateLPerM2);
  return {
    waterMlPerDay: flows.waterL * 1000,
    exchangedPerDay: solutionOutL(flows) / checked.volumeL,
  };
}
