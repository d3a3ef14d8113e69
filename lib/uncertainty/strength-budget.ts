import { InputError, requireObject } from "../input/index.ts";
import type { InputQuantity } from "./distribution.ts";
import { propagateUncertainty } from "./propagate-uncertainty.ts";
import { bestEstimateOf } from "./standard-uncertainty.ts";
import type { PropagationOptions, UncertaintyBudget } from "./uncertainty-budget.ts";

/** What goes into a diluted bath; give either the water poured or the volume made up to. */
export interface DilutionInputs {
  /** Volume of stock, mL. */
  readonly stock: InputQuantity;
  /** Volume of water added, mL. */
  readonly water?: InputQuantity;
  /** Volume made up to with water, mL. */
  readonly total?: InputQuantity;
  /** Strength of the stock, g/L or per cent; 1 (strength as a fraction of the stock) if left out. */
  readonly stockStrength?: InputQuantity;
}

/**
 * Strength of a diluted bath with its uncertainty, and what each measurement contributes.
 *
 * c = c₀ · S/(S + W), or c = c₀ · S/T when made up to a volume.
 *
 * @param dilution stock and water or total as input quantities in mL, strength of the stock
 * @param options as for `propagateUncertainty`
 * @returns a budget in the unit of the stock's strength (a fraction if none is given)
 * @throws InputError if both or neither of water and total are given, or a volume is not above 0
 *
 * @example
 * dilutionStrengthBudget({ stock: graduateInput({ name: "stock", readingMl: 50, toleranceMl: 1, divisionMl: 1 }), total: graduateInput({ name: "total", readingMl: 500, toleranceMl: 5, divisionMl: 5 }) }).value // => 0.1
 *
 * Source: JCGM 100:2008, 5.1.2, applied to the mass balance of a dilution.
 */
export function dilutionStrengthBudget(
  dilution: DilutionInputs,
  options: PropagationOptions = {},
): UncertaintyBudget {
  const where = "dilutionStrengthBudget";
  requireObject(where, "dilution", dilution, "an object with stock");
  if (dilution.total !== undefined)
    requireObject(where, "total", dilution.total, "an object with name and distribution");
  requireObject(where, "stock", dilution.stock, "an object with name and distribution");
  const { stock, water, total, stockStrength } = dilution;
  const rest = total ?? water;
  if (rest === undefined || (water !== undefined && total !== undefined)) {
    const advice = "give either the water poured or the total made up to";
    throw new InputError(where, "water, total", [water?.name, total?.name], advice);
  }
  requirePositive(where, [stock, rest]);
  const inputs = stockStrength === undefined ? [stock, rest] : [stock, rest, stockStrength];
  const model = (x: Readonly<Record<string, number>>) => {
    const s = x[stock.name] ?? 0;
    const other = x[rest.name] ?? 0;
    const strength = stockStrength === undefined ? 1 : (x[stockStrength.name] ?? 0);
    return (strength * s) / (total === undefined ? s + other : other);
  };
  return propagateUncertainty(model, inputs, options);
}

/** What goes into a bath of powder. */
export interface PowderInputs {
  /** Mass weighed, g. */
  readonly mass: InputQuantity;
  /** Volume made up to, mL. */
  readonly volume: InputQuantity;
  /** Mass fraction of the chemical in the powder; 1 if left out. */
  readonly purity?: InputQuantity;
}

/**
 * Strength of a bath made from a powder, with its uncertainty, and what contributes to it.
 *
 * c = 1000 · m · P / V
 *
 * @param powder mass in g, volume in mL, purity as a mass fraction
 * @param options as for `propagateUncertainty`
 * @returns a budget in g/L
 * @throws InputError if a mass, volume or purity is not above 0
 *
 * @example
 * powderStrengthBudget({ mass: balanceInput({ name: "m", massG: 2, divisionG: 0.1 }), volume: graduateInput({ name: "V", readingMl: 1000, toleranceMl: 10, divisionMl: 10 }) }).value // => 2
 *
 * Source: JCGM 100:2008, 5.1.2; EURACHEM/CITAC CG 4, 3rd ed. (2012), example A1 (the same model).
 */
export function powderStrengthBudget(
  powder: PowderInputs,
  options: PropagationOptions = {},
): UncertaintyBudget {
  requireObject("powderStrengthBudget", "powder", powder, "an object with mass and volume");
  requireObject(
    "powderStrengthBudget",
    "volume",
    powder.volume,
    "an object with name and distribution",
  );
  requireObject(
    "powderStrengthBudget",
    "mass",
    powder.mass,
    "an object with name and distribution",
  );
  const { mass, volume, purity } = powder;
  const inputs = purity === undefined ? [mass, volume] : [mass, volume, purity];
  requirePositive("powderStrengthBudget", inputs);
  const model = (x: Readonly<Record<string, number>>) => {
    const fraction = purity === undefined ? 1 : (x[purity.name] ?? 0);
    return (1000 * (x[mass.name] ?? 0) * fraction) / (x[volume.name] ?? 0);
  };
  return propagateUncertainty(model, inputs, options);
}

function requirePositive(where: string, inputs: readonly InputQuantity[]): void {
  for (const { name, distribution } of inputs) {
    const value = bestEstimateOf(distribution);
    if (!(value > 0)) throw new InputError(where, name, value, "write a value greater than 0");
  }
}
