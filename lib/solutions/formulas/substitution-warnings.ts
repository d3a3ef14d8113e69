import type { ChemicalInForm } from "../chemistry/find-chemical.ts";
import { molarMass } from "../chemistry/molar-mass.ts";

/** What to say where one chemical cannot stand for another by a factor. */
export function substitutionAdvice(first: ChemicalInForm, second: ChemicalInForm): string {
  const names = [first.chemical.id, second.chemical.id];
  if (names.includes("borax") && names.includes("sodium-metaborate")) {
    return "metaborate is borax with hydroxide and more alkaline; see metaborateFromBorax";
  }
  const tagged = (tag: string) =>
    first.chemical.tags.includes(tag) && second.chemical.tags.includes(tag);
  if (tagged("alkali")) {
    return "these alkalis differ in strength, so no factor by mass is right; compare them with solutionPh";
  }
  const ion = first.chemical.active?.ion;
  const sulfites = ["sulfite", "hydrogen sulfite"];
  if (sulfites.includes(ion ?? "") && sulfites.includes(second.chemical.active?.ion ?? "")) {
    return "bisulfite is sulfite with a mole of acid, so no factor by mass is right; a mole of hydroxide for each makes up for it, and solutionPh compares the baths";
  }
  const wanted = ion === undefined ? "the same chemical in another form" : `a source of ${ion}`;
  return `write ${wanted}; ${second.chemical.name} is not one`;
}

/** What changes with a substitution besides the mass. */
export function substitutionWarnings(
  first: ChemicalInForm,
  second: ChemicalInForm,
  molesOfActiveIon: number,
): readonly string[] {
  const warnings: string[] = [];
  const [a, b] = [first.chemical.cation, second.chemical.cation];
  const ion = first.chemical.active?.ion ?? "";
  if (first.chemical === second.chemical) {
    const [dry, otherDry] = [dryMassPerActive(first), dryMassPerActive(second)];
    return Math.abs(dry - otherDry) > 0.01
      ? [`${second.label} and ${first.label} differ in acid, not only in water; check the pH`]
      : [];
  }
  if (
    (first.chemical.id === "sodium-isoascorbate") !==
    (second.chemical.id === "sodium-isoascorbate")
  ) {
    warnings.push(
      "isoascorbate and ascorbate are isomers that develop alike (common practice, no source): test first",
    );
  }
  if (a !== b && (a === "ammonium" || b === "ammonium")) {
    warnings.push(
      ion === "thiosulfate"
        ? "equal thiosulfate is not an equal fixer: ammonium fixes faster; find the clearing time"
        : "ammonium salts set ammonia free in alkali and act on development; not in a developer",
    );
    if (a === "ammonium" && ion !== "thiosulfate") {
      warnings.push(`${second.label} brings no ammonium, which is what works in a rapid fixer`);
    }
  } else if (Math.abs(cationCharge(first) - cationCharge(second)) > 1e-9) {
    const charge = cationCharge(first) - cationCharge(second);
    const mol = Math.abs(charge) * molesOfActiveIon;
    const grams = (mol * molarMass("NaOH").molarMassGPerMol).toPrecision(3);
    warnings.push(
      charge > 0
        ? `an acid for its salt: add ${grams} g of sodium hydroxide (or as many moles of another alkali), or the pH falls`
        : `a salt for its acid: it takes the place of ${grams} g of sodium hydroxide; leave that much alkali out, or the pH rises`,
    );
  }
  if ([a, b].includes("sodium") && [a, b].includes("potassium")) {
    warnings.push("potassium for sodium: equal action to a few per cent; solubility differs");
  }
  return warnings;
}

/** Grams without water of crystallisation per mole of the active ion. */
function dryMassPerActive(each: ChemicalInForm): number {
  const count = each.form.perFormulaUnit ?? each.chemical.active?.perFormulaUnit ?? 1;
  return (each.molarMassGPerMol * each.anhydrousFraction) / each.massFraction / count;
}

/** Charge of strong cations per active ion. */
function cationCharge({ chemical, form }: ChemicalInForm): number {
  const ions: Readonly<Record<string, number>> = (form.dissolves ?? chemical.dissolves)?.ions ?? {};
  const total = Object.entries(ions).reduce(
    (sum, [name, count]) => sum + (name.endsWith("+") ? count * (name.split("+").length - 1) : 0),
    0,
  );
  return total / (form.perFormulaUnit ?? chemical.active?.perFormulaUnit ?? 1);
}
