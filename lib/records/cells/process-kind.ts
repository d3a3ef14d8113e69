import type { WordKind } from "./word-cell.ts";

/** The processes a log may name if the caller says nothing. */
export const USUAL_PROCESSES: readonly string[] = ["colour-negative", "colour-paper"];

/** The column `process`: one of the stated ids, or the usual two. */
export function processKind(stated: readonly string[] | undefined): WordKind {
  return {
    what: "process",
    allowed: stated ?? USUAL_PROCESSES,
    ifUnknown: 'name the lab\'s own with processes: ["…"]',
  };
}
