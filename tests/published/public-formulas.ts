import { bathFormula } from "wetside/solutions";
import { readSource } from "./run.ts";

const amounts = (id: string) => () =>
  bathFormula(id).ingredients.map((each) => each.gPerL ?? each.mlPerL ?? Number.NaN);

export const computed = Object.fromEntries(
  readSource("public-formulas").checks.map(({ id }) => [id, amounts(id)]),
);
