import { requireNumber } from "../../input/index.ts";
import { requireAreaPerDay } from "../tank/bath-tank.ts";
import { compartmentsOf, SINKS, steadyFlows } from "./compartments.ts";
import type { LineTankFlows, TankLine } from "./tank-line.ts";
import { afterTransition, transitionOf } from "./transition.ts";

/** A line at one moment. */
export interface LineMoment {
  readonly days: number;
  /** g/L by component, then by tank. */
  readonly concentrationGPerL: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** g that have left so far, by component: to the drain, with the material, lost by itself. */
  readonly leftG: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** g in the tanks and outside, less what was there and came in: rounding only. */
  readonly imbalanceG: Readonly<Record<string, number>>;
}

/** A line of tanks in time. */
export interface LineOverTime {
  readonly flows: readonly LineTankFlows[];
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
 * @returns g/L in each tank, g that have left, and the imbalance of each component (rounding only)
 * @throws InputError for a falling tank, unknown names, or a number out of range
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
  const area = requireAreaPerDay(where, areaM2PerDay);
  const flows = steadyFlows(where, line, area);
  const models = line.components.map((component) => ({
    name: component.name,
    model: compartmentsOf(where, line, flows, area, component),
  }));
  const warnings = new Set<string>();
  const moments = days.map((t, i): LineMoment => {
    requireNumber(where, `days[${i}]`, t, { min: 0, max: 1e6, unit: "days" });
    const states = models.map(({ name, model }) => {
      const grams = afterTransition(transitionOf(model, t), model.startG);
      const inTanks = flows.map((flow, k) => {
        const concentration = (grams[k] ?? 0) / (line.tanks[k]?.volumeL ?? Number.NaN);
        if (concentration < -1e-12 * Math.abs(model.startG[k] ?? 0)) {
          warnings.add(
            `${name} is used up in ${flow.name}: more is asked for than comes in, and the model no longer holds.`,
          );
        }
        return [flow.name, concentration] as const;
      });
      const there = total(model.startG) + t * total(model.inflowG);
      const left = SINKS.map((sink, k) => [sink, grams[flows.length + k] ?? 0] as const);
      return { name, inTanks, left, imbalance: total(grams) - there };
    });
    const by = <T>(pick: (state: (typeof states)[number]) => T) =>
      Object.fromEntries(states.map((state) => [state.name, pick(state)]));
    return {
      days: t,
      concentrationGPerL: by(({ inTanks }) => Object.fromEntries(inTanks)),
      leftG: by(({ left }) => Object.fromEntries(left)),
      imbalanceG: by(({ imbalance }) => imbalance),
    };
  });
  return { flows, moments, warnings: [...warnings] };
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
