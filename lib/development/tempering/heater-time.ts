import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { shown } from "../rate/shown.ts";
import { liquidHeat, requireLiquidTemperature, type VesselPart, vesselHeat } from "./heat-parts.ts";

/** How long a heater takes. */
export interface HeaterTime {
  readonly minutes: number;
  readonly heatCapacityJPerK: number;
  /** Temperature that the heater can hold in the end, °C; without losses none is given. */
  readonly highestC?: number;
  readonly assumptions: readonly string[];
}

/**
 * How long a heater takes to bring a bath to its temperature.
 *
 * Without loss t = C·(T − T0)/P. With a loss of G watts per kelvin to a room at T_r:
 * t = −(C/G)·ln[ (P/G − (T − T_r)) / (P/G − (T0 − T_r)) ]
 *
 * @param input.volumeMl volume of the bath, mL, greater than 0
 * @param input.fromC @param input.toC temperatures, °C, `toC` above `fromC`
 * @param input.powerW power of the heater, W, greater than 0
 * @param input.lossWPerK heat loss to the room, W/K, default 0
 * @param input.roomC temperature of the room, °C, default 20; used only with a loss
 * @param input.vessels tank and racks: mass in g, °C, material or specific heat
 * @returns minutes
 * @throws InputError if the heater cannot reach the temperature against the loss
 *
 * @example
 * heaterTime({ volumeMl: 20000, fromC: 20, toC: 38, powerW: 1500 }).minutes // => 16.72
 *
 * Source: conservation of energy.
 */
export function heaterTime(input: {
  readonly volumeMl: number;
  readonly fromC: number;
  readonly toC: number;
  readonly powerW: number;
  readonly lossWPerK?: number;
  readonly roomC?: number;
  readonly vessels?: readonly VesselPart[];
}): HeaterTime {
  const where = "heaterTime";
  requireObject(where, "input", input, "an object with volumeMl, fromC, toC, …");
  const volumeMl = requireNumber(where, "volumeMl", input.volumeMl, { above: 0, unit: "mL" });
  const from = requireLiquidTemperature(where, "fromC", input.fromC);
  const to = requireLiquidTemperature(where, "toC", input.toC);
  if (to <= from) {
    throw new InputError(where, "toC", to, `write a temperature above fromC (${from} °C)`);
  }
  const power = requireNumber(where, "powerW", input.powerW, { above: 0, unit: "W" });
  const loss = requireNumber(where, "lossWPerK", input.lossWPerK ?? 0, { min: 0, unit: "W/K" });
  const room = requireLiquidTemperature(where, "roomC", input.roomC ?? 20);
  const capacity = [
    liquidHeat(where, "water", { volumeMl, temperatureC: from }),
    ...(input.vessels ?? []).map((each, i) => vesselHeat(where, `vessels[${i}]`, each)),
  ].reduce((sum, each) => sum + each.heatCapacityJPerK, 0);
  const assumptions = [
    "the bath is mixed, and the vessels keep step with the liquid",
    loss === 0 ? "no heat is lost to the room" : `${shown(loss)} W are lost for each degree`,
  ];
  if (loss === 0) {
    const minutes = (capacity * (to - from)) / power / 60;
    return { minutes, heatCapacityJPerK: capacity, assumptions };
  }
  const highestC = room + power / loss;
  if (highestC <= to) {
    const advice = `write a temperature below ${shown(highestC)} °C, the highest that ${shown(power)} W can hold against the loss; insulate the tank or use a stronger heater`;
    throw new InputError(where, "toC", to, advice);
  }
  const minutes = (-capacity / loss / 60) * Math.log1p(-(to - from) / (highestC - from));
  return { minutes, heatCapacityJPerK: capacity, highestC, assumptions };
}
