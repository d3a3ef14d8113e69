import { InputError, requireNumber } from "../../input/index.ts";

/** Readings in the order of time: an array or a typed array of finite numbers. */
export type Readings = ArrayLike<number>;

/** Lets readings in if there are at least `atLeast` of them and every one is finite. */
export function requireReadings(
  where: string,
  argument: string,
  values: Readings,
  atLeast: number,
): void {
  if (typeof values !== "object" || values === null || typeof values.length !== "number") {
    throw new InputError(where, argument, values, "write an array of numbers");
  }
  if (values.length < atLeast) {
    const some = `write at least ${atLeast} reading${atLeast === 1 ? "" : "s"}`;
    throw new InputError(where, `${argument}.length`, values.length, some);
  }
  for (let i = 0; i < values.length; i++) {
    if (!Number.isFinite(values[i])) {
      const advice = "write a finite number, or leave the missing reading out";
      throw new InputError(where, `${argument}[${i}]`, values[i], advice);
    }
  }
}

/**
 * Positions at which a chart forgets what came before, as a lookup of 0 and 1 by position.
 * `undefined` where there are none.
 */
export function restartLookup(
  where: string,
  restartAt: readonly number[] | undefined,
  length: number,
): Uint8Array | undefined {
  if (restartAt === undefined || restartAt.length === 0) return undefined;
  const lookup = new Uint8Array(length);
  restartAt.forEach((at, i) => {
    const bounds = { min: 0, max: length - 1, whole: true };
    lookup[requireNumber(where, `restartAt[${i}]`, at, bounds)] = 1;
  });
  return lookup;
}
