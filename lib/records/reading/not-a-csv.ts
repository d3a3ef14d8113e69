/** What a file that is not text of rows turned out to be, and what to do about it. */
export interface ForeignFile {
  readonly problem: string;
  readonly advice: string;
}

const EXPORT = "open it where it was made and export (save a copy) as CSV, UTF-8";
const LOST = "\ufffd";

/** First characters of files that are not CSV, as their bytes read in UTF-8 or in Latin-1. */
const BEGINNINGS: readonly (readonly [start: string, problem: string])[] = [
  ["PK\u0003\u0004", "the file is a spreadsheet (or another ZIP archive), not CSV"],
  ["PK\u0005\u0006", "the file is an empty ZIP archive, not CSV"],
  [`${LOST}${LOST}\u0011`, "the file is an old binary spreadsheet, not CSV"],
  ["\u00d0\u00cf\u0011\u00e0", "the file is an old binary spreadsheet, not CSV"],
  [`${LOST}${LOST}`, "the file is UTF-16 text, not UTF-8"],
  ["\u00ff\u00fe", "the file is UTF-16 text, not UTF-8"],
  ["\u00fe\u00ff", "the file is UTF-16 text, not UTF-8"],
  ["%PDF", "the file is a PDF document, not CSV"],
  ["{\\rtf", "the file is a word processor's document, not CSV"],
];

/**
 * Recognises what is often handed in under the name of a CSV: an empty file, a spreadsheet
 * renamed, text in another encoding, a page or a document.
 */
export function foreignFile(text: string): ForeignFile | undefined {
  const start = text.slice(text.charCodeAt(0) === 0xfeff ? 1 : 0, 4096);
  if (start.trim() === "" && text.trim() === "") {
    return { problem: "the file is empty", advice: "write the header line and one line a reading" };
  }
  const known = BEGINNINGS.find(([beginning]) => start.startsWith(beginning));
  if (known !== undefined) return { problem: known[1], advice: EXPORT };
  if (start.charCodeAt(1) === 0 || start.charCodeAt(0) === 0) {
    return { problem: "the file is UTF-16 text, not UTF-8", advice: EXPORT };
  }
  if (start.includes("\0")) return { problem: "the file is binary, not text", advice: EXPORT };
  if (/^\s*(<\?xml|<!doctype|<html)/i.test(start)) {
    return { problem: "the file is XML or HTML, not CSV", advice: EXPORT };
  }
  return undefined;
}
