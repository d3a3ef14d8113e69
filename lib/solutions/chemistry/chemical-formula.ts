import { MF } from "mf-parser";
import { InputError } from "../../input/index.ts";
import { isElement } from "./atomic-weight.ts";

/** A chemical formula taken apart. */
export interface ChemicalFormula {
  /** As written for people, with a middle dot before water: `Na2S2O3·5H2O`. */
  readonly formula: string;
  /** Atoms per formula unit, by symbol. */
  readonly atoms: Readonly<Record<string, number>>;
  /** The parts that the dots separate, with their multipliers. */
  readonly parts: readonly { readonly multiplier: number; readonly formula: string }[];
}

const WHERE = "parseChemicalFormula";
const SUBSCRIPTS = "₀₁₂₃₄₅₆₇₈₉";

/**
 * Reads a chemical formula, with its water of crystallisation after a dot.
 *
 * @param text such as `"Na2SO3"`, `"Na2S2O3.5H2O"`, `"K2CO3·1.5H2O"`, `"(C7H9NO)2.H2SO4"`; dots
 *   `. · • *` and subscripts are read alike; a neutral compound, no charges
 * @returns the atoms per formula unit and the parts
 * @throws InputError for an unknown element, unbalanced brackets, a charge, or anything else
 *
 * @example
 * parseChemicalFormula("Na2S2O3.5H2O").atoms // => { Na: 2, S: 2, O: 8, H: 10 }
 */
export function parseChemicalFormula(text: string): ChemicalFormula {
  if (typeof text !== "string" || text.trim() === "") {
    throw new InputError(WHERE, "text", text, 'write a formula such as "Na2SO3"');
  }
  const atoms: Record<string, number> = {};
  const parts = splitAtDots(text).map((part) => {
    const match = /^(\d+(?:\.\d+)?(?:\/\d+)?)?(.+)$/.exec(part);
    const multiplier = fraction(match?.[1] ?? "1");
    const formula = (match?.[2] ?? "").replace(/[[{]/g, "(").replace(/[\]}]/g, ")");
    if (!(multiplier > 0) || !Number.isFinite(multiplier)) {
      throw new InputError(WHERE, "text", text, "write a number above 0 before each part");
    }
    for (const [symbol, count] of Object.entries(atomsIn(text, formula))) {
      atoms[symbol] = (atoms[symbol] ?? 0) + multiplier * count;
    }
    return { multiplier, formula };
  });
  const formula = parts
    .map((part) => `${part.multiplier === 1 ? "" : part.multiplier}${part.formula}`)
    .join("·");
  return { formula, atoms, parts };
}

/** A dot separates parts, except inside a multiplier such as the 1.5 of K2CO3.1.5H2O. */
function splitAtDots(text: string): readonly string[] {
  refuseBlankForDot(text);
  const plain = text
    .replace(/[₀-₉]/g, (digit) => String(SUBSCRIPTS.indexOf(digit)))
    .replace(/[·•∙⋅*]/g, ".")
    .replace(/\s+/g, "");
  const pieces = plain.split(".");
  const parts: string[] = [];
  for (let i = 0; i < pieces.length; i++) {
    const piece = pieces[i] ?? "";
    const next = pieces[i + 1];
    if (/^\d+$/.test(piece) && next !== undefined && /^\d/.test(next)) {
      parts.push(`${piece}.${next}`);
      i += 1;
    } else parts.push(piece);
  }
  if (parts.some((part) => part === "" || /^[\d./]+$/.test(part))) {
    throw new InputError(WHERE, "text", text, 'write a part on each side of a dot: "Na2CO3.H2O"');
  }
  return parts;
}

/** Closed up, "Na2SO3 7H2O" would be SO37, and "Na2CO3 H2O" no hydrate: a blank is no dot. */
function refuseBlankForDot(text: string): void {
  const blank = /^(.*?[A-Za-z0-9)\]])\s+(\d+(?:[./]\d+)?\s*\(?[A-Z].*|H2O)$/.exec(text.trim());
  const [, before = "", after = ""] = blank ?? [];
  if (!blank || /(?:^|[.·•∙⋅*])\s*\d+(?:[./]\d+)?$/.test(before)) return;
  const advice = `write a dot before the water: "${before}.${after.replace(/\s+/g, "")}"`;
  throw new InputError(WHERE, "text", text, advice);
}

function atomsIn(text: string, formula: string): Readonly<Record<string, number>> {
  const fail = (advice: string): never => {
    throw new InputError(WHERE, "text", text, advice);
  };
  if (/[+−-]/.test(formula)) fail("write the whole neutral compound, without charges");
  const odd = /[^A-Za-z0-9()]/.exec(formula);
  if (odd) fail(`"${odd[0]}" does not belong in a formula; write elements, numbers and brackets`);
  for (const symbol of formula.match(/[A-Z][a-z]*|[a-z]+/g) ?? []) {
    if (!isElement(symbol)) {
      const hint = /^[a-z]/.test(symbol) ? "; element symbols begin with a capital" : "";
      fail(`"${symbol}" is not an element with a standard atomic weight${hint}`);
    }
  }
  if (/(?:^|[A-Za-z)])0/.test(formula)) fail("a count may not be 0 or begin with 0");
  if (/\d{5}/.test(formula)) fail("a count above 9999 is a slip of the pen");
  if (/\(\)/.test(formula)) fail("there is nothing between the brackets");
  let depth = 0;
  for (const character of formula) {
    depth += character === "(" ? 1 : character === ")" ? -1 : 0;
    if (depth < 0) break;
  }
  if (depth !== 0) fail("the brackets do not balance");
  try {
    return new MF(formula).getInfo().atoms;
  } catch (error) {
    const reason = error instanceof Error ? (error.message.split("\n")[0] ?? "") : "";
    return fail(`this is not a chemical formula (${reason})`);
  }
}

function fraction(text: string): number {
  const [over = "1", under = "1"] = text.split("/");
  return Number(over) / Number(under);
}
