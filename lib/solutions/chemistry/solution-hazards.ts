import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { hazardStatement } from "./chemical-hazards.ts";
import { chemicalInForm } from "./find-chemical.ts";
import { type DissolvedHazard, hazardLimits, shareOfLimit } from "./hazard-limits.ts";

/** A substance in a solution and how much of it there is. */
export interface DissolvedSubstance {
  /** As for `chemicalInForm`. */
  readonly chemical: string;
  readonly form?: string;
  /** Per cent by mass; of an acid that is sold diluted, per cent of the pure acid. */
  readonly massPercent: number;
}

/** Hazards of a solution, as its label would say them. */
export interface SolutionHazards {
  readonly signalWord: "none" | "warning" | "danger";
  readonly statements: readonly {
    readonly code: string;
    readonly text: string;
    /** The substances that bring it. */
    readonly from: readonly string[];
  }[];
  readonly source: string;
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
}

/** A sensitiser below its limit still acts on somebody sensitised, down to a tenth of it. */
const ELICITING_SHARE = 0.1;
/** Said where the rules find nothing. */
export const NO_CLASS = "No hazard class by calculation, which is not a proof of safety.";
/** What brings less than this part of a statement is not named for it. */
const NAMED_SHARE = 0.1;
/** A sum that is short of its limit by rounding alone has reached it. */
const ROUNDING = 1e-9;

/**
 * Signal word and hazard statements of a solution, from those of what is dissolved in it.
 *
 * A statement stands when Σ c/limit ≥ 1 (burns, irritation, poison by swallowing, water life), or when
 * one substance reaches its limit (allergy, cancer, genes, fertility, organs).
 *
 * @param dissolved substances of the registry, each with 0 to 100 per cent by mass, together at most 100
 * @returns codes and texts with the substances that bring them, the strongest of each kind; what is
 *   found by test only (flammable, oxidising, corrosive to metals) is left out and said to be
 * @throws InputError for an unknown chemical, or per cents out of range
 *
 * @example
 * solutionHazards([{ chemical: "acetic acid", massPercent: 12 }]).statements.map(({ code }) => code) // => ["H315", "H319"]
 *
 * Source: UN GHS, chapters 3.1 to 3.9 and 4.1; limits as noted in data/hazard-limits.json.
 */
export function solutionHazards(dissolved: readonly DissolvedSubstance[]): SolutionHazards {
  const parts = dissolvedHazards(dissolved);
  const found = new Map<string, Set<string>>();
  const add = (code: string, names: readonly string[]) =>
    found.set(code, new Set([...(found.get(code) ?? []), ...names]));
  for (const { code, of, percent } of hazardLimits.general) {
    const enough = parts.filter((each) =>
      of.some((own) => shareOfLimit(each, code, own, percent) >= 1 - ROUNDING),
    );
    if (enough.length > 0) add(code, namesOf(enough));
  }
  for (const { code, terms } of hazardLimits.summed) {
    // A substance counts once, by the statement that weighs most.
    const shares = parts.map((each) =>
      Math.max(...terms.map((term) => shareOfLimit(each, code, term.of, term.percent))),
    );
    const total = shares.reduce((sum, share) => sum + share, 0);
    if (total < 1 - ROUNDING) continue;
    add(code, namesOf(parts.filter((_, i) => (shares[i] ?? 0) >= NAMED_SHARE * total)));
  }
  const covered = new Set([...found.keys()].flatMap((code) => hazardLimits.covers[code] ?? []));
  const codes = [...found.keys()].filter((code) => !covered.has(code)).sort();
  return {
    signalWord: signalWordOf(codes),
    statements: codes.map((code) => ({
      code,
      text: hazardStatement(code),
      from: [...(found.get(code) ?? [])],
    })),
    source: `${hazardLimits.source} (${hazardLimits.howObtained})`,
    assumptions: [
      "by calculation from the labels of what is dissolved; the data sheet of a product goes before it",
      "flammable, oxidising and corrosive to metals are found by test, and left out",
      "a solution of pH 2 or less, or of 11.5 or more, counts as corrosive until a test says otherwise",
    ],
    cautions: solutionCautions(parts, codes),
  };
}

function dissolvedHazards(dissolved: readonly DissolvedSubstance[]): readonly DissolvedHazard[] {
  const where = "solutionHazards";
  if (!Array.isArray(dissolved) || dissolved.length === 0) {
    const advice = 'write a list like [{ chemical: "acetic acid", massPercent: 28 }]';
    throw new InputError(where, "dissolved", dissolved, advice);
  }
  const parts = dissolved.map((each, i): DissolvedHazard => {
    requireObject(where, `dissolved[${i}]`, each, "an object with chemical and massPercent");
    const { chemical, form, massPercent } = each;
    const found = chemicalInForm(chemical, form);
    const bounds = { min: 0, max: 100, unit: "%" };
    requireNumber(where, `massPercent of ${chemical}`, massPercent, bounds);
    const { id, name, hazards } = found.chemical;
    return { chemicalId: id, label: name, massPercent, codes: hazards.statements };
  });
  const total = parts.reduce((sum, each) => sum + each.massPercent, 0);
  if (total > 100 + ROUNDING) {
    throw new InputError(
      where,
      "massPercent",
      total,
      "write per cents that together are at most 100",
    );
  }
  return parts;
}

function namesOf(parts: readonly DissolvedHazard[]): readonly string[] {
  return parts.map(({ label }) => label);
}

function signalWordOf(codes: readonly string[]): "none" | "warning" | "danger" {
  if (codes.some((code) => hazardLimits.danger.includes(code))) return "danger";
  return codes.some((code) => !hazardLimits.noSignalWord.includes(code)) ? "warning" : "none";
}

function solutionCautions(parts: readonly DissolvedHazard[], codes: readonly string[]) {
  const limit = hazardLimits.general.find(({ code }) => code === "H317")?.percent ?? 1;
  const sensitisers = codes.includes("H317")
    ? []
    : parts.filter((each) => shareOfLimit(each, "H317", "H317", limit) >= ELICITING_SHARE);
  const who = namesOf(sensitisers).join(" and ");
  return [
    ...(who === "" ? [] : [`Holds ${who}: may still bring on an allergy that somebody has.`]),
    ...(codes.length === 0 ? [NO_CLASS] : []),
  ];
}
