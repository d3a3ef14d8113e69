import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { requireLitres } from "../require-litres.ts";
import { requireAreaPerDay } from "../tank/bath-tank.ts";
import type { LineTankFlows, TankLine } from "./tank-line.ts";

/**
 * The flows of a line of tanks at a load: carry-over from tank to tank, feeds, and overflows that run
 * to the drain or into another tank.
 *
 * overflow_i = carry-in + feed + overflows that run in − evaporation − carry-out, tank by tank
 *
 * @param line see {@link TankLine}
 * @param areaM2PerDay load, m²/day, at least 0
 * @returns flows in L/day, one entry a tank; a tank with a negative overflow is falling
 * @throws InputError for a number out of range, a name that occurs twice, an overflow to a tank that
 *   is not there, or overflows that run in a circle
 *
 * @example
 * const tanks = [{ name: "wash 1", volumeL: 20, carryOverMlPerM2: 40 }, { name: "wash 2", volumeL: 20, carryOverMlPerM2: 40, rateMlPerM2: 400, overflowTo: "wash 1" }];
 * lineFlows({ tanks, components: [], enteringMlPerM2: 40 }, 10).map((tank) => tank.overflowL) // => [4, 4]
 *
 * Source: volume balance.
 */
export function lineFlows(line: TankLine, areaM2PerDay: number): readonly LineTankFlows[] {
  const where = "lineFlows";
  requireObject(where, "line", line, "an object with tanks and components");
  const area = requireAreaPerDay(where, areaM2PerDay);
  const { tanks } = line;
  if (!Array.isArray(tanks) || tanks.length === 0) {
    throw new InputError(where, "tanks", tanks, "write at least one tank");
  }
  const names = tanks.map(({ name }) => name);
  const mlOf = (what: string, value: number | undefined, unit: string) =>
    requireNumber(where, what, value ?? 0, { min: 0, max: 1e12, unit }) / 1000;
  let carried = area * mlOf("enteringMlPerM2", line.enteringMlPerM2, "mL/m²");
  const fed = tanks.map((tank, i) => {
    const { name } = tank;
    requireLitres(where, `volumeL of ${name}`, tank.volumeL, tank);
    if (names.indexOf(name) < i)
      throw new InputError(where, "tanks.name", name, "write each name once");
    requireNumber(where, `carryOverMlPerM2 of ${name}`, tank.carryOverMlPerM2, {
      min: 0,
      max: 1e7,
      unit: "mL/m²",
    });
    const carryInL = carried;
    carried = area * mlOf(`carryOverMlPerM2 of ${name}`, tank.carryOverMlPerM2, "mL/m²");
    return {
      name,
      carryInL,
      feedL:
        area * mlOf(`rateMlPerM2 of ${name}`, tank.rateMlPerM2, "mL/m²") +
        mlOf(`feedMlPerDay of ${name}`, tank.feedMlPerDay, "mL/day"),
      evaporationL: mlOf(`evaporationMlPerDay of ${name}`, tank.evaporationMlPerDay, "mL/day"),
      carryOutL: carried,
      overflowTo: targetOf(tank.overflowTo ?? "drain", name, names),
    };
  });
  const overflows = new Map<string, number>();
  const overflowOf = (name: string, path: readonly string[]): number => {
    if (path.includes(name)) {
      const circle = [...path.slice(path.indexOf(name)), name].join(" → ");
      throw new InputError(where, "overflowTo", circle, "let one of these overflow to the drain");
    }
    const known = overflows.get(name);
    if (known !== undefined) return known;
    const tank = fed.find((each) => each.name === name);
    if (tank === undefined) return 0;
    const into = fed
      .filter(({ overflowTo }) => overflowTo === name)
      .reduce((sum, each) => sum + Math.max(0, overflowOf(each.name, [...path, name])), 0);
    const inL = tank.carryInL + tank.feedL + into;
    const outL = tank.evaporationL + tank.carryOutL;
    // Equal flows leave a rounding error, not an overflow.
    const overflowL = Math.abs(inL - outL) <= 1e-12 * (inL + outL) ? 0 : inL - outL;
    overflows.set(name, overflowL);
    return overflowL;
  };
  return fed.map((tank) => {
    const overflowL = overflowOf(tank.name, []);
    const fromTanksL = fed
      .filter(({ overflowTo }) => overflowTo === tank.name)
      .reduce((sum, each) => sum + Math.max(0, overflowOf(each.name, [])), 0);
    return { ...tank, fromTanksL, overflowL };
  });
}

function targetOf(target: string, name: string, names: readonly string[]): string {
  if (target === "drain" || (target !== name && names.includes(target))) return target;
  const others = names.filter((each) => each !== name).map((each) => `"${each}"`);
  const advice = `write "drain" or another tank of the line: ${others.join(", ") || "there is none"}`;
  throw new InputError("lineFlows", `overflowTo of ${name}`, target, advice);
}
