import type { Patches, Strip, StripBatch } from "../../control/strip.ts";
import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import { patchColumn, patchColumns, patchOf } from "../strips/patch-columns.ts";
import { csvText } from "./csv-text.ts";
import { plainNumber } from "./plain-number.ts";

/**
 * Writes strips as a control-strip log that `parseStripLog` reads back to the same strips.
 *
 * @param strips any strips; a patch that a strip lacks becomes three empty cells
 * @param options `decimals` of the densities, 0 to 6; without it every digit is written
 * @returns the CSV text, columns as in `parseStripLog`, patches in the order they first occur
 * @throws InputError for a patch whose name cannot be a column
 *
 * @example
 * formatStripLog([{ takenAt: "2026-08-14T07:10", process: "colour-paper", stripBatch: "P-7", operator: "MB", patches: { ld: { red: 0.8, green: 0.81, blue: 0.79 } } }], { decimals: 2 }) // => "taken_at,process,strip_batch,operator,ld_r,ld_g,ld_b\n2026-08-14T07:10,colour-paper,P-7,MB,0.80,0.81,0.79\n"
 */
export function formatStripLog(
  strips: readonly Strip[],
  options: { readonly decimals?: number } = {},
): string {
  requireEntries("formatStripLog", "strips", strips);
  requireObject("formatStripLog", "options", options, "an object of options, or leave it out");
  const patches = patchesOf(
    "formatStripLog",
    strips.map((strip) => strip.patches),
  );
  const header = [
    "taken_at",
    "process",
    "strip_batch",
    "operator",
    ...patches.flatMap(patchColumns),
  ];
  const rows = strips.map((strip) => [
    strip.takenAt,
    strip.process,
    strip.stripBatch,
    strip.operator,
    ...densityCells(strip.patches, patches, options.decimals),
  ]);
  return csvText(header, rows);
}

/**
 * Writes strip batches as a register that `parseStripBatchRegister` reads back to the same batches.
 *
 * @param batches any batches; a batch's `note` is not kept
 * @param options `decimals` of the densities, 0 to 6; without it every digit is written
 * @returns the CSV text, two rows a batch
 * @throws InputError for a patch whose name cannot be a column
 *
 * @example
 * formatStripBatchRegister([]) // => "strip_batch,process,reading,first_used\n"
 */
export function formatStripBatchRegister(
  batches: readonly StripBatch[],
  options: { readonly decimals?: number } = {},
): string {
  requireEntries("formatStripBatchRegister", "batches", batches);
  const patches = patchesOf(
    "formatStripBatchRegister",
    batches.flatMap((batch) => [batch.reference, batch.correction]),
  );
  const header = [
    "strip_batch",
    "process",
    "reading",
    "first_used",
    ...patches.flatMap(patchColumns),
  ];
  const rows = batches.flatMap((batch) =>
    (["reference", "correction"] as const).map((reading) => [
      batch.id,
      batch.process,
      reading,
      batch.firstUsed ?? "",
      ...densityCells(batch[reading], patches, options.decimals),
    ]),
  );
  return csvText(header, rows);
}

function patchesOf(where: string, all: readonly Patches[]): readonly string[] {
  const names = [...new Set(all.flatMap((patches) => Object.keys(patches)))];
  for (const name of names) {
    const column = patchColumn(name);
    if (patchOf(column) === name && /^[a-z][a-z0-9_]*$/.test(column)) continue;
    const advice =
      "name patches as dMin, ld, retainedSilver: letters and digits, small letter first";
    throw new InputError(where, "patch", name, advice);
  }
  return names;
}

function densityCells(patches: Patches, order: readonly string[], decimals: number | undefined) {
  return order.flatMap((patch) => {
    const densities = patches[patch];
    if (densities === undefined) return ["", "", ""];
    const { red, green, blue } = densities;
    return [red, green, blue].map((each) => plainNumber(each, decimals));
  });
}
