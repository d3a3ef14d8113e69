import type { ProductionRow } from "../../../lib/records/index.ts";
import formats from "../../formats.json" with { type: "json" };

const areaM2 = new Map(
  formats.formats.map(({ id, widthMm, lengthMm }) => [id, (widthMm * lengthMm) / 1e6]),
);

/** Square metres that went through one process on one day. */
export function areaOf(
  production: readonly ProductionRow[],
  process: string,
  date: string,
): number {
  let total = 0;
  for (const row of production) {
    if (row.process !== process || row.date !== date) continue;
    const each = areaM2.get(row.format);
    if (each === undefined) throw new Error(`no area for the format ${row.format}`);
    total += each * row.count;
  }
  return total;
}
