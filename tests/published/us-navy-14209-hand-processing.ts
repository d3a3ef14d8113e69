import { agitationMarks, fixingTime, planSession, runningWashFraction } from "wetside";
import type { Computed } from "./run.ts";

const development = () => {
  const session = planSession({
    start: "19:30",
    films: [{ name: "roll 1", format: "135-36", developmentTimeMin: 8 }],
    tank: "steel, 1 reel",
    developers: [{ name: "developer", dilution: "stock", use: "one-shot", bottleMl: 1000 }],
    temperatures: { developerC: 20, roomC: 20 },
  });
  const step = session.steps.find((each) => each.bath === "developer");
  if (step === undefined) throw new Error("no developer step");
  return step;
};

export const computed: Computed = {
  "hypo-left-5-min": ({ minutes }) => runningWashFraction(minutes),
  "hypo-left-10-min": ({ minutes }) => runningWashFraction(minutes),
  "fix-twice-clearing": (fixer) => fixingTime(fixer).fixS,
  "fixer-exhausted": (fixer) => (fixingTime(fixer).exhausted ? "exhausted" : "good"),
  "agitation-first-and-each-minute": ({ timeS }) =>
    agitationMarks("30 s, then 5 s a minute", timeS).flatMap(({ fromS, toS }) => [fromS, toS]),
  "pouring-begins": () => {
    const step = development();
    return step.endS - (step.actions.at(-1)?.atS ?? Number.NaN);
  },
  filling: () => {
    const [pour, full] = development().actions;
    return (full?.atS ?? Number.NaN) - (pour?.atS ?? Number.NaN);
  },
};
