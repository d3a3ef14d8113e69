import { requireNumber, requireObject } from "../../input/index.ts";
import { cautionsFor } from "../cautions/cautions-for.ts";
import { requireVolumeMl } from "../dilution/require-volume.ts";
import { blendByMass, fractionWarnings } from "./blend-by-mass.ts";
import { solutionDensity } from "./solution-density.ts";
import { wholeParts } from "./whole-parts.ts";

/** How to make an acid of one strength from a stronger one and a weaker one or water. */
export interface AcidMix {
  readonly strongG: number;
  readonly strongMl: number;
  readonly weakG: number;
  readonly weakMl: number;
  readonly totalG: number;
  readonly totalMl: number;
  /** What the volumes lose on mixing, mL; negative if they gain. */
  readonly contractionMl: number;
  /** Small whole parts by volume closest to this mix, strong + weak: `"3+8"`, `"1+20"`. */
  readonly volumeRule: string;
  /** Per cent by mass that the volume rule makes. */
  readonly volumeRulePercent: number;
  readonly gPerL: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
  readonly cautions: readonly string[];
}

/**
 * Masses and volumes of a strong acid (or alkali) and of water, or of a weaker one, that make a wanted
 * strength, by mass balance.
 *
 * m_strong / m_weak = (w − w_weak) / (w_strong − w); V = m / ρ
 *
 * @param wanted.substance as in `solutionDensity`: `"acetic acid"`, `"sulfuric acid"` …
 * @param wanted.strongPercent per cent by mass of the strong one, at most 100
 * @param wanted.weakPercent per cent by mass of the weak one; default 0, water
 * @param wanted.targetPercent per cent by mass wanted, strictly between the two
 * @param wanted.totalMl volume wanted, mL, above 0
 * @param wanted.temperatureC °C, default 20
 * @returns masses, volumes, contraction, the nearest rule in small whole parts, cautions
 * @throws InputError for a target outside the two strengths, or a strength beyond the data
 *
 * @example
 * acidToStrength({ substance: "acetic acid", strongPercent: 99.5, targetPercent: 28, totalMl: 1000 }).volumeRule // => "3+8"
 *
 * Source: conservation of mass; densities as `solutionDensity`. The rule of 3 parts glacial acid to 8
 * of water stands in The Darkroom Cookbook, 3rd ed., p. 170.
 */
export function acidToStrength(wanted: {
  readonly substance: string;
  readonly strongPercent: number;
  readonly weakPercent?: number;
  readonly targetPercent: number;
  readonly totalMl: number;
  readonly temperatureC?: number;
}): AcidMix {
  const where = "acidToStrength";
  requireObject(
    where,
    "wanted",
    wanted,
    "an object with substance, strongPercent, targetPercent, …",
  );
  const { substance } = wanted;
  const percent = { min: 0, max: 100, unit: "%" };
  const strong = requireNumber(where, "strongPercent", wanted.strongPercent, percent);
  const weak = requireNumber(where, "weakPercent", wanted.weakPercent ?? 0, {
    ...percent,
    below: strong,
  });
  const target = requireNumber(where, "targetPercent", wanted.targetPercent, {
    above: weak,
    below: strong,
    unit: "%",
    hint: "between the two strengths at hand",
  });
  const totalMl = requireVolumeMl(where, "totalMl", wanted.totalMl);
  const at = wanted.temperatureC === undefined ? {} : { temperatureC: wanted.temperatureC };
  const mixed = solutionDensity({ substance, massPercent: target, ...at });
  const totalG = totalMl * mixed.densityGPerMl;
  const strongG = totalG * ((target - weak) / (strong - weak));
  const weakG = totalG - strongG;
  const volume = (massPercent: number, massG: number) =>
    massG / solutionDensity({ substance, massPercent, ...at }).densityGPerMl;
  const [strongMl, weakMl] = [volume(strong, strongG), volume(weak, weakG)];
  const [a, b] = benchRule(strongMl / weakMl);
  const byRule = blendByMass({
    substance,
    portions: [
      { massPercent: strong, volumeMl: a },
      { massPercent: weak, volumeMl: b },
    ],
    ...at,
  });
  return {
    strongG,
    strongMl,
    weakG,
    weakMl,
    totalG,
    totalMl,
    contractionMl: strongMl + weakMl - totalMl,
    volumeRule: `${a}+${b}`,
    volumeRulePercent: byRule.massPercent,
    gPerL: mixed.gPerL,
    assumptions: byRule.assumptions,
    warnings: [...mixed.warnings, ...fractionWarnings([strong])],
    cautions: cautionsFor(strong > 50 ? [`glacial ${substance}`, substance] : [substance]),
  };
}

/** Small whole parts; one part to many where the strengths lie further apart than 1 + 12. */
function benchRule(ratio: number): readonly [number, number] {
  if (ratio > 12.5) return [Math.round(ratio), 1];
  return ratio < 1 / 12.5 ? [1, Math.round(1 / ratio)] : wholeParts(ratio);
}
