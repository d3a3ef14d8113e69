import { InputError, requireNumber, requireObject, requireOneOf } from "../../input/index.ts";
import { requireLitres } from "../require-litres.ts";
import { type CorrectedTank, type CorrectionStep, correctBath } from "./tank-correction.ts";

/** How much to add, and what it does to everything in the bath. */
export interface CorrectionForAim {
  /** L of each addition, measured before the first. */
  readonly litres: number;
  readonly step: CorrectionStep;
  readonly corrected: CorrectedTank;
}

/**
 * The litres of water, replenisher or starter that bring one component of a bath to its aim, and what
 * they do to the others.
 *
 * dump first: f = 1 − x^(1/n), overflow: f = x^(−1/n) − 1, with x = (aim − c_add)/(c − c_add) and
 * litres = f · V for each of n additions
 *
 * @param bath.volumeL the full tank, L, above 0
 * @param bath.gPerL concentrations before, g/L by name, each at least 0
 * @param wanted.component name of the component to bring to its aim
 * @param wanted.aimGPerL its aim, g/L, at least 0
 * @param wanted.add what is poured in: "water", "replenisher", "starter" or a name of your own
 * @param wanted.addGPerL what it contains, g/L by name; what is not named counts as 0
 * @param wanted.how `"dump first"` or `"overflow"`
 * @param wanted.times number of equal additions, a whole number from 1; default 1
 * @returns litres of each addition, the step for `correctBath`, and every concentration before and after
 * @throws InputError if the aim does not lie between the bath and what is added, or one addition would
 *   be more than the tank holds
 *
 * @example
 * correctionForAim({ volumeL: 20, gPerL: { bromide: 1.5 } }, { component: "bromide", aimGPerL: 1.2, add: "replenisher", addGPerL: { bromide: 0.3 }, how: "dump first" }).litres // => 5
 *
 * Source: the mass balance of `correctBath`, solved for what is added.
 */
export function correctionForAim(
  bath: { readonly volumeL: number; readonly gPerL: Readonly<Record<string, number>> },
  wanted: {
    readonly component: string;
    readonly aimGPerL: number;
    readonly add: string;
    readonly addGPerL?: Readonly<Record<string, number>>;
    readonly how: CorrectionStep["how"];
    readonly times?: number;
  },
): CorrectionForAim {
  const where = "correctionForAim";
  requireObject(where, "bath", bath, "an object with volumeL and gPerL");
  requireObject(where, "gPerL", bath.gPerL, "an object");
  requireObject(where, "wanted", wanted, "an object with component, aimGPerL, add, …");
  if (wanted.addGPerL !== undefined) requireObject(where, "addGPerL", wanted.addGPerL, "an object");
  const volume = requireLitres(where, "volumeL", bath.volumeL, bath);
  const { component, add, addGPerL = {} } = wanted;
  const bounds = { min: 0, max: 1e6, unit: "g/L" };
  if (!Object.hasOwn(bath.gPerL, component)) {
    const names = Object.keys(bath.gPerL).map((name) => `"${name}"`);
    throw new InputError(where, "component", component, `write one of ${names.join(", ")}`);
  }
  const now = requireNumber(where, `gPerL of ${component}`, bath.gPerL[component], bounds);
  const aim = requireNumber(where, "aimGPerL", wanted.aimGPerL, bounds);
  const added = addGPerL[component] ?? 0;
  requireNumber(where, `addGPerL of ${component}`, added, bounds);
  const how = requireOneOf(where, "how", wanted.how, ["dump first", "overflow"]);
  const times = requireNumber(where, "times", wanted.times ?? 1, {
    min: 1,
    max: 1000,
    whole: true,
  });
  if (aim === now) {
    throw new InputError(
      where,
      "aimGPerL",
      aim,
      "the bath is there already; nothing is to be added",
    );
  }
  const left = (aim - added) / (now - added);
  const between = left < 1 && (how === "dump first" ? left >= 0 : left > 0);
  if (!between) {
    const [low, high] = [Math.min(now, added), Math.max(now, added)];
    const advice = `${add} has ${added} g/L and the bath ${now} g/L; write an aim from ${low} to ${high} g/L, or something else to add`;
    throw new InputError(where, "aimGPerL", aim, advice);
  }
  const fraction = how === "dump first" ? 1 - left ** (1 / times) : left ** (-1 / times) - 1;
  if (fraction > 1) {
    const advice = `one addition would be ${Number((fraction * volume).toPrecision(3))} L, more than the tank holds; write more of them (times), or "dump first"`;
    throw new InputError(where, "times", times, advice);
  }
  const litres = fraction * volume;
  const step: CorrectionStep = { add, litres, gPerL: addGPerL, how, times };
  return { litres, step, corrected: correctBath(bath, [step]) };
}
