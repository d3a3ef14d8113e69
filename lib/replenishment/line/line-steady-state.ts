import { LuDecomposition, Matrix } from "ml-matrix";
import { requireAreaPerDay } from "../tank/bath-tank.ts";
import { type Compartments, compartmentsOf, requireTankNames, SINKS } from "./compartments.ts";
import { type FallingTank, fallingInWords, fallingTanks } from "./falling-tanks.ts";
import { lineFlows } from "./line-flows.ts";
import type { LineTankFlows, TankLine } from "./tank-line.ts";

/** Where a line settles. */
export interface LineSteadyState {
  readonly flows: readonly LineTankFlows[];
  /** Tanks that lose more than they gain; with any of them nothing settles. */
  readonly falling: readonly FallingTank[];
  /** g/L by component, then by tank; null where it does not settle. */
  readonly concentrationGPerL: Readonly<Record<string, Readonly<Record<string, number | null>>>>;
  /** g that leave in a day, by component: to the drain, with the material, lost by itself; empty then. */
  readonly leavesGPerDay: Readonly<Record<string, Readonly<Record<string, number>>>>;
  readonly warnings: readonly string[];
}

/**
 * Where a line of tanks with carry-over and overflows settles at a constant load.
 *
 * 0 = A·m + b over the tanks
 *
 * @param line see {@link TankLine}
 * @param areaM2PerDay load, m²/day, at least 0
 * @returns g/L in each tank and what leaves in a day; null where a tank falls, nothing flows out or more
 *   is used up than comes in, with a warning
 * @throws InputError for unknown names, or a number out of range
 *
 * @example
 * const tanks = [{ name: "wash 1", volumeL: 20, carryOverMlPerM2: 40 }, { name: "wash 2", volumeL: 20, carryOverMlPerM2: 40, rateMlPerM2: 400, overflowTo: "wash 1" }];
 * const line = { tanks, enteringMlPerM2: 40, components: [{ name: "thiosulfate", enteringGPerL: 111, inTanks: {} }] };
 * tankLineSteadyState(line, 10).concentrationGPerL.thiosulfate // => { "wash 1": 11, "wash 2": 1 }
 *
 * Source: mass balance of each tank.
 */
export function tankLineSteadyState(line: TankLine, areaM2PerDay: number): LineSteadyState {
  const where = "tankLineSteadyState";
  const area = requireAreaPerDay(where, areaM2PerDay);
  const flows = lineFlows(line, area);
  requireTankNames(where, line, flows);
  const falling = fallingTanks(flows);
  const warnings: string[] = falling.map(fallingInWords);
  const states = line.components.map((component) => {
    const { name } = component;
    const model = compartmentsOf(where, line, flows, area, component);
    const grams = falling.length > 0 ? undefined : settled(model, flows.length);
    if (grams === undefined && falling.length === 0) {
      warnings.push(`${name}: nothing leaves one of the tanks, so it never settles.`);
    }
    const starved = grams?.some((value) => value < 0) ?? false;
    if (starved) warnings.push(`${name}: in one of the tanks more is used up than comes in.`);
    const inTanks = flows.map((flow, i) => {
      const value = grams?.[i];
      const volumeL = line.tanks[i]?.volumeL ?? Number.NaN;
      return [flow.name, value === undefined || value < 0 ? null : value / volumeL] as const;
    });
    const rests = grams === undefined || starved ? [] : grams;
    const leaves = (rests.length > 0 ? SINKS : []).map((sink, k) => {
      const row = model.matrix[flows.length + k] ?? [];
      return [sink, rests.reduce((sum, m, i) => sum + m * (row[i] ?? 0), 0)] as const;
    });
    return { name, inTanks, leaves };
  });
  return {
    flows,
    falling,
    concentrationGPerL: Object.fromEntries(
      states.map(({ name, inTanks }) => [name, Object.fromEntries(inTanks)]),
    ),
    leavesGPerDay: Object.fromEntries(
      states.map(({ name, leaves }) => [name, Object.fromEntries(leaves)]),
    ),
    warnings,
  };
}

/** Grams in each tank at rest; undefined if from one of the tanks no way leads out. */
function settled({ matrix, inflowG }: Compartments, tanks: number): number[] | undefined {
  const outside = (to: number) => to >= tanks;
  // Tanks from which something gets out, directly or by way of others.
  const open = new Set<number>();
  for (let round = 0; round < tanks; round++) {
    for (let from = 0; from < tanks; from++) {
      const goes = matrix.some(
        (row, to) => to !== from && (row[from] ?? 0) > 0 && (outside(to) || open.has(to)),
      );
      if (goes) open.add(from);
    }
  }
  if (open.size < tanks) return undefined;
  const lu = new LuDecomposition(
    new Matrix(matrix.slice(0, tanks).map((row) => row.slice(0, tanks))),
  );
  if (lu.isSingular()) return undefined;
  const b = Matrix.columnVector(inflowG.slice(0, tanks).map((value) => -value));
  const grams = lu.solve(b).to1DArray();
  // A way out so narrow that no number holds what piles up before it.
  return grams.every(Number.isFinite) ? grams : undefined;
}
