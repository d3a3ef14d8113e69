import { requireObject } from "../../input/index.ts";
import { type BathTank, type CheckedTank, checkedTank, requireAreaPerDay } from "./bath-tank.ts";

/** What flows through a tank in a day, L/day. */
export interface TankFlows {
  /** `"holds"`: the level stays; `"falling"`: more is lost than comes in and nothing tops it up. */
  readonly level: "holds" | "falling";
  readonly replenisherL: number;
  readonly carryInL: number;
  /** Water that tops up the level, 0 unless the tank says `topUp: "water"`. */
  readonly waterL: number;
  readonly evaporationL: number;
  readonly carryOutL: number;
  /** What is left after carry-out; 0 when the level falls. */
  readonly overflowL: number;
  /** How much the level falls in a day, L; 0 when it holds. */
  readonly shortfallL: number;
  /** Replenisher over tank volume: turnovers a day. */
  readonly turnoversPerDay: number;
  readonly warnings: readonly string[];
}

/**
 * The flows through a replenished tank at a load, and whether its level holds.
 *
 * overflow = a·r + a·w_i − e − a·w_o; below 0 the tank is falling, unless water tops it up.
 *
 * @param tank see {@link BathTank}; its components play no part here
 * @param areaM2PerDay load, m²/day, at least 0
 * @returns flows in L/day, turnovers a day, and a warning for a falling tank
 * @throws InputError for a negative rate, a volume that is not in litres, or a number out of range
 *
 * @example
 * tankFlows({ volumeL: 20, rateMlPerM2: 600, carryOutMlPerM2: 70, evaporationMlPerDay: 300, components: [] }, 3).overflowL // => 1.29
 *
 * Source: volume balance.
 */
export function tankFlows(tank: BathTank, areaM2PerDay: number): TankFlows {
  requireObject("tankFlows", "tank", tank, "an object with volumeL, rateMlPerM2 and components");
  const area = requireAreaPerDay("tankFlows", areaM2PerDay);
  const checked = checkedTank("tankFlows", tank);
  return flowsOf(checked, area, area * checked.rateLPerM2);
}

/** The same for a checked tank and a known volume of replenisher. */
export function flowsOf(tank: CheckedTank, areaM2: number, replenisherL: number): TankFlows {
  const carryInL = areaM2 * tank.carryInLPerM2;
  const carryOutL = areaM2 * tank.carryOutLPerM2;
  const evaporationL = tank.evaporationLPerDay;
  const difference = replenisherL + carryInL - evaporationL - carryOutL;
  // Equal flows leave a rounding error, neither a fall nor an overflow.
  const rounding = 1e-12 * (replenisherL + carryInL + evaporationL + carryOutL);
  const surplus = Math.abs(difference) <= rounding ? 0 : difference;
  const missing = Math.max(0, -surplus);
  const toppedUp = tank.topUp === "water";
  const falling = missing > 0 && !toppedUp;
  const turnoversPerDay = replenisherL / tank.volumeL;
  return {
    level: falling ? "falling" : "holds",
    replenisherL,
    carryInL,
    waterL: toppedUp ? missing : 0,
    evaporationL,
    carryOutL,
    overflowL: Math.max(0, surplus),
    shortfallL: falling ? missing : 0,
    turnoversPerDay,
    warnings: [
      ...(falling
        ? [
            `The tank falls by ${shown(missing * 1000)} mL a day: ${shown(1000 * (evaporationL + carryOutL))} mL leave by evaporation and carry-out, ${shown(1000 * (replenisherL + carryInL))} mL come in. Concentrations are not computed; top up with water (topUp: "water"), cover the tank, or correct the flows.`,
          ]
        : []),
      ...(turnoversPerDay > 5
        ? [
            `${shown(turnoversPerDay)} tank turnovers a day: check that volumeL is in litres and the area in m².`,
          ]
        : []),
    ],
  };
}

function shown(value: number): string {
  return String(Number(value.toPrecision(3)));
}

/** Solution (not vapour) that leaves in a day, L: overflow and carry-out. */
export function solutionOutL(flows: TankFlows): number {
  return flows.overflowL + flows.carryOutL;
}
