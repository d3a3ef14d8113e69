import acidData from "../../../data/buffers/acids.json" with { type: "json" };
import { InputError, requireNumber, requireOneOf } from "../../input/index.ts";

/** A weak acid with one to four protons. */
export interface WeakAcid {
  readonly id: string;
  readonly name: string;
  /** Charge of the form that has all its protons. */
  readonly chargeOfAcid: number;
  /** One entry per proton, strongest first; at 25 °C and ionic strength 0. */
  readonly steps: readonly {
    readonly pK: number;
    readonly enthalpyKjPerMol: number;
    readonly heatCapacityJPerKMol: number;
  }[];
  readonly source: string;
  readonly howObtained: string;
  readonly note?: string;
}

/** The weak acids the library knows. */
export const weakAcids: readonly WeakAcid[] = acidData.acids;

const R = 8.314462618;
const REFERENCE_K = 298.15;

/** The acid with an id, or an error that lists them. */
export function weakAcid(where: string, id: string): WeakAcid {
  const known = requireOneOf(
    where,
    "acid",
    id,
    weakAcids.map((acid) => acid.id),
  );
  const found = weakAcids.find((acid) => acid.id === known);
  if (!found) throw new InputError(where, "acid", id, "write an acid of `weakAcids`");
  return found;
}

/**
 * The pK values of a weak acid at a temperature, at ionic strength 0.
 *
 * ln K(T) = ln K(θ) + (ΔH/R)(1/θ − 1/T) + (ΔCp/R)(θ/T − 1 + ln(T/θ)), θ = 298.15 K
 *
 * @param acid `"acetic"`, `"boric"`, `"carbonic"`, `"citric"`, `"phosphoric"`, `"sulfurous"` or another
 *   of `weakAcids`
 * @param temperatureC from 0 to 75 °C; 25 if left out
 * @returns one pK per proton, strongest first
 * @throws InputError for an unknown acid or a temperature outside the range
 *
 * @example
 * acidPk("boric", 20)[0] // => 9.28
 *
 * Source: R. N. Goldberg et al., J. Phys. Chem. Ref. Data 31 (2002) 231–370, unless the acid's record
 * says otherwise.
 */
export function acidPk(acid: string, temperatureC = 25): readonly number[] {
  const where = "acidPk";
  const { steps } = weakAcid(where, acid);
  const bounds = { min: 0, max: 75, unit: "°C" };
  const t = requireNumber(where, "temperatureC", temperatureC, bounds) + 273.15;
  return steps.map(({ pK, enthalpyKjPerMol, heatCapacityJPerKMol }) => {
    const heat = ((1000 * enthalpyKjPerMol) / R) * (1 / REFERENCE_K - 1 / t);
    const capacity = (heatCapacityJPerKMol / R) * (REFERENCE_K / t - 1 + Math.log(t / REFERENCE_K));
    return pK - (heat + capacity) / Math.LN10;
  });
}
