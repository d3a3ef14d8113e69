import type { Densities, Patches } from "../../control/strip.ts";
import type { Columns } from "../cells/columns.ts";
import { numberCell } from "../cells/number-cell.ts";
import type { NumberKind } from "../cells/number-fault.ts";
import type { ReadContext } from "../reading/log-shape.ts";
import type { Report } from "../reading/report.ts";
import { patchColumns } from "./patch-columns.ts";

/** Reads all patches of a row; `undefined` if any cell was reported. */
export type PatchReader = (
  cells: readonly string[],
  /** Whether all three cells of a patch may be empty, so that the patch is left out. */
  mayBeEmpty: (patch: string) => boolean,
) => Patches | undefined;

/** Builds the reader of the patches of a row. */
export function patchReader(
  patches: readonly string[],
  columns: Columns,
  kind: NumberKind,
  report: Report,
  context: ReadContext,
): PatchReader {
  const readers = patches.map((patch) => {
    const found = patchColumns(patch).map((name) => columns.get(name));
    const [red, green, blue] = found.map((each) => numberCell(each, kind, report, context));
    if (red === undefined || green === undefined || blue === undefined) {
      throw new Error(`the patch ${patch} has not three columns`);
    }
    const indices = found.map((each) => each.index);
    const isEmpty = (cells: readonly string[]) =>
      indices.every((index) => (cells[index] ?? "").trim() === "");
    return { patch, red, green, blue, isEmpty };
  });
  return (cells, mayBeEmpty) => {
    const read: Record<string, Densities> = {};
    let good = true;
    for (const each of readers) {
      if (mayBeEmpty(each.patch) && each.isEmpty(cells)) continue;
      const densities = { red: each.red(cells), green: each.green(cells), blue: each.blue(cells) };
      const { red, green, blue } = densities;
      if (Number.isNaN(red + green + blue)) good = false;
      else read[each.patch] = densities;
    }
    return good ? read : undefined;
  };
}
