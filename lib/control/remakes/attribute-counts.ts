import { InputError, requireNumber } from "../../input/index.ts";

/** Lets counts in: one size a day, and not more remakes than prints. */
export function requireCounts(
  where: string,
  counts: readonly number[],
  sizes: readonly number[],
  most: "size" | "any",
): void {
  requireNumber(where, "number of days", counts.length, { min: 2 });
  if (sizes.length !== counts.length) {
    throw new InputError(where, "sizes", `${sizes.length} values`, `write ${counts.length}`);
  }
  sizes.forEach((size, i) => {
    requireNumber(where, `sizes[${i}]`, size, {
      above: 0,
      whole: most === "size",
      hint: "leave out days without prints",
    });
    const top = most === "size" ? { max: size, hint: "not more remakes than prints" } : {};
    requireNumber(where, `counts[${i}]`, counts[i], { min: 0, whole: true, ...top });
  });
}

export function sum(values: readonly number[]): number {
  return values.reduce((total, v) => total + v, 0);
}
