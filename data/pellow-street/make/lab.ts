import { TODAY } from "./plan.ts";

const SHEET = "Kodak publication Z-131 section 4, Table 4-1 (minilab cycle)";
const PRACTICE = "common practice, no source";
const INVENTED = "invented";

function pump(
  bath: string,
  settingMlPerStroke: number,
  rateMlPerM2: number,
  firstCounterStrokes: number,
) {
  return { id: bath, bath, settingMlPerStroke, rateMlPerM2, firstCounterStrokes };
}

/** The lab as it describes itself: what the notebooks may know. */
export const lab = {
  name: "Pellow Street Lab",
  note: "An invented lab. Tank volumes, pump settings and readings are made up; steps and temperatures carry their own source.",
  today: TODAY,
  lines: [
    {
      id: "film",
      name: "Colour-negative line",
      process: "colour-negative",
      strips: "film-strips.csv",
      patches: ["dMin", "ld", "hd", "dMax", "retainedSilver"],
      formats: ["135-36", "135-24", "120"],
      finish: "Negatives are cut in strips of four.",
      finishSource: PRACTICE,
      baths: [
        bath("film-developer", "developer", 20, 37.8, 3.25, SHEET),
        bath("film-bleach", "bleach", 12, 38, 1, SHEET),
        bath("film-fixer", "fixer", 16, 38, 1.75, SHEET),
        bath("film-rinse", "final rinse", 12, 38, 1, SHEET),
      ],
      dryer: {
        id: "film-dryer",
        setTemperatureC: 55,
        timeMin: 2,
        source: `temperature within ${SHEET}; time invented`,
      },
    },
    {
      id: "paper",
      name: "Colour-paper line",
      process: "colour-paper",
      strips: "paper-strips.csv",
      patches: ["dMin", "ld", "hd", "dMax"],
      formats: ["10x15cm", "13x18cm", "20x30cm"],
      finish: "Prints too bright, too dim or unsharp are pulled and made again.",
      finishSource: PRACTICE,
      baths: [
        bath("paper-developer", "developer", 28, 35, 0.75, INVENTED),
        bath("paper-stop", "stop bath", 14, 33, 0.33, INVENTED),
        bath("paper-bleach-fix", "bleach-fix", 28, 35, 0.75, INVENTED),
        bath("paper-wash", "wash", 40, 33, 1.5, INVENTED),
      ],
      dryer: { id: "paper-dryer", setTemperatureC: 71, timeMin: 2, source: PRACTICE },
    },
  ],
  pumps: [
    pump("film-developer", 5, 600, 61_240),
    pump("film-bleach", 2, 130, 27_815),
    pump("film-fixer", 5, 800, 80_433),
    pump("film-rinse", 5, 800, 79_902),
    pump("paper-developer", 10, 160, 43_377),
    pump("paper-stop", 10, 200, 51_960),
    pump("paper-bleach-fix", 10, 215, 58_205),
  ],
  operators: ["MB", "OW", "TK"],
  files: {
    stripBatches: "strip-batches.csv",
    production: "production.csv",
    pumps: "pumps.csv",
    temperatures: "temperatures.csv",
    remakes: "remakes.csv",
  },
} as const;

function bath(
  id: string,
  role: string,
  volumeL: number,
  setTemperatureC: number,
  timeMin: number,
  source: string,
) {
  return { id, role, volumeL, setTemperatureC, timeMin, source: `${source}; volume invented` };
}

export type Line = (typeof lab.lines)[number]["id"];
