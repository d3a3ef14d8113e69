import { Matrix, solve } from "ml-matrix";
import { requireAreaPerDay } from "../tank/bath-tank.ts";
import { type Compartments, compartmentsOf, SINKS, steadyFlows } from "./compartments.ts";
import type { LineTankFlows, TankLine } from "./tank-line.ts";

/** Where a line settles. */
export interface LineSteadyState {
  readonly flows: readonly LineTankFlows[];
  /** g/L by component, then by tank; null for a tank where it does not settle. */
  readonly concentrationGPerL: Readonly<Record<string, Readonly<Record<string, number | null>>>>;
  /** g that leave in a day, by component: to the drain, with the material, lost by itself. */
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
 * @returns g/L in each tank and what leaves in a day; null where nothing flows out, with a warning
 * @throws InputError for a falling tank, unknown names, or a number out of range
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
  const flows = steadyFlows(where, line, area);
  const warnings: string[] = [];
  const states = line.components.map((component) => {
    const model = compartmentsOf(where, line, flows, area, component);
    const grams = settled(model, flows.length);
    if (grams === undefined) {
      warnings.push(`${component.name}: nothing leaves one of the tanks, so it never settles.`);
    } else if (grams.some((value) => value < 0)) {
      warnings.push(`${component.name}: in one of the tanks more is used up than comes in.`);
    }
    const inTanks = flows.map(({ name }, i) => {
      const value = grams?.[i];
      const volumeL = line.tanks[i]?.volumeL ?? Number.NaN;
      return [name, value === undefined || value < 0 ? null : value / volumeL] as const;
    });
    const leaves = SINKS.map((sink, k) => {
      const row = model.matrix[flows.length + k] ?? [];
      return [sink, (grams ?? []).reduce((sum, m, i) => sum + m * (row[i] ?? 0), 0)] as const;
    });
    return { name: component.name, inTanks, leaves };
  });
  return {
    flows,
    concentrationGPerL: Object.fromEntries(
      states.map(({ name, inTanks }) => [name, Object.fromEntries(inTanks)]),
    ),
    leavesGPerDay: Object.fromEntries(
      states.map(({ name, leaves }) => [name, Object.fromEntries(leaves)]),
    ),
    warnings,
  };
}

/** Grams in each tank at rest; undefined if a tank has no way out. */
function settled({ matrix, inflowG }: Compartments, tanks: number): number[] | undefined {
  const a = matrix.slice(0, tanks).map((row) => row.slice(0, tanks));
  if (a.some((row, i) => row[i] === 0)) return undefined;
  const b = inflowG.slice(0, tanks).map((value) => -value);
  return solve(new Matrix(a), Matrix.columnVector(b)).to1DArray();
}
