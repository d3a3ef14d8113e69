import { bufferPh, solutionPh } from "wetside/solutions";
import { borax, carbonate, phosphate, phthalate } from "./jis-z-8802-standards.ts";

export const citrate = { ions: { "K+": 0.05 }, acids: { citric: 0.05 }, notCounted: [] };
export const physiological = {
  ions: { "K+": 0.008695, "Na+": 2 * 0.03043 },
  acids: { phosphoric: 0.008695 + 0.03043 },
  notCounted: [],
};

export const computed = {
  carbonate: () => solutionPh(carbonate).pH,
  citrate: () => solutionPh(citrate).pH,
  phthalate: () => [15, 25].map((temperatureC) => solutionPh(phthalate, { temperatureC }).pH),
  "physiological-phosphate": () =>
    [25, 37].map((temperatureC) => solutionPh(physiological, { temperatureC }).pH),
  phosphate: () => solutionPh(phosphate).pH,
  borax: () => solutionPh(borax).pH,
  acetate: () => bufferPh({ acid: "acetic", acidMolPerL: 0.1, saltMolPerL: 0.1 }).pH,
};
