import { requireVolume } from "../require-volume.ts";
import { type CheckedTank, requireAreaPerDay } from "./bath-tank.ts";
import { flowsOf } from "./tank-flows.ts";
import type { TankDay } from "./tank-log.ts";

/** Area and flows of one day of a log, with what the day itself says. */
export function dayFlows(where: string, tank: CheckedTank, day: TankDay, i: number) {
  const areaM2 = requireAreaPerDay(where, day.areaM2, `days[${i}].areaM2`);
  const volumeOf = (argument: "replenisherMl" | "evaporationMl", given: number | undefined) =>
    given === undefined
      ? undefined
      : requireVolume(where, `days[${i}].${argument}`, given, { min: 0, max: 1e10, unit: "mL" });
  const delivered = volumeOf("replenisherMl", day.replenisherMl);
  const evaporated = volumeOf("evaporationMl", day.evaporationMl);
  const thatDay =
    evaporated === undefined ? tank : { ...tank, evaporationLPerDay: evaporated / 1000 };
  const replenisherL = delivered === undefined ? areaM2 * tank.rateLPerM2 : delivered / 1000;
  return { areaM2, flows: flowsOf(thatDay, areaM2, replenisherL) };
}
