import { substituteChemical } from "wetside/solutions";
import { readSource } from "./run.ts";

const compute = ({ from, to }: { readonly from: string; readonly to: string }) =>
  substituteChemical(from, to, 1).massFactor;

export const computed = Object.fromEntries(
  readSource("substitution-factors").checks.map(({ id }) => [id, compute]),
);
