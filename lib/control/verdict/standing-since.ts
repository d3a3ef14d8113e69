/** The first position of the unbroken run of signals that reaches to `end`. */
export function standingSince(end: number, stands: (at: number) => boolean): number {
  let first = end;
  while (first > 0 && stands(first - 1)) first--;
  return first;
}

/** The first of the positions that follow one another without a gap up to the last of them. */
export function lastRunStart(positions: readonly number[]): number {
  let i = positions.length - 1;
  while (i > 0 && positions[i - 1] === (positions[i] ?? 0) - 1) i--;
  return positions[i] ?? 0;
}
