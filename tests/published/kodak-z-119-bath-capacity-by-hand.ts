import { convertArea, convertVolume, processRecipe } from "wetside";
import type { Computed } from "./run.ts";

/** Square feet from films a litre, a film being 80 in². */
const squareFeet = ({ bath, gallons }: { bath: string; gallons: number }) => {
  const step = processRecipe("colour reversal").steps.find((each) => each.bath === bath);
  const litres = convertVolume(gallons, "usGallon", "L");
  return litres * (step?.capacityFilmsPerL ?? Number.NaN) * convertArea(80, "in2", "ft2");
};

export const computed: Computed = {
  "first-developer": squareFeet,
  bleach: squareFeet,
  fixer: squareFeet,
};
