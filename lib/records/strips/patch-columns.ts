const SHORT: Readonly<Record<string, string>> = { dMin: "dmin", dMax: "dmax" };
const LONG = new Map(Object.entries(SHORT).map(([patch, column]) => [column, patch]));
const FILTERS = ["r", "g", "b"] as const;

/** The start of a patch's column names: `dMin` gives `dmin`, `retainedSilver` `retained_silver`. */
export function patchColumn(patch: string): string {
  return SHORT[patch] ?? snakeCase(patch);
}

/** The patch that a start of column names belongs to: the other way round of `patchColumn`. */
export function patchOf(column: string): string {
  return LONG.get(column) ?? camelCase(column);
}

/** The three columns of a patch: `dmin_r`, `dmin_g`, `dmin_b`. */
export function patchColumns(patch: string): readonly string[] {
  return FILTERS.map((filter) => `${patchColumn(patch)}_${filter}`);
}

/**
 * The patches of a header: those with at least two of their three columns (one alone is more
 * likely a slip of the pen), in the header's order.
 */
export function patchesIn(headers: readonly string[]): readonly string[] {
  const columns = new Map<string, number>();
  for (const header of headers) {
    const column = /^([a-z][a-z0-9_]*)_[rgb]$/.exec(header)?.[1];
    if (column !== undefined) columns.set(column, (columns.get(column) ?? 0) + 1);
  }
  return [...columns].filter(([, count]) => count > 1).map(([column]) => patchOf(column));
}

/**
 * The patches whose columns a log must have: those of its header, and those that were stated of
 * which it has at least one column. A header with none of either needs the stated or the usual ones.
 */
export function wantedPatches(
  headers: readonly string[],
  stated: readonly string[],
): readonly string[] {
  const begun = stated.filter((patch) =>
    patchColumns(patch).some((column) => headers.includes(column)),
  );
  const patches = new Set([...patchesIn(headers), ...begun]);
  if (patches.size > 0) return [...patches];
  return stated.length > 0 ? [...new Set(stated)] : ["dMin", "ld", "hd"];
}

/** `too_bright` gives `tooBright`. */
export function camelCase(column: string): string {
  return column.replace(/_([a-z])/g, (_, letter: string) => letter.toUpperCase());
}

/** `tooBright` gives `too_bright`. */
export function snakeCase(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
}
