import tankData from "../../../data/session/tanks.json" with { type: "json" };
import { InputError, requireNumber, requireOneOf } from "../../input/index.ts";
import { requireList, requireYesNo } from "./require-shape.ts";

/** A spiral, a holder or a pile of sheets: what goes into a tank or tray as one. */
export interface TankSpiral {
  readonly name: string;
  /** Formats it takes, as named in `photoFormats`. */
  readonly formats: readonly string[];
  readonly heightMm: number;
  /** Liquid that just covers one such spiral, mL. */
  readonly coverMl: number;
  /** Films on one spiral: 1, or 2 where two short rolls go on one; sheets in a holder or pile. */
  readonly filmsPerSpiral: number;
}

/** A closed tank, or a row of open trays, described by what it holds. */
export interface DevelopingTank {
  readonly id: string;
  /** Open trays for sheets, worked in the dark: the sheets move, not the liquid. */
  readonly open?: boolean;
  /** Usable height for spirals stacked on the column, mm. */
  readonly columnHeightMm: number;
  /** Most liquid it takes with the spirals in, mL. */
  readonly fullMl: number;
  /** Heat capacity of tank, spirals and film as millilitres of water. */
  readonly heatWaterEquivalentMl: number;
  /** Rate at which a full tank nears the room's temperature, 1/min. */
  readonly coolingPerMin: number;
  /** The same standing in a water bath, 1/min. */
  readonly bathPerMin: number;
  readonly spirals: readonly TankSpiral[];
}

/**
 * Ordinary tanks and trays by name. Their volumes and heat figures are common practice or computed:
 * measure your own and give it as an object.
 *
 * @example
 * developingTanks.map((tank) => tank.id)[1] // => "plastic, 2 reels"
 *
 * Source: data/session/tanks.json.
 */
export const developingTanks: readonly DevelopingTank[] = tankData.tanks;

/**
 * A tank by name, or one's own, checked.
 *
 * @param tank name of one of `developingTanks`, or a tank: heights in mm and volumes in mL greater
 *   than 0, rates per minute from 0 to 1
 * @returns the tank
 * @throws InputError for an unknown name or a tank whose figures cannot be
 *
 * @example
 * developingTank("plastic, 2 reels").fullMl // => 650
 */
export function developingTank(tank: string | DevelopingTank): DevelopingTank {
  const where = "developingTank";
  const ids = developingTanks.map((each) => each.id);
  if (typeof tank === "string") {
    const id = requireOneOf(where, "tank", tank, ids);
    const found = developingTanks.find((each) => each.id === id);
    if (found !== undefined) return found;
  }
  if (typeof tank !== "object" || tank === null || !Array.isArray(tank.spirals)) {
    const advice = `write a tank's name (${ids.map((id) => `"${id}"`).join(", ")}) or a tank with its spirals`;
    throw new InputError(where, "tank", tank, advice);
  }
  requireYesNo(where, "open", tank.open);
  requireNumber(where, "columnHeightMm", tank.columnHeightMm, { above: 0, unit: "mm" });
  requireNumber(where, "fullMl", tank.fullMl, { above: 0, unit: "mL" });
  requireNumber(where, "heatWaterEquivalentMl", tank.heatWaterEquivalentMl, { min: 0 });
  requireNumber(where, "coolingPerMin", tank.coolingPerMin, { min: 0, max: 1, unit: "1/min" });
  requireNumber(where, "bathPerMin", tank.bathPerMin, { min: 0, max: 1, unit: "1/min" });
  for (const [i, spiral] of tank.spirals.entries()) {
    requireSpiral(where, `spirals[${i}]`, spiral);
  }
  return tank;
}

/** Lets a spiral in. */
export function requireSpiral(where: string, at: string, spiral: TankSpiral): void {
  if (typeof spiral?.name !== "string" || spiral.name.trim() === "") {
    throw new InputError(where, `${at}.name`, spiral?.name, 'write a name such as "35 mm spiral"');
  }
  requireList(where, `${at}.formats`, spiral.formats ?? null, '["135-36", "135-24"]');
  requireNumber(where, `${at}.heightMm`, spiral.heightMm, { above: 0, unit: "mm" });
  requireNumber(where, `${at}.coverMl`, spiral.coverMl, { above: 0, unit: "mL" });
  requireNumber(where, `${at}.filmsPerSpiral`, spiral.filmsPerSpiral, { min: 1, whole: true });
}
