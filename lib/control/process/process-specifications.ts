import { parseProcessSpecification } from "./parse-process-specification.ts";
import type { ProcessSpecification } from "./process-specification.ts";
import { colourNegativeProcess, colourPaperProcess } from "./processes.ts";

/**
 * The processes that a lab's logs may name: the library's, and the lab's own, which takes the place of
 * one of the library's if it has the same id.
 *
 * @param own the lab's own specification: the text of a JSON file or the object it holds; left out,
 * the library's alone
 * @returns the specifications, the lab's own first
 * @throws InputError as `parseProcessSpecification`
 *
 * @example
 * const own = structuredClone(colourPaperProcess) as { name: string };
 * own.name = "Paper, line 2";
 * processSpecifications(own).map((one) => one.name) // => ["Paper, line 2", "Colour-negative film process"]
 */
export function processSpecifications(own?: unknown): readonly ProcessSpecification[] {
  const library = [colourNegativeProcess, colourPaperProcess];
  if (own === undefined) return library;
  const first = parseProcessSpecification(own);
  return [first, ...library.filter((one) => one.id !== first.id)];
}
