import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { type FreshTankSheet, freshTankSheet } from "../../solutions/index.ts";
import { type BathTank, checkedTank } from "./bath-tank.ts";

/** A tank as it is when freshly mixed, and the sheet to mix it by. */
export interface FreshTank {
  /** The same tank, with `startGPerL` of every component. */
  readonly tank: BathTank;
  readonly sheet: FreshTankSheet;
}

/**
 * A fresh tank from replenisher, starter and water: what each component starts with.
 *
 * c_0 = (r·c_r + s·c_s)/1000 with r and s in mL per litre of tank
 *
 * @param tank see {@link BathTank}; starts it has are replaced
 * @param mix.replenisherMlPerL mL of replenisher in a litre of tank, above 0
 * @param mix.starterMlPerL mL of starter in a litre of tank, at least 0
 * @param mix.starterGPerL what the starter contains, g/L by name of the component; 0 unless said
 * @param mix.title heading of the sheet; default "Fresh tank"
 * @returns the tank with its starts, ready for `tankOverDays`, and a mixing sheet with cautions
 * @throws InputError for a component that the tank does not have, or if replenisher and starter exceed
 *   the litre
 *
 * @example
 * const tank = { volumeL: 20, rateMlPerM2: 600, components: [{ name: "bromide", replenisherGPerL: 0.4 }] };
 * freshTank(tank, { replenisherMlPerL: 800, starterMlPerL: 30, starterGPerL: { bromide: 30 } }).tank.components[0].startGPerL // => 1.22
 *
 * Source: mass balance with additive volumes; the parts per litre come from your data sheet.
 */
export function freshTank(
  tank: BathTank,
  mix: {
    readonly replenisherMlPerL: number;
    readonly starterMlPerL: number;
    readonly starterGPerL?: Readonly<Record<string, number>>;
    readonly title?: string;
  },
): FreshTank {
  const where = "freshTank";
  requireObject(where, "tank", tank, "an object with volumeL, rateMlPerM2 and components");
  requireObject(where, "mix", mix, "an object with replenisherMlPerL and starterMlPerL");
  checkedTank(where, tank);
  const names = tank.components.map(({ name }) => name);
  const starter = mix.starterGPerL ?? {};
  for (const name of Object.keys(starter)) {
    if (names.includes(name)) continue;
    const advice = `write one of ${names.map((each) => `"${each}"`).join(", ")}`;
    throw new InputError(where, "starterGPerL", name, advice);
  }
  const sheet = freshTankSheet({
    title: mix.title ?? "Fresh tank",
    tankMl: tank.volumeL * 1000,
    replenisherMlPerL: mix.replenisherMlPerL,
    starterMlPerL: mix.starterMlPerL,
    components: tank.components.map(({ name, replenisherGPerL }) => ({
      name,
      replenisherGPerL,
      starterGPerL: starter[name] ?? 0,
    })),
    substances: names,
  });
  const components = tank.components.map((component, i) => ({
    ...component,
    startGPerL: sheet.concentrations[i]?.gPerL ?? 0,
  }));
  return { tank: { ...tank, components }, sheet };
}

/**
 * Starter that gives a fresh tank the concentration of a worked one, the rest replenisher.
 *
 * s = 1000 · (c − c_r)/(c_s − c_r)
 *
 * @param wanted.aimGPerL what a worked tank has (see `tankSteadyState`), g/L, at least 0
 * @param wanted.replenisherGPerL g/L in the replenisher, at least 0
 * @param wanted.starterGPerL g/L in the starter, at least 0
 * @returns mL of starter in a litre of tank; the other 1000 − s are replenisher
 * @throws InputError if no mix of the two has the aim
 *
 * @example
 * starterForAim({ aimGPerL: 1.24, replenisherGPerL: 0.4, starterGPerL: 28.4 }) // => 30
 *
 * Source: mass balance with additive volumes.
 */
export function starterForAim(wanted: {
  readonly aimGPerL: number;
  readonly replenisherGPerL: number;
  readonly starterGPerL: number;
}): number {
  const where = "starterForAim";
  requireObject(
    where,
    "wanted",
    wanted,
    "an object with aimGPerL, replenisherGPerL and starterGPerL",
  );
  const bounds = { min: 0, max: 1e6, unit: "g/L" };
  const aim = requireNumber(where, "aimGPerL", wanted.aimGPerL, bounds);
  const inReplenisher = requireNumber(where, "replenisherGPerL", wanted.replenisherGPerL, bounds);
  const inStarter = requireNumber(where, "starterGPerL", wanted.starterGPerL, bounds);
  const share = aim === inReplenisher ? 0 : (aim - inReplenisher) / (inStarter - inReplenisher);
  if (Number.isFinite(share) && share >= 0 && share <= 1) return 1000 * share;
  const [low, high] = [Math.min(inReplenisher, inStarter), Math.max(inReplenisher, inStarter)];
  const advice = `write an aim from ${low} to ${high} g/L, between replenisher and starter`;
  throw new InputError(where, "aimGPerL", aim, advice);
}
