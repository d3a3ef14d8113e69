import { seriesName } from "./density-words.ts";
import { isBeyondLimit } from "./limit-level.ts";
import type { ParameterVerdict } from "./verdict.ts";
import type { WordedParameter } from "./word-parameter.ts";

/**
 * What there is beside the worst parameter, in brackets: by name where a limit is passed or a patch
 * was not read, counted where only a statistical signal stands. `""` if there is nothing.
 */
export function otherWords(others: readonly WordedParameter[]): string {
  const unread = others.filter((each) => each.verdict.deviation === null);
  const beyond = others.filter((each) => passesLimit(each.verdict));
  const signals = others.length - unread.length - beyond.length;
  const found = [
    beyond.length === 0 ? "" : `also beyond a limit: ${names(beyond)}`,
    unread.length === 0 ? "" : `also not read: ${names(unread)}`,
    signals === 0 ? "" : `statistical signals on ${signals} more`,
  ].filter((words) => words !== "");
  return found.length === 0 ? "" : ` (${found.join("; ")})`;
}

function names(all: readonly WordedParameter[]): string {
  const listed = all.slice(0, 4).map(({ verdict: { name, colour } }) => seriesName(name, colour));
  return all.length > 4 ? `${listed.join(", ")} and ${all.length - 4} more` : listed.join(", ");
}

function passesLimit({ deviation, limits }: ParameterVerdict): boolean {
  if (deviation === null) return false;
  return isBeyondLimit(deviation, limits.action) || isBeyondLimit(deviation, limits.control);
}
