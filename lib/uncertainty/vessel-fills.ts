import { InputError, requireNumber } from "../input/index.ts";

const MOST_FILLS = 100;

/** How often a vessel is filled for a volume; once where its capacity is not given. */
export function vesselFills(where: string, volumeMl: number, capacityMl?: number): number {
  if (capacityMl === undefined) return 1;
  const capacity = requireNumber(where, "capacityMl", capacityMl, { above: 0, unit: "mL" });
  // A hair of slack: a litre of a litre jug is one fill.
  const fills = Math.max(1, Math.ceil((volumeMl / capacity) * (1 - 1e-12)));
  if (fills <= MOST_FILLS) return fills;
  const advice = `write a larger vessel; this one would be filled ${fills} times`;
  throw new InputError(where, "capacityMl", capacityMl, advice);
}
