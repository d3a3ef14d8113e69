import { chemicalInForm, substituteChemical } from "wetside/solutions";

const solution = chemicalInForm("ammonium ferric EDTA", "50 % solution");
const grams = (ml: number) =>
  ml * (solution.form.densityGPerMl ?? Number.NaN) * solution.massFraction;

export const computed = {
  grams: () => grams(100),
  equivalence: () =>
    substituteChemical("sodium ferric EDTA trihydrate", "ammonium ferric EDTA 50 % solution", 100)
      .amount,
  moles: () => [
    grams(132) / solution.molarMassGPerMol,
    100 / chemicalInForm("sodium ferric EDTA", "trihydrate").molarMassGPerMol,
    100 / chemicalInForm("sodium ferric EDTA", "anhydrous").molarMassGPerMol,
  ],
};
