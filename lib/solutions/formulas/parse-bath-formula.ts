import { InputError } from "../../input/index.ts";
import type { BathFormula, FormulaIngredient } from "./bath-formula.ts";
import { resolveIngredient } from "./resolve-ingredient.ts";

const WHERE = "parseBathFormula";
const GRAMS: Readonly<Record<string, number>> = { mg: 0.001, g: 1, gram: 1, kg: 1000 };
const MILLILITRES: Readonly<Record<string, number>> = { ml: 1, cc: 1, l: 1000, litre: 1000 };
const AMOUNT = String.raw`(\d+(?:[.,]\d+)?)\s*(mg|kg|grams?|g|ml|cc|lit(?:re|er)s?|l)(?![A-Za-z])`;
const AT = String.raw`(?:(?:at|@)\s*(\d+(?:[.,]\d+)?)\s*°?\s*C)?`;
const LINE = new RegExp(String.raw`^(.+?)[\s:]+${AMOUNT}\s*${AT}\s*$`, "i");
const WATER = /^(?:(?:warm|hot|cold|distilled)\s+)?water\b\s*(.*)$/i;
const HEADINGS = ["name", "purpose", "use", "source", "note"] as const;

/** What a text has said so far. */
interface Draft {
  readonly headings: Map<string, string[]>;
  readonly lines: { readonly number: number; readonly ingredient: FormulaIngredient }[];
  readonly faults: string[];
  startMl?: number;
  startC?: number;
  totalMl?: number;
}

/**
 * A formula from plain text, one line per ingredient, in the order of mixing.
 *
 * Lines: `name: …` (also purpose, use, source, note); `water 750 mL at 52 C`; `metol 2 g`;
 * `sodium carbonate, monohydrate 80 g`; `acetic acid 28 % 48 mL`; a hydrate or chemical that the
 * registry lacks with its formula in square brackets, `sodium carbonate [Na2CO3.3H2O] 20 g`;
 * `water to 1000 mL`. Text after `#` and empty lines are passed over.
 *
 * @param text the whole formula; units mg, g, kg, mL, cc, L
 * @returns a formula per litre, for `scaleFormula` and `formulaMixingSheet`
 * @throws InputError that lists every line at fault with its number and what to write instead
 *
 * @example
 * parseBathFormula("metol 2 g\nsodium sulfite 50 g\nwater to 500 mL").ingredients[1].gPerL // => 100
 *
 * Source: the formula's own, as its `source:` line says.
 */
