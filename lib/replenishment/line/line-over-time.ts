import { requireEntries, requireNumber } from "../../input/index.ts";
import { requireAreaPerDay } from "../tank/bath-tank.ts";
import { compartmentsOf, requireTankNames, SINKS } from "./compartments.ts";
import { type FallingTank, fallingInWords, fallingTanks } from "./falling-tanks.ts";
import { lineFlows } from "./line-flows.ts";
import type { LineTankFlows, TankLine } from "./tank-line.ts";
import { afterTransition, transitionOf } from "./transition.ts";

/** A line at one moment. */
export interface LineMoment {
  readonly days: number;
  /** g/L by component, then by tank; null once the component is used up in one of them. */
  readonly concentrationGPerL: Readonly<Record<string, Readonly<Record<string, number | null>>>>;
  /** g that have left so far, by component: to the drain, with the material, lost by itself; empty then. */
  readonly leftG: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** g in the tanks and outside, less what was there and came in: rounding only. */
  readonly imbalanceG: Readonly<Record<string, number>>;
}

/** A line of tanks in time. */
export interface LineOverTime {
  readonly flows: readonly LineTankFlows[];
  /** Tanks that lose more than they gain; with any of them no moment is computed. */
  readonly falling: readonly FallingTank[];
  /** In the order asked for; none if a tank falls. */
  readonly moments: readonly LineMoment[];
  readonly warnings: readonly string[];
}

/**
 * Concentrations along a line of tanks with carry-over and overflows, from the start at a constant
 * load: a linear compartment model solved exactly by the matrix exponential.
 *
 * dm/dt = A·m + b, m(t) = e^(A·t)·m_0 + ∫ e^(A·(t − s))·b ds, in one exponential of the bordered matrix
 *
 * @param line see {@link TankLine}; starts and feeds in g/L
 * @param areaM2PerDay load, m²/day, at least 0
 * @param days moments, days from the start, each at least 0
 * @returns g/L in each tank, g that have left, and the imbalance of each component (rounding only); no
 *   moments if a tank falls, which is reported
 * @throws InputError for unknown names, or a number out of range
 *
 * @example
 * const tanks = [{ name: "fixer", volumeL: 10, rateMlPerM2: 1000, carryOverMlPerM2: 50 }, { name: "wash", volumeL: 10, feedMlPerDay: 100000, carryOverMlPerM2: 50 }];
 * const line = { tanks, enteringMlPerM2: 50, components: [{ name: "silver", inTanks: { fixer: { releasedGPerM2: 4 } } }] };
 * tankLineOverTime(line, 5, [1]).moments[0].concentrationGPerL.silver // => { fixer: 1.55598, wash: 0.0035697 }
 *
 * Source: J. A. Jacquez, Compartmental Analysis in Biology and Medicine, 3rd ed. (1996), chapter 3 (from
 * memory); the exponential as `matrixExponential`.
 */
export function tankLineOverTime(
  line: TankLine,
  areaM2PerDay: number,
  days: readonly number[],
): LineOverTime {
  const where = "tankLineOverTime";
  requireEntries(where, "days", days, "a list of numbers");
  const area = requireAreaPerDay(where, areaM2PerDay);
  const flows = lineFlows(line, area);
  requireTankNames(where, line, flows);
  const falling = fallingTanks(flows);
  const warnings = falling.map(fallingInWords);
  const models = line.components.map((component) => ({
    name: component.name,
    model: compartmentsOf(where, line, flows, area, component),
  }));
  const times = days.map((t, i) =>
    requireNumber(where, `days[${i}]`, t, { min: 0, max: 1e6, unit: "days" }),
  );
  if (falling.length > 0) return { flows, falling, moments: [], warnings };
  const inOrder = [...new Set(times)].toSorted((a, b) => a - b);
  const columns = models.map(({ name, model }) => {
    const states = new Map<number, ComponentState>();
    let usedUp = false;
    for (const t of inOrder) {
      const grams = afterTransition(transitionOf(model, t), model.startG);
      const empty = usedUp ? -1 : emptyTank(grams, model.startG, flows.length);
      if (empty >= 0) {
        usedUp = true;
        const tank = flows[empty]?.name;
        warnings.push(
          `${name} is used up in ${tank} by day ${t}: more is asked for than comes in, and it is not computed from there on.`,
        );
      }
      const gPerL = (k: number) => (grams[k] ?? 0) / (line.tanks[k]?.volumeL ?? Number.NaN);
      states.set(t, {
        inTanks: Object.fromEntries(
          flows.map(({ name: tank }, k) => [tank, usedUp ? null : gPerL(k)]),
        ),
        left: usedUp
          ? {}
          : Object.fromEntries(SINKS.map((sink, k) => [sink, grams[flows.length + k] ?? 0])),
        imbalance: total(grams) - total(model.startG) - t * total(model.inflowG),
      });
    }
    return { name, states };
  });
  const moments = times.map((t): LineMoment => {
    const by = <T>(pick: (state: ComponentState | undefined) => T) =>
      Object.fromEntries(columns.map(({ name, states }) => [name, pick(states.get(t))]));
    return {
      days: t,
      concentrationGPerL: by((state) => state?.inTanks ?? {}),
      leftG: by((state) => state?.left ?? {}),
      imbalanceG: by((state) => state?.imbalance ?? Number.NaN),
    };
  });
  return { flows, falling, moments, warnings };
}

/** One component at one moment. */
interface ComponentState {
  readonly inTanks: Readonly<Record<string, number | null>>;
  readonly left: Readonly<Record<string, number>>;
  readonly imbalance: number;
}

/** The first tank that would hold less than nothing, rounding apart; -1 if none does. */
function emptyTank(grams: readonly number[], startG: readonly number[], tanks: number): number {
  const most = Math.max(0, ...startG, ...grams.slice(0, tanks));
  return grams.slice(0, tanks).findIndex((gram) => gram < -1e-12 * most);
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
