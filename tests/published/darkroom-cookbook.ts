import {
  bathFormula,
  chemicalInForm,
  substituteChemical,
  waterDensityGPerMl,
} from "wetside/solutions";
import { readSource } from "./run.ts";

const factor = ({ from, to }: { readonly from: string; readonly to: string }) =>
  substituteChemical(from, to, 1).massFactor;

const amounts = (id: string) => () =>
  bathFormula(id).ingredients.map((each) => each.gPerL ?? each.mlPerL ?? Number.NaN);

const factors = readSource("darkroom-cookbook").checks.filter(({ id }) =>
  id.startsWith("substitute"),
);

export const computed = {
  ...Object.fromEntries(factors.map(({ id }) => [id, factor])),
  "sulfate-stop": amounts("sulfate-stop-bath"),
  "citric-stop": amounts("citric-stop-bath"),
  "glacial-for-28": () => {
    const { form, massFraction } = chemicalInForm("acetic acid glacial");
    const acid = 3 * (form.densityGPerMl ?? Number.NaN);
    return (100 * acid * massFraction) / (acid + 8 * waterDensityGPerMl(20));
  },
};
