import { molarMass } from "wetside/solutions";
import { readSource } from "./run.ts";

const compute = ({ formula }: { readonly formula: string }) => {
  const { molarMassGPerMol, boundGPerMol } = molarMass(formula);
  return [molarMassGPerMol, boundGPerMol];
};

export const computed = Object.fromEntries(
  readSource("iupac-2021-molar-masses").checks.map(({ id }) => [id, compute]),
);
