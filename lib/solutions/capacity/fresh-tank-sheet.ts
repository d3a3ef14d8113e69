import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { cautionsFor } from "../cautions/cautions-for.ts";
import { ADDITIVE_VOLUMES } from "../dilution/dilute.ts";
import { requireVolumeMl } from "../dilution/require-volume.ts";
import type { MixingSheet, MixingStep } from "../mixing-sheet.ts";

/** What is in the replenisher and the starter, for the fresh tank's concentrations. */
export interface TankComponent {
  readonly name: string;
  /** g/L in the replenisher. */
  readonly replenisherGPerL: number;
  /** g/L in the starter; default 0. */
  readonly starterGPerL?: number;
}

/** The mixing sheet of a fresh tank and the concentrations it starts with. */
export interface FreshTankSheet extends MixingSheet {
  readonly concentrations: readonly { readonly name: string; readonly gPerL: number }[];
}

/**
 * A fresh tank from replenisher, starter and water, as an arithmetic mix: the starter brings what a
 * worked tank has and a replenisher lacks.
 *
 * V_r = r·V / 1000, V_s = s·V / 1000, water to V; c = (r·c_r + s·c_s) / 1000
 *
 * @param tank.title heading of the sheet
 * @param tank.tankMl volume of the tank, mL, above 0
 * @param tank.replenisherMlPerL mL of replenisher in a litre of tank, above 0
 * @param tank.starterMlPerL mL of starter in a litre of tank, at least 0
 * @param tank.names names of the two, as in the price list; default `"replenisher"`, `"starter"`
 * @param tank.components what they contain, g/L, for the concentrations of the tank
 * @param tank.substances further names, for the cautions
 * @returns a mixing sheet whose amounts sum to the tank, with concentrations in g/L
 * @throws InputError if replenisher and starter together exceed the tank
 *
 * @example
 * freshTankSheet({ title: "Developer tank", tankMl: 12000, replenisherMlPerL: 800, starterMlPerL: 40 }).steps.map((step) => step.amount) // => [1440, 9600, 480, 480]
 *
 * Source: mass balance with additive volumes; the parts per litre come from your data sheet.
 */
export function freshTankSheet(tank: {
  readonly title: string;
  readonly tankMl: number;
  readonly replenisherMlPerL: number;
  readonly starterMlPerL: number;
  readonly names?: readonly [replenisher: string, starter: string];
  readonly components?: readonly TankComponent[];
  readonly substances?: readonly string[];
}): FreshTankSheet {
  const where = "freshTankSheet";
  requireObject(where, "tank", tank, "an object with title, tankMl, replenisherMlPerL, …");
  const volume = requireVolumeMl(where, "tankMl", tank.tankMl);
  const r = requireNumber(where, "replenisherMlPerL", tank.replenisherMlPerL, {
    above: 0,
    max: 1000,
    unit: "mL per litre",
  });
  const s = requireNumber(where, "starterMlPerL", tank.starterMlPerL, {
    min: 0,
    max: 1000,
    unit: "mL per litre",
  });
  if (r + s > 1000) {
    const advice = `write at most ${1000 - r}; replenisher and starter together fill the litre`;
    throw new InputError(where, "starterMlPerL", s, advice);
  }
  const [replenisher, starter] = tank.names ?? ["replenisher", "starter"];
  const waterMl = (volume * (1000 - r - s)) / 1000;
  const replenisherMl = (volume * r) / 1000;
  const starterMl = (volume * s) / 1000;
  const lines = [
    { what: "water", amount: 0.75 * waterMl, note: "most of it first" },
    { what: replenisher, amount: replenisherMl, note: "stir until even" },
    { what: starter, amount: starterMl, note: "last, never into undiluted concentrate" },
    { what: "water to the working level", amount: 0.25 * waterMl, note: "then circulate" },
  ].filter(({ amount }) => amount > 0);
  const steps = lines.map((line, i): MixingStep => ({ order: i + 1, unit: "mL", ...line }));
  return {
    title: tank.title,
    volumeMl: volume,
    steps,
    concentrations: (tank.components ?? []).map((component) => concentration(component, r, s)),
    cost: null,
    assumptions: [ADDITIVE_VOLUMES],
    warnings: s === 0 ? ["no starter: a fresh tank without it works too strongly at first"] : [],
    cautions: cautionsFor([replenisher, starter, ...(tank.substances ?? [])]),
  };
}

function concentration(component: TankComponent, r: number, s: number) {
  const where = "freshTankSheet";
  const bounds = { min: 0, max: 1e6, unit: "g/L" };
  const { name } = component;
  const inReplenisher = requireNumber(
    where,
    `replenisherGPerL of ${name}`,
    component.replenisherGPerL,
    bounds,
  );
  const starterGPerL = component.starterGPerL ?? 0;
  const inStarter = requireNumber(where, `starterGPerL of ${name}`, starterGPerL, bounds);
  return { name, gPerL: (r * inReplenisher + s * inStarter) / 1000 };
}
