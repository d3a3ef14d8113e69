import chemicalData from "../../../data/chemicals.json" with { type: "json" };
import hazardData from "../../../data/hazard-statements.json" with { type: "json" };
import { InputError } from "../../input/index.ts";
import { chemicalInForm } from "./find-chemical.ts";

const texts: Readonly<Record<string, string>> = hazardData.statements;

/** Hazards of a chemical, as its label would say them. */
export interface ChemicalHazards {
  readonly name: string;
  readonly signalWord: "none" | "warning" | "danger";
  readonly statements: readonly { readonly code: string; readonly text: string }[];
  /** Where the classes come from; the safety data sheet of the product decides. */
  readonly source: string;
  readonly cautions: readonly string[];
}

/**
 * Text of a GHS hazard statement.
 *
 * @param code such as `"H314"`
 * @returns the statement
 * @throws InputError for a code that the library does not have
 *
 * @example
 * hazardStatement("H314") // => "Causes severe skin burns and eye damage"
 *
 * Source: UN GHS, annex 3, section 1.
 */
export function hazardStatement(code: string): string {
  const text = texts[code];
  if (text !== undefined) return text;
  const advice = `write one of ${Object.keys(texts).join(", ")}`;
  throw new InputError("hazardStatement", "code", code, advice);
}

/**
 * Signal word and hazard statements of a chemical.
 *
 * @param name as for `chemicalInForm`
 * @param form as for `chemicalInForm`
 * @returns codes and texts; the classes are from memory and the safety data sheet decides
 * @throws InputError for a chemical that is not in the registry
 *
 * @example
 * chemicalHazards("sodium hydroxide").statements[1].text // => "Causes severe skin burns and eye damage"
 *
 * Source: UN GHS, annex 3; classes as noted in data/chemicals.json.
 */
export function chemicalHazards(name: string, form?: string): ChemicalHazards {
  const found = chemicalInForm(name, form);
  const own = found.form.hazards;
  const hazards = own ?? found.chemical.hazards;
  const none =
    hazards.statements.length === 0
      ? [
          `${found.label}: no hazard class known to this library, which is not a proof of safety; keep dust and splashes from eyes and mouth.`,
        ]
      : [];
  return {
    name: found.label,
    signalWord: hazards.signalWord,
    statements: hazards.statements.map((code) => ({ code, text: hazardStatement(code) })),
    source: chemicalData.hazardsSource,
    cautions: [...(hazards.note ? [`${found.label}: ${hazards.note}`] : []), ...none],
  };
}
