import { solutionHazards } from "wetside/solutions";
import { type Computed, readSource } from "./run.ts";

interface Inputs {
  readonly chemical: string;
  readonly code: string;
}

/** The lowest per cent at which a solution of one chemical bears the statement, by halving. */
function lowestPercent({ chemical, code }: Inputs): number {
  const bears = (massPercent: number) =>
    solutionHazards([{ chemical, massPercent }]).statements.some((each) => each.code === code);
  // Further up a stronger statement may take its place, so the search climbs from below.
  let high = 0.01;
  while (!bears(high)) {
    if (high > 100) return Number.NaN;
    high *= 1.05;
  }
  let low = high / 1.05;
  while (high - low > 1e-7) {
    const middle = (low + high) / 2;
    if (bears(middle)) high = middle;
    else low = middle;
  }
  return high;
}

const checks = readSource("clp-mixture-limits").checks;

export const computed: Computed = Object.fromEntries(
  checks.map(({ id }) => [id, (inputs: unknown) => lowestPercent(inputs as Inputs)]),
);
