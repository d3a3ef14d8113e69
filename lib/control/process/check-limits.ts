import { isFields, isText, shown, wordIn } from "./json-words.ts";
import type { LimitOrigin } from "./process-limits.ts";

/** The words in which a limit says how it was obtained. */
export const limitOrigins: readonly LimitOrigin[] = [
  "read in a copy",
  "from memory, unverified",
  "common practice, no source",
  "illustrative",
  "the lab's own",
];

const limitNames = ["adjustment", "action", "control"] as const;

/** Adds to the list everything that is wrong with the limits of one parameter. */
export function limitsProblems(
  problems: string[],
  at: string,
  limits: unknown,
  spread: boolean,
): void {
  if (!isFields(limits)) {
    problems.push(`${at} is ${shown(limits)}; write { "action": …, "control": … }`);
    return;
  }
  for (const field of Object.keys(limits)) {
    if (field !== "kind") wordIn(problems, `${at}, the field`, field, limitNames);
  }
  for (const name of limitNames) {
    const limit = limits[name];
    if (limit === null || limit === undefined) continue;
    if (!isFields(limit)) {
      problems.push(`${at}.${name} is ${shown(limit)}; write { "lower": …, "upper": … } or null`);
      continue;
    }
    const [lower, upper] = [limit.lower, limit.upper];
    for (const [side, value] of [
      ["lower", lower],
      ["upper", upper],
    ] as const) {
      if (value !== null && !(typeof value === "number" && Number.isFinite(value))) {
        problems.push(`${at}.${name}.${side} is ${shown(value)}; write a density or null`);
      }
    }
    if (typeof lower === "number" && typeof upper === "number" && lower > upper) {
      problems.push(
        `${at}.${name} has lower ${lower} above upper ${upper}; the limits are crossed`,
      );
    } else if (typeof lower === "number" && lower > 0) {
      problems.push(`${at}.${name}.lower is ${lower}; it is a deviation from aim, 0 or below`);
    } else if (typeof upper === "number" && upper < 0) {
      problems.push(`${at}.${name}.upper is ${upper}; it is a deviation from aim, 0 or above`);
    }
    if (lower === null && upper === null) {
      problems.push(`${at}.${name} has neither side; write null for the whole limit`);
    }
    if (spread && typeof lower === "number") {
      problems.push(`${at}.${name}.lower is ${lower}; a spread is never negative, write null`);
    }
    if (!isText(limit.source))
      problems.push(`${at}.${name}.source is missing; say where it is from`);
    wordIn(problems, `${at}.${name}.howObtained`, limit.howObtained, limitOrigins);
  }
  for (const [inner, outer] of [
    ["adjustment", "action"],
    ["adjustment", "control"],
    ["action", "control"],
  ] as const) {
    for (const [side, sign] of [
      ["lower", -1],
      ["upper", 1],
    ] as const) {
      const tight = sideOf(limits[inner], side);
      const wide = sideOf(limits[outer], side);
      if (tight !== undefined && wide !== undefined && sign * tight > sign * wide) {
        problems.push(
          `${at}.${inner}.${side} (${tight}) is wider than ${at}.${outer}.${side} (${wide}); are the two exchanged?`,
        );
      }
    }
  }
}

function sideOf(limit: unknown, side: "lower" | "upper"): number | undefined {
  const value = isFields(limit) ? limit[side] : undefined;
  return typeof value === "number" ? value : undefined;
}
