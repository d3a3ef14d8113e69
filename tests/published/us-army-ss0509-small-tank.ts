import { planSession, type SessionWash, washRules } from "wetside";
import type { Computed } from "./run.ts";

const session = (wash: SessionWash) =>
  planSession({
    start: "19:30",
    films: [{ name: "roll 1", format: "135-36", developmentTimeMin: 8 }],
    tank: "steel, 1 reel",
    developers: [{ name: "developer", dilution: "stock", use: "one-shot", bottleMl: 1000 }],
    temperatures: { developerC: 20, roomC: 20 },
    fixer: { clearingTimeFreshS: 120 },
    handling: { pourInS: 0 },
    wash,
  });
const aided = { by: "flow", aid: true } as const;
const lengthS = (bath: string, wash: SessionWash = aided) => {
  const found = session(wash).steps.find((step) => step.bath === bath);
  return found?.lengthS ?? Number.NaN;
};

export const computed: Computed = {
  "wash-plain": ({ aid }) => lengthS("wash", { by: "flow", aid }) / 60,
  "wash-after-aid": ({ aid }) => lengthS("wash", { by: "flow", aid }) / 60,
  "rinse-before-aid": () => lengthS("rinse"),
  "in-the-aid": () => lengthS("wash aid"),
  stop: () => lengthS("stop"),
  "lid-off": () => {
    const fixer = session(aided).steps.find((step) => step.bath === "fixer");
    const lid = fixer?.actions.find((each) => each.text.includes("lid may come off"));
    return (lid?.atS ?? Number.NaN) - (fixer?.startS ?? 0);
  },
  "wetting-agent": () => lengthS("wetting agent"),
  "dump-every": () => washRules.changeEveryMin.minutes,
};
