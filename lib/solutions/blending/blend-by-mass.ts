import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { cautionsFor } from "../cautions/cautions-for.ts";
import { solutionDensity } from "./solution-density.ts";

/** A portion of solution: its strength, and its mass or its volume. */
export interface PortionByMass {
  /** Per cent by mass; 0 is water. */
  readonly massPercent: number;
  readonly massG?: number;
  readonly volumeMl?: number;
}

/** What comes of portions poured together, by mass. */
export interface BlendByMass {
  readonly massG: number;
  readonly massPercent: number;
  readonly gPerL: number;
  readonly densityGPerMl: number;
  readonly volumeMl: number;
  /** The portions' volumes added up; more than `volumeMl` when the mix contracts. */
  readonly portionsMl: number;
  /** portionsMl − volumeMl; negative if the mix expands. */
  readonly contractionMl: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
  readonly cautions: readonly string[];
}

/**
 * Pours portions of one substance together by mass, with the volume they really make.
 *
 * w = Σ m_i·w_i / Σ m_i; V = Σ m_i / ρ(w); m_i = V_i·ρ(w_i) where a volume is given
 *
 * @param given.substance as in `solutionDensity`
 * @param given.portions at least one, each with `massPercent` and either `massG` or `volumeMl`
 * @param given.temperatureC °C, default 20
 * @returns strength, volume, and the contraction in mL
 * @throws InputError for a portion with neither or both amounts, a negative one, or a strength beyond
 *   the data
 *
 * @example
 * blendByMass({ substance: "acetic acid", portions: [{ massPercent: 99.5, volumeMl: 3 }, { massPercent: 0, volumeMl: 8 }] }).massPercent // => 28.1
 *
 * Source: conservation of mass; densities as `solutionDensity`.
 */
export function blendByMass(given: {
  readonly substance: string;
  readonly portions: readonly PortionByMass[];
  readonly temperatureC?: number;
}): BlendByMass {
  const where = "blendByMass";
  requireObject(where, "given", given, "an object with substance and portions");
  if (!Array.isArray(given.portions) || given.portions.length === 0) {
    const advice = "write at least one { massPercent, massG } or { massPercent, volumeMl }";
    throw new InputError(where, "portions", given.portions, advice);
  }
  const at = given.temperatureC === undefined ? {} : { temperatureC: given.temperatureC };
  const density = (massPercent: number) =>
    solutionDensity({ substance: given.substance, massPercent, ...at });
  const weighed = given.portions.map((portion, i) => {
    const { densityGPerMl } = density(portion.massPercent);
    const massG = massOf(portion, `portions[${i}]`, densityGPerMl);
    return { massG, soluteG: (massG * portion.massPercent) / 100, volumeMl: massG / densityGPerMl };
  });
  const sum = (key: "massG" | "soluteG" | "volumeMl") =>
    weighed.reduce((total, portion) => total + portion[key], 0);
  const massG = requireNumber(where, "total mass", sum("massG"), { above: 0, unit: "g" });
  // Rounding must not lift a mix above its strongest portion, and so out of the data.
  const strongest = Math.max(...given.portions.map((portion) => portion.massPercent));
  const massPercent = Math.min(strongest, (sum("soluteG") / massG) * 100);
  const mixed = density(massPercent);
  const volumeMl = massG / mixed.densityGPerMl;
  return {
    massG,
    massPercent,
    gPerL: mixed.gPerL,
    densityGPerMl: mixed.densityGPerMl,
    volumeMl,
    portionsMl: sum("volumeMl"),
    contractionMl: sum("volumeMl") - volumeMl,
    assumptions: [...mixed.assumptions, "the mix has come back to the temperature of its parts"],
    warnings: [
      ...mixed.warnings,
      ...fractionWarnings(given.portions.map((portion) => portion.massPercent)),
    ],
    cautions: cautionsFor([given.substance, ...strongNames(given)]),
  };
}

/** Says so where strengths look like fractions: 0.28 is 0.28 %, not 28 %. */
export function fractionWarnings(percents: readonly number[]): readonly string[] {
  const strongest = Math.max(...percents);
  return strongest > 0 && strongest <= 1
    ? [`strengths are per cent by mass: ${strongest} is ${strongest} %, not ${strongest * 100} %`]
    : [];
}

function massOf(portion: PortionByMass, argument: string, densityGPerMl: number): number {
  if ((portion.massG === undefined) === (portion.volumeMl === undefined)) {
    const advice = "write either massG or volumeMl";
    throw new InputError("blendByMass", argument, portion, advice);
  }
  const bounds = { min: 0, max: 1e12 };
  if (portion.massG !== undefined) {
    return requireNumber("blendByMass", `${argument}.massG`, portion.massG, bounds);
  }
  const volume = requireNumber("blendByMass", `${argument}.volumeMl`, portion.volumeMl, bounds);
  return volume * densityGPerMl;
}

/** Acetic acid above 90 % is called glacial, and burns and freezes as such. */
function strongNames(given: {
  readonly substance: string;
  readonly portions: readonly PortionByMass[];
}): string[] {
  const strong = given.portions.some(({ massPercent }) => massPercent > 90);
  return strong && given.substance === "acetic acid" ? ["glacial acetic acid"] : [];
}
