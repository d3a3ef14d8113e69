import type { BudgetRow } from "./uncertainty-budget.ts";

/** What a budget rests on, and what in it to think about. */
export function budgetRemarks(
  rows: readonly BudgetRow[],
  combined: number,
  correlated: boolean,
  ownFactor: boolean,
): { readonly assumptions: readonly string[]; readonly warnings: readonly string[] } {
  const warnings: string[] = [];
  const assumptions = [
    "the model is close to a straight line over the uncertainty of each input",
    correlated ? "correlations not given are 0" : "the inputs are independent of each other",
    ownFactor ? "the coverage factor is the one given" : "the result is close to normal or t",
  ];
  for (const { name, standardUncertainty, sensitivity, sensitivityError } of rows) {
    if (standardUncertainty * sensitivityError > 1e-3 * combined && combined > 0) {
      warnings.push(
        `the sensitivity to ${name} (${sensitivity}) is uncertain; is the model smooth?`,
      );
    }
    if (standardUncertainty > 0 && Math.abs(sensitivity) <= sensitivityError) {
      warnings.push(`the result does not change with ${name} at first order; use Monte Carlo`);
    }
  }
  const finite = rows.some((row) => row.degreesOfFreedom !== "infinite");
  if (correlated && finite) {
    warnings.push("effective degrees of freedom are not defined for correlated inputs");
  }
  return { assumptions, warnings };
}
