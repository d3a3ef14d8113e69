import type { SimulatedLine } from "../../../lib/simulate/index.ts";
import { film, paper } from "./lines.ts";
import { TODAY } from "./plan.ts";

const SHEET = "Kodak publication Z-131 section 4, Table 4-1 (minilab cycle)";
const PRACTICE = "common practice, no source";

/** The lab as it describes itself: what the notebooks may know. */
export const lab = {
  name: "Pellow Street Lab",
  note: "An invented lab. Tank volumes, pump settings and readings are made up; steps and temperatures carry their own source.",
  today: TODAY,
  lines: [
    {
      id: film.id,
      name: "Colour-negative line",
      process: film.process,
      strips: "film-strips.csv",
      patches: Object.keys(film.reference),
      formats: film.formats.map(({ format }) => format),
      finish: "Negatives are cut in strips of four.",
      finishSource: PRACTICE,
      baths: bathsOf(film, SHEET),
      dryer: {
        id: "film-dryer",
        setTemperatureC: film.dryerC,
        timeMin: 2,
        source: `temperature within ${SHEET}; time invented`,
      },
    },
    {
      id: paper.id,
      name: "Colour-paper line",
      process: paper.process,
      strips: "paper-strips.csv",
      patches: Object.keys(paper.reference),
      formats: paper.formats.map(({ format }) => format),
      finish: "Prints too bright, too dim or unsharp are pulled and made again.",
      finishSource: PRACTICE,
      baths: bathsOf(paper, "invented"),
      dryer: {
        id: "paper-dryer",
        setTemperatureC: paper.dryerC,
        timeMin: 2,
        source: PRACTICE,
      },
    },
  ] as const,
  pumps: [...film.baths, ...paper.baths]
    .filter(({ rateMlPerM2 }) => rateMlPerM2 !== undefined)
    .map(({ id, settingMlPerStroke, rateMlPerM2, firstCounterStrokes }) => {
      return { id, bath: id, settingMlPerStroke, rateMlPerM2, firstCounterStrokes };
    }),
  operators: ["MB", "OW", "TK"],
  files: {
    stripBatches: "strip-batches.csv",
    production: "production.csv",
    pumps: "pumps.csv",
    temperatures: "temperatures.csv",
    checks: "checks.csv",
    work: "work.csv",
    remakes: "remakes.csv",
  },
};

function bathsOf({ baths }: SimulatedLine, source: string) {
  return baths.map(({ id, role, volumeL, setTemperatureC, timeMin }) => {
    const all = `${source}; volume invented`;
    return { id, role, volumeL, setTemperatureC, timeMin, source: all };
  });
}
