import { InputError, requireNumber, requireObject, requireOneOf } from "../../input/index.ts";
import { requireLitres } from "../require-litres.ts";
import { requireVolume } from "../require-volume.ts";

/** Something dissolved in a bath that is followed: developing agent, bromide, alkali, sulfite. */
export interface BathComponent {
  readonly name: string;
  /** g/L in the replenisher, at least 0. */
  readonly replenisherGPerL: number;
  /** g/L in the tank at the start, at least 0; needed where something is followed in time. */
  readonly startGPerL?: number;
  /** g/L in what the material carries in, at least 0; default 0. */
  readonly carryInGPerL?: number;
  /** g that a square metre uses up, at least 0; default 0. */
  readonly consumedGPerM2?: number;
  /** g that a square metre gives off, at least 0; default 0. */
  readonly releasedGPerM2?: number;
  /** Share lost in a day by itself (aerial oxidation), 1/day, at least 0; default 0. */
  readonly lossPerDay?: number;
}

/** A replenished tank; its components share the flows. */
export interface BathTank {
  /** Working volume, L, above 0. */
  readonly volumeL: number;
  /** Replenisher for a square metre, mL/m², at least 0. */
  readonly rateMlPerM2: number;
  /** Liquid the material brings in, mL/m², at least 0; default 0. */
  readonly carryInMlPerM2?: number;
  /** Liquid the material takes out, mL/m², at least 0; default 0. */
  readonly carryOutMlPerM2?: number;
  /** Water lost to the air, mL/day, at least 0; default 0. */
  readonly evaporationMlPerDay?: number;
  /** What makes up a level that would fall: `"none"` (then it is reported) or `"water"`. */
  readonly topUp?: "none" | "water";
  readonly components: readonly BathComponent[];
}

/** A component with nothing left open. */
export interface CheckedComponent {
  readonly name: string;
  readonly replenisher: number;
  readonly start: number | undefined;
  readonly carryIn: number;
  /** Released minus consumed, g/m². */
  readonly netPerM2: number;
  readonly lossPerDay: number;
}

/** A tank with nothing left open; volumes in litres. */
export interface CheckedTank {
  readonly volumeL: number;
  readonly rateLPerM2: number;
  readonly carryInLPerM2: number;
  readonly carryOutLPerM2: number;
  readonly evaporationLPerDay: number;
  readonly topUp: "none" | "water";
  readonly components: readonly CheckedComponent[];
}

/** Lets a tank in if every number is in range and its components have names of their own. */
export function checkedTank(where: string, tank: BathTank): CheckedTank {
  requireObject(where, "tank", tank, "an object with volumeL, rateMlPerM2 and components");
  const perM2 = { min: 0, max: 1e7, unit: "mL/m²" };
  const litres = (argument: "rateMlPerM2" | "carryInMlPerM2" | "carryOutMlPerM2") =>
    requireNumber(
      where,
      argument,
      tank[argument] ?? (argument === "rateMlPerM2" ? tank[argument] : 0),
      perM2,
    ) / 1000;
  if (!Array.isArray(tank.components)) {
    const advice = 'write a list like [{ name: "bromide", replenisherGPerL: 1 }]';
    throw new InputError(where, "components", tank.components, advice);
  }
  const components = tank.components.map((each) => checkedComponent(where, each));
  components.forEach(({ name }, i) => {
    if (components.findIndex((each) => each.name === name) < i) {
      throw new InputError(where, "components.name", name, "write each component once");
    }
  });
  return {
    volumeL: requireLitres(where, "volumeL", tank.volumeL, tank),
    rateLPerM2: litres("rateMlPerM2"),
    carryInLPerM2: litres("carryInMlPerM2"),
    carryOutLPerM2: litres("carryOutMlPerM2"),
    evaporationLPerDay:
      requireVolume(where, "evaporationMlPerDay", tank.evaporationMlPerDay ?? 0, {
        min: 0,
        max: 1e10,
        unit: "mL/day",
      }) / 1000,
    topUp: requireOneOf(where, "topUp", tank.topUp ?? "none", ["none", "water"]),
    components,
  };
}

function checkedComponent(where: string, component: BathComponent): CheckedComponent {
  const { name } = component;
  if (typeof name !== "string" || name.trim() === "") {
    throw new InputError(where, "components.name", name, 'write a name like "bromide"');
  }
  const at = (argument: string, value: unknown, unit: string) =>
    requireNumber(where, `${argument} of ${name}`, value, { min: 0, max: 1e6, unit });
  const { startGPerL } = component;
  return {
    name,
    replenisher: at("replenisherGPerL", component.replenisherGPerL, "g/L"),
    start: startGPerL === undefined ? undefined : at("startGPerL", startGPerL, "g/L"),
    carryIn: at("carryInGPerL", component.carryInGPerL ?? 0, "g/L"),
    netPerM2:
      at("releasedGPerM2", component.releasedGPerM2 ?? 0, "g/m²") -
      at("consumedGPerM2", component.consumedGPerM2 ?? 0, "g/m²"),
    lossPerDay: at("lossPerDay", component.lossPerDay ?? 0, "1/day"),
  };
}

/** Area a day: finite and not negative. */
export function requireAreaPerDay(
  where: string,
  value: unknown,
  argument = "areaM2PerDay",
): number {
  return requireNumber(where, argument, value, { min: 0, max: 1e9, unit: "m²/day" });
}

/** The start of a component, or an error that says what to write. */
export function requireStart(where: string, component: CheckedComponent): number {
  if (component.start !== undefined) return component.start;
  const advice = "write what the tank holds at the start, g/L (of a fresh tank, see freshTank)";
  throw new InputError(where, `startGPerL of ${component.name}`, undefined, advice);
}
