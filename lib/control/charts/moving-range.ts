import type { Readings } from "./readings.ts";

/** Moving ranges of two, each with the position of its later reading. */
export interface MovingRanges {
  readonly rows: readonly number[];
  readonly values: readonly number[];
}

/** |x(i) − x(i−1)| over a stretch, not across a restart and not with a skipped reading. */
export function movingRanges(
  values: Readings,
  stretch: {
    readonly first: number;
    readonly last: number;
    readonly skip?: ReadonlySet<number> | undefined;
    readonly restart?: Uint8Array | undefined;
  },
): MovingRanges {
  const { first, last, skip, restart } = stretch;
  const rows: number[] = [];
  const ranges: number[] = [];
  for (let i = first + 1; i <= last; i++) {
    if (restart !== undefined && restart[i] === 1) continue;
    if (skip !== undefined && (skip.has(i) || skip.has(i - 1))) continue;
    rows.push(i);
    ranges.push(Math.abs((values[i] ?? 0) - (values[i - 1] ?? 0)));
  }
  return { rows, values: ranges };
}
