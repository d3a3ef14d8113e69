import { InputError } from "../../input/index.ts";
import {
  everySheetCautions,
  hazardClasses,
  type Incompatibility,
  incompatibilities,
} from "./caution-data.ts";

/**
 * What must not meet among these substances.
 *
 * @param substances names as on bottles or in a formula: `"glacial acetic acid"`,
 *   `"sodium-thiosulfate-pentahydrate"`, `"household bleach"`
 * @returns the pairs of hazard classes found, each with its caution; empty if none is known
 * @throws InputError if it is not a list of names
 *
 * @example
 * mustNotMeet(["household bleach", "stop bath"]).map((pair) => pair.second) // => ["acid"]
 *
 * Source: general knowledge of safety data sheets, from memory; the data sheet of the product decides.
 */
export function mustNotMeet(substances: readonly string[]): readonly Incompatibility[] {
  const found = classesOf("mustNotMeet", substances);
  const groups = found.map(({ classes }) => new Set(classes));
  return incompatibilities.filter(({ first, second }) =>
    // Two different substances, or one mix whose name says both.
    groups.some((one, i) => one.has(first) && groups.some((two, j) => i !== j && two.has(second))),
  );
}

/**
 * The cautions for a mix: what must not meet first, then what each substance can do, then what holds
 * for every mix.
 *
 * @param substances names of what goes into the mix, or stands beside it on the bench
 * @returns sentences, each once; never empty
 * @throws InputError if it is not a list of names
 *
 * @example
 * cautionsFor(["water", "glacial acetic acid"])[0].startsWith("Always pour acid into water") // => true
 *
 * Source: general knowledge of safety data sheets, from memory; the data sheet of the product decides.
 */
export function cautionsFor(substances: readonly string[]): readonly string[] {
  const present = new Set(classesOf("cautionsFor", substances).flatMap(({ classes }) => classes));
  const own = hazardClasses.filter(({ id }) => present.has(id)).flatMap(({ cautions }) => cautions);
  const meeting = mustNotMeet(substances).map(({ caution }) => caution);
  return [...new Set([...meeting, ...own, ...everySheetCautions])];
}

function classesOf(where: string, substances: readonly string[]) {
  const names: unknown = substances;
  if (!Array.isArray(names) || names.some((name) => typeof name !== "string")) {
    const advice = 'write a list of names, like ["sodium thiosulfate", "acetic acid"]';
    throw new InputError(where, "substances", substances, advice);
  }
  return substances.map((name) => ({ name, classes: classesIn(name) }));
}

function classesIn(name: string): readonly string[] {
  // Names may come as ids: "sodium-sulfite" reads as "sodium sulfite".
  const spellings = [name.toLowerCase(), name.toLowerCase().replace(/[-_]+/g, " ")];
  const holds = (words: readonly string[]) =>
    words.some((word) => spellings.some((spelling) => startsWordIn(spelling, word)));
  const is = (names: readonly string[]) => spellings.some((text) => names.includes(text.trim()));
  return hazardClasses
    .filter(({ words, names = [] }) => holds(words) || is(names))
    .map(({ id }) => id);
}

/** True if the word stands in the text at the start of a word: "cyanide", not "ferricyanide". */
function startsWordIn(text: string, word: string): boolean {
  let at = text.indexOf(word);
  while (at >= 0) {
    if (at === 0 || !/[a-z]/.test(text[at - 1] ?? "")) return true;
    at = text.indexOf(word, at + 1);
  }
  return false;
}
