import { chemicalInForm, type FormulaIngredient, solutionPh } from "wetside/solutions";

const mass = (name: string, form?: string) => chemicalInForm(name, form).molarMassGPerMol;

export const phosphate: readonly FormulaIngredient[] = [
  {
    chemical: "potassium dihydrogen phosphate",
    gPerL: 0.025 * mass("potassium dihydrogen phosphate"),
  },
  {
    chemical: "disodium hydrogen phosphate",
    form: "anhydrous",
    gPerL: 0.025 * mass("disodium hydrogen phosphate", "anhydrous"),
  },
];
export const borax: readonly FormulaIngredient[] = [
  { chemical: "borax", gPerL: 0.01 * mass("borax") },
];
export const carbonate: readonly FormulaIngredient[] = [
  { chemical: "sodium bicarbonate", gPerL: 0.025 * mass("sodium bicarbonate") },
  {
    chemical: "sodium carbonate",
    form: "anhydrous",
    gPerL: 0.025 * mass("sodium carbonate", "anhydrous"),
  },
];
export const phthalate = { ions: { "K+": 0.05 }, acids: { phthalic: 0.05 }, notCounted: [] };

type Inputs = { readonly temperaturesC: readonly number[] };

const along =
  (source: Parameters<typeof solutionPh>[0]) =>
  ({ temperaturesC }: Inputs) =>
    temperaturesC.map((temperatureC) => solutionPh(source, { temperatureC }).pH);

export const computed = {
  phthalate: along(phthalate),
  phosphate: along(phosphate),
  borate: along(borax),
  "borate-60": () => solutionPh(borax, { temperatureC: 60 }).pH,
  carbonate: along(carbonate),
};
