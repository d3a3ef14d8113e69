import { colourNegativeProcess, colourPaperProcess } from "wetside/control";
import type { Computed } from "./run.ts";

interface Where {
  readonly process: string;
  readonly parameter: string;
}

const limitsOf = ({ process, parameter }: Where) => {
  const specification = [colourNegativeProcess, colourPaperProcess].find((p) => p.id === process);
  const limits = specification?.parameters.find((each) => each.id === parameter)?.limits;
  if (limits === undefined) throw new Error(`no ${parameter} in ${process}`);
  return limits;
};
const upper = (limit: { readonly upper: number | null } | null) => limit?.upper ?? Number.NaN;
const three = (where: Where) => {
  const { adjustment, action, control } = limitsOf(where);
  return [upper(adjustment), upper(action), upper(control)];
};

export const computed: Computed = {
  dMin: three,
  ld: three,
  hdLessLd: three,
  retainedSilver: three,
  colourSpread: (where: Where) => [upper(limitsOf(where).control)],
  "paper-dMin": (where: Where) => [upper(limitsOf(where).control)],
  "paper-ld": (where: Where) => [upper(limitsOf(where).adjustment)],
};