export function parseBathFormula(text: string): BathFormula {
  if (typeof text !== "string" || text.trim() === "") {
    throw new InputError(WHERE, "text", text, 'write lines such as "metol 2 g" and "water to 1 L"');
  }
  const draft: Draft = { headings: new Map(), lines: [], faults: [] };
  text.split(/\r\n|\r|\n/).forEach((raw, i) => {
    const line = raw.replace(/#.*$/, "").trim();
    if (line !== "") readLine(draft, line, i + 1);
  });
  if (draft.totalMl === undefined) {
    draft.faults.push('the final volume is missing; write a line "water to 1000 mL"');
  }
  if (draft.totalMl === 0) draft.faults.push("the final volume is 0; write a volume above 0");
  if (draft.lines.length === 0 && draft.faults.length === 0) {
    draft.faults.push('no ingredient was found; write lines such as "metol 2 g"');
  }
  const perLitre = 1000 / (draft.totalMl || 1000);
  const ingredients = draft.lines.map(({ number, ingredient }) => {
    const { gPerL, mlPerL } = ingredient;
    const scaled = {
      ...ingredient,
      ...(gPerL === undefined ? {} : { gPerL: gPerL * perLitre }),
      ...(mlPerL === undefined ? {} : { mlPerL: mlPerL * perLitre }),
    };
    try {
      resolveIngredient(WHERE, scaled);
    } catch (error) {
      const message = error instanceof Error ? error.message.replace(/^\w+: /, "") : "";
      draft.faults.push(`line ${number}: ${message}`);
    }
    return scaled;
  });
  const start = draft.startMl === undefined ? 750 : draft.startMl * perLitre;
  if (start > 1000) draft.faults.push("the starting water is more than the final volume");
  if (draft.faults.length > 0) {
    throw new InputError(
      WHERE,
      "text",
      draft.faults.length === 1 ? "at fault" : "at fault in several places",
      draft.faults.join("; "),
    );
  }
  const one = (heading: string) => draft.headings.get(heading)?.at(-1) ?? "";
  const name = one("name") || "formula without a name";
  return {
    id: name.toLowerCase().replace(/[^a-z0-9]+/g, "-"),
    name,
    purpose: one("purpose"),
    ingredients,
    startingWaterMlPerL: start,
    startingTemperatureC: draft.startC ?? 20,
    use: one("use"),
    source: one("source") || "the user's own",
    howObtained: "given by the user",
    notes: draft.headings.get("note") ?? [],
  };
}

function readLine(draft: Draft, line: string, number: number): void {
  const heading = /^(\w+)\s*:\s*(.*)$/.exec(line);
  const key = heading?.[1]?.toLowerCase() ?? "";
  if (HEADINGS.some((known) => known === key)) {
    draft.headings.set(key, [...(draft.headings.get(key) ?? []), heading?.[2] ?? ""]);
    return;
  }
  const match = LINE.exec(line);
  const [, what = "", digits = "", unit = "", celsius] = match ?? [];
  if (!match || /^\d{1,3},\d{3}$/.test(digits)) {
    draft.faults.push(`line ${number}: "${line}" is not understood; ${adviceForLine(line)}`);
    return;
  }
  const value = Number(digits.replace(",", "."));
  const word = unit.toLowerCase().replace("liter", "litre").replace(/s$/, "");
  const [ml, grams] = [MILLILITRES[word], GRAMS[word]];
  const water = WATER.exec(what)?.[1]?.toLowerCase();
  if (water !== undefined) {
    if (ml === undefined) draft.faults.push(`line ${number}: write water in mL or L`);
    else if (/^(?:to|up to|to make)$/.test(water)) draft.totalMl = value * ml;
    else if (water === "" || water === "to start" || water === "to start with") {
      draft.startMl = value * ml;
      if (celsius !== undefined) draft.startC = Number(celsius.replace(",", "."));
      if ((draft.startC ?? 0) > 100) {
        draft.faults.push(`line ${number}: water boils at 100 °C; write 0 to 100 C`);
      }
    } else draft.faults.push(`line ${number}: "${line}" is not understood; ${adviceForLine(line)}`);
    return;
  }
  const bracket = /^(.*?)\s*\[(.+)\]\s*$/.exec(what);
  const amount = grams === undefined ? { mlPerL: value * (ml ?? 1) } : { gPerL: value * grams };
  const ingredient: FormulaIngredient = bracket
    ? { chemical: bracket[1] ?? "", ownFormula: bracket[2] ?? "", ...amount }
    : { chemical: what, ...amount };
  draft.lines.push({ number, ingredient });
}

/** What to write instead of a line that is not understood. */
function adviceForLine(line: string): string {
  if (/\d,\d{3}(?!\d)/.test(line)) return "write 2000 or 2.000, whichever is meant (no comma)";
  if (/\d\s*°?\s*F\b/.test(line)) return 'write the temperature in °C: "water 750 mL at 52 C"';
  if (/^water\b/i.test(line)) return 'write "water 750 mL at 52 C" or "water to 1000 mL"';
  const customary = /(\d+(?:\.\d+)?)\s*(oz|ounces?|grains?|gr|lb)\b/i.exec(line);
  if (customary) return 'write grams; convertMass(2, "oz", "g") gives them';
  if (/(?:^|\s)[-−]\s*\d/.test(line)) return "write an amount above 0";
  return 'write a name, a number and g or mL, such as "metol 2 g"';
}
