import { bufferCapacity } from "wetside/solutions";
import { borax, carbonate, phosphate, phthalate } from "./jis-z-8802-standards.ts";
import { citrate, physiological } from "./nbs-ph-standards.ts";

export const computed = {
  phosphate: () => bufferCapacity(phosphate),
  "physiological-phosphate": () => bufferCapacity(physiological),
  carbonate: () => bufferCapacity(carbonate),
  citrate: () => bufferCapacity(citrate),
  phthalate: () => bufferCapacity(phthalate),
  borax: () => bufferCapacity(borax),
  weights: () => [...phosphate, ...borax, ...carbonate].map(({ gPerL }) => gPerL ?? Number.NaN),
};
