import { requireObject } from "../../input/index.ts";
import type { UncertaintyBudget } from "../../uncertainty/index.ts";
import { type Table, table } from "../parts/table.ts";

/**
 * An uncertainty budget as a table: each input's value, uncertainty, sensitivity and share.
 *
 * @param budget from `propagateUncertainty`, `dilutionStrengthBudget` or `powderStrengthBudget`
 * @param options.caption what the result is; required
 * @returns a table with one row per input and a last row for the result
 * @throws InputError for a missing caption
 *
 * @example
 * uncertaintyBudgetTable(propagateUncertainty(({ x }) => 2 * x, [{ name: "x", distribution: { kind: "normal", mean: 1, standardUncertainty: 0.1 } }]), { caption: "Twice x" }).rows.length // => 2
 *
 * Source: layout after JCGM 100:2008, table H.1.
 */
export function uncertaintyBudgetTable(
  budget: UncertaintyBudget,
  options: { readonly caption: string },
): Table {
  requireObject(
    "uncertaintyBudgetTable",
    "budget",
    budget,
    "an object with value, combinedStandardUncertainty, relativeStandardUncertainty, …",
  );
  requireObject("uncertaintyBudgetTable", "options", options, "an object with caption");
  const figures = (value: number, digits: number) => String(Number(value.toPrecision(digits)));
  const rows = budget.rows.map((row) => ({
    name: row.name,
    value: `${figures(row.value, 5)} ${row.unit}`.trim(),
    standardUncertainty: figures(row.standardUncertainty, 2),
    sensitivity: figures(row.sensitivity, 3),
    contribution: figures(Math.abs(row.contribution), 2),
    share: row.variancePercent.toFixed(1),
  }));
  const result = {
    name: "result",
    value: figures(budget.value, 5),
    standardUncertainty: figures(budget.combinedStandardUncertainty, 2),
    sensitivity: "",
    contribution: figures(budget.combinedStandardUncertainty, 2),
    share: "100.0",
  };
  return table([...rows, result], {
    caption: options.caption,
    columns: [
      { field: "name", heading: "Input" },
      { field: "value", heading: "Value", align: "right" },
      { field: "standardUncertainty", heading: "Standard uncertainty", align: "right" },
      { field: "sensitivity", heading: "Sensitivity", align: "right" },
      { field: "contribution", heading: "Contribution", align: "right" },
      { field: "share", heading: "Share of variance", unit: "%", align: "right" },
    ],
  });
}
