import { InputError, requireNumber } from "../../input/index.ts";
import type { Readings } from "./readings.ts";

/** The readings of a base period, with the positions they came from. */
export interface BaseReadings {
  readonly first: number;
  readonly last: number;
  readonly excluded: ReadonlySet<number>;
  readonly readings: readonly number[];
  readonly positions: readonly number[];
}

/** Picks a base period out of a series, or says why it cannot serve. */
export function requireBase(
  where: string,
  values: Readings,
  options: {
    readonly base?: { readonly first: number; readonly last: number };
    readonly exclude?: readonly number[];
    readonly minimumReadings?: number;
  },
): BaseReadings {
  const end = values.length - 1;
  const bounds = { min: 0, max: end, whole: true };
  const first = requireNumber(where, "base.first", options.base?.first ?? 0, bounds);
  const last = requireNumber(where, "base.last", options.base?.last ?? end, bounds);
  if (last < first) {
    throw new InputError(
      where,
      "base.last",
      last,
      `write a position from base.first (${first}) on`,
    );
  }
  const excluded = new Set(options.exclude ?? []);
  for (const at of excluded) requireNumber(where, "exclude", at, bounds);
  const readings: number[] = [];
  const positions: number[] = [];
  for (let i = first; i <= last; i++) {
    const value = values[i];
    if (value === undefined || excluded.has(i)) continue;
    readings.push(value);
    positions.push(i);
  }
  const smallest = { min: 2, whole: true };
  const needed = requireNumber(where, "minimumReadings", options.minimumReadings ?? 20, smallest);
  if (readings.length < needed) {
    const advice = `choose a base period of at least ${needed} readings (minimumReadings)`;
    throw new InputError(where, "number of readings in the base period", readings.length, advice);
  }
  return { first, last, excluded, readings, positions };
}
