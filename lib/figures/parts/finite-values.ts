import { InputError } from "../../input/index.ts";

/**
 * Refuses a number that is not finite anywhere in a figure or table, and says where it stands: JSON
 * has none, and a mark at no place is silently left out.
 */
export function requireFiniteValues(where: string, argument: string, value: unknown): void {
  if (typeof value === "number" && !Number.isFinite(value)) {
    throw new InputError(where, argument, value, "write a finite number, or null for a gap");
  }
  if (Array.isArray(value)) {
    for (const [i, each] of value.entries()) {
      requireFiniteValues(where, `${argument}[${i}]`, each);
    }
    return;
  }
  if (typeof value !== "object" || value === null) return;
  for (const [key, each] of Object.entries(value)) {
    requireFiniteValues(where, `${argument}.${key}`, each);
  }
}
