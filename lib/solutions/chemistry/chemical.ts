import chemicalData from "../../../data/chemicals.json" with { type: "json" };

/** One form in which a chemical is sold: a hydrate, a salt, a solution. */
export interface ChemicalForm {
  /** `"anhydrous"`, `"pentahydrate"`, `"28 %"`. */
  readonly id: string;
  readonly formula: string;
  readonly cas?: string;
  readonly synonyms?: readonly string[];
  /** Mass fraction of the formula in what is sold; 1 if left out. */
  readonly massFraction?: number;
  /** Density of a liquid at 20 °C. */
  readonly densityGPerMl?: number;
  readonly densitySource?: string;
  /** Moles of the active ion per mole of this form, where not the chemical's own. */
  readonly perFormulaUnit?: number;
  readonly dissolves?: DissolvedIons;
  readonly hazards?: HazardClassification;
}

/** What one mole puts into solution: strong ions, and weak acids by their total. */
export interface DissolvedIons {
  readonly ions: Readonly<Record<string, number>>;
  readonly acids: Readonly<Record<string, number>>;
}

/** Hazard classification by the GHS: a signal word and H-codes. */
export interface HazardClassification {
  readonly signalWord: "none" | "warning" | "danger";
  readonly statements: readonly string[];
  readonly note?: string;
}

/** Solubility in water: mass per cent of the anhydrous substance in the saturated solution. */
export interface SolubilityTable {
  readonly values: readonly { readonly temperatureC: number; readonly massPercent: number }[];
  readonly source: string;
  readonly howObtained: string;
}

/** A chemical of the registry. */
export interface Chemical {
  readonly id: string;
  readonly name: string;
  readonly synonyms: readonly string[];
  /** What it is for: `"developing agent"`, `"alkali"`, `"fixing agent"`. */
  readonly role: string;
  /** Words the rules of mixing go by. */
  readonly tags: readonly string[];
  readonly note?: string;
  /** The first is meant where none is named. */
  readonly forms: readonly ChemicalForm[];
  /** The ion that does the work, and how many of it a formula unit holds. */
  readonly active?: { readonly ion: string; readonly perFormulaUnit: number };
  /** `"sodium"`, `"potassium"`, `"ammonium"`, `"hydrogen"`: what comes with the active ion. */
  readonly cation?: string;
  readonly dissolves?: DissolvedIons;
  readonly hazards: HazardClassification;
  readonly solubility?: SolubilityTable;
}

/** Every chemical the library knows, with forms, hazards and solubility. */
export const chemicals: readonly Chemical[] = chemicalData.chemicals as readonly Chemical[];
