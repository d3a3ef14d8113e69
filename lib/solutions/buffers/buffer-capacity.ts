import { requireNumber } from "../../input/index.ts";
import { type SolutionSource, solutionComposition } from "./solution-composition.ts";
import { solutionPh } from "./solution-ph.ts";

const STEP_MOL_PER_L = 1e-5;

/**
 * How much strong base (or acid) a solution takes per unit of pH.
 *
 * β = dC_base/dpH, by adding and taking away 10⁻⁵ mol/L of strong base.
 *
 * @param source a formula, a list of ingredients per litre, or a composition in mol/L
 * @param options.temperatureC from 0 to 75 °C; 25 if left out
 * @returns β in mol/L per unit of pH, above 0
 * @throws InputError as `solutionPh`
 *
 * @example
 * bufferCapacity([{ chemical: "borax", gPerL: 3.813625 }]) // => 0.0234
 *
 * Source: D. D. Van Slyke, J. Biol. Chem. 52 (1922) 525 (definition).
 */
export function bufferCapacity(
  source: SolutionSource,
  options: { readonly temperatureC?: number } = {},
): number {
  const { ions, acids, notCounted } = solutionComposition(source);
  const pHWith = (ion: string) => {
    const amount = (ions[ion] ?? 0) + STEP_MOL_PER_L;
    return solutionPh({ ions: { ...ions, [ion]: amount }, acids, notCounted }, options).pH;
  };
  const change = pHWith("Na+") - pHWith("Cl-");
  return (
    (2 * STEP_MOL_PER_L) / requireNumber("bufferCapacity", "change of pH", change, { above: 0 })
  );
}
