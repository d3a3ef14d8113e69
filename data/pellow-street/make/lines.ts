import { type SimulatedLine, simulatedLines } from "../../../lib/simulate/index.ts";
import { batches } from "./batches.ts";

/** What the stroke counters showed before the first day. */
const COUNTERS: Readonly<Record<string, number>> = {
  "film-developer": 61_240,
  "film-bleach": 27_815,
  "film-fixer": 80_433,
  "film-rinse": 79_902,
  "paper-developer": 43_377,
  "paper-stop": 51_960,
  "paper-bleach-fix": 58_205,
};

/** The simulator's own two lines, with the batches, counters and dryers of Pellow Street. */
export const [film, paper] = [
  { ...lineOf("film"), batches: batches.film, dryerC: 55 },
  { ...lineOf("paper"), batches: batches.paper, dryerC: 71 },
] as const;

function lineOf(id: string): SimulatedLine {
  const line = simulatedLines.find((each) => each.id === id);
  if (line === undefined) throw new Error(`the simulator has no line ${id}`);
  const baths = line.baths.map((bath) => {
    const firstCounterStrokes = COUNTERS[bath.id];
    return firstCounterStrokes === undefined ? bath : { ...bath, firstCounterStrokes };
  });
  return { ...line, baths };
}
