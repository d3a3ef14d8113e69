import { planSession, processRecipe } from "wetside";
import type { Computed } from "./run.ts";

const bath = (name: string) => {
  const step = processRecipe("colour negative").steps.find((each) => each.bath === name);
  return [step?.temperatureC ?? Number.NaN, step?.toleranceC ?? Number.NaN];
};

export const computed: Computed = {
  time: () => {
    const session = planSession({
      start: "10:00",
      process: "colour negative",
      films: [{ name: "roll 1", format: "135-36" }],
      tank: "steel, 1 reel",
      temperatures: { developerC: 37.8, roomC: 20, waterBathC: 37.8 },
    });
    return session.batches[0]?.development?.timeS ?? Number.NaN;
  },
  temperature: () => bath("developer"),
  "other-baths": () => [...bath("bleach"), ...bath("fixer")],
};
