import { closestWord } from "../../input/index.ts";
import { type Report, refuse } from "../reading/report.ts";
import type { Column } from "./columns.ts";

/** What a column of words may hold. */
export interface WordKind {
  /** What it is, for messages: `"process"`. */
  readonly what: string;
  /** The words allowed; without them any word is. */
  readonly allowed?: readonly string[];
  /** What to do about a word that is not among them, besides correcting it. */
  readonly ifUnknown?: string;
}

const SHOWN = 12;
const NEWLINE_ADVICE = 'write it on one line, and close every cell that opens with "';

/** Builds the reader of a column of words. It gives `""` for a cell it has reported. */
export function wordCell(
  column: Column,
  kind: WordKind,
  report: Report,
): (cells: readonly string[]) => string {
  const { index, header } = column;
  const allowed = kind.allowed === undefined ? undefined : new Set(kind.allowed);
  const known = new Map<string, string>();
  const advised = new Map<string, string>();
  return (cells) => {
    const cell = cells[index] ?? "";
    const before = known.get(cell);
    if (before !== undefined) return before;
    const word = cell.trim();
    const fault = wordFault(word, kind.what);
    if (fault !== undefined) {
      refuse(report, header, cell, fault.problem, fault.advice);
      return "";
    }
    if (allowed !== undefined && !allowed.has(word)) {
      const advice = advised.get(word) ?? unknownAdvice(word, kind);
      advised.set(word, advice);
      refuse(report, header, cell, `a ${kind.what} nobody registered`, advice);
      return "";
    }
    // A copy, so that one word does not keep the whole text of the file in memory.
    const kept = word.slice(0, 1) + word.slice(1);
    known.set(cell, kept);
    return kept;
  };
}

function wordFault(word: string, what: string) {
  if (word === "") {
    return { problem: "the cell is empty", advice: `write the ${what}, or leave out the row` };
  }
  if (word.includes("\n")) {
    return { problem: "the cell runs over several lines", advice: NEWLINE_ADVICE };
  }
  if (word.includes("\ufffd")) {
    return { problem: "letters that are not UTF-8", advice: "export the file as CSV, UTF-8" };
  }
  return undefined;
}

function unknownAdvice(word: string, { what, allowed = [], ifUnknown }: WordKind): string {
  const near = closestWord(word, allowed);
  const listed = allowed.slice(0, SHOWN).join(", ") + (allowed.length > SHOWN ? ", …" : "");
  const some = allowed.length === 1 ? listed : `one of ${listed}`;
  const right = near ?? (allowed.length === 0 ? `a registered ${what}` : some);
  return `write ${right}${ifUnknown === undefined ? "" : `, or ${ifUnknown}`}`;
}
