import type { MixingSheet } from "../solutions/index.ts";
import { type Table, table } from "./table.ts";

/**
 * A mixing sheet as a table: what goes in, in which order, how much, and what to mind.
 *
 * @param sheet from `formulaMixingSheet`, `dilutionSheet` or `kitSheet`
 * @returns a table with one row per step; amounts as the instrument shows them
 * @throws InputError for a sheet without a title
 *
 * @example
 * mixingSheetTable({ title: "Stop bath", volumeMl: 1000, steps: [{ order: 1, what: "water", amount: 900, unit: "mL", note: "" }], cost: null, assumptions: [], warnings: [], cautions: [] }).rows.length // => 1
 */
export function mixingSheetTable(sheet: MixingSheet): Table {
  const rows = sheet.steps.map(({ order, what, amount, unit, note }) => ({
    order,
    what,
    amount: `${Number(amount.toPrecision(4))} ${unit}`,
    note,
  }));
  return table(rows, {
    caption: `${sheet.title}, makes ${Number(sheet.volumeMl.toPrecision(6))} mL`,
    columns: [
      { field: "order", heading: "Step" },
      { field: "what", heading: "What" },
      { field: "amount", heading: "How much", align: "right" },
      { field: "note", heading: "Mind" },
    ],
  });
}
