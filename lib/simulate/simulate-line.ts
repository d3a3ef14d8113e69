import type { Strip } from "../control/index.ts";
import type { BathTemperature, PumpReading } from "../records/index.ts";
import { densityResponseOf, type ThreeDensities } from "./density-response.ts";
import { developerOverDays } from "./developer-over-days.ts";
import { faultsOfLine } from "./faults-of-line.ts";
import { type SimulatedProduction, simulateProduction } from "./simulate-production.ts";
import { simulatePump } from "./simulate-pumps.ts";
import { simulateStrips } from "./simulate-strips.ts";
import { simulateTemperatures } from "./simulate-temperatures.ts";
import type { CheckedFault } from "./simulated-fault.ts";
import type { SimulatedLine } from "./simulated-line.ts";
import { partStream } from "./streams.ts";
import { stripCauses } from "./strip-causes.ts";
import { effectOnPatches, type StripNoise } from "./strip-densities.ts";
import { stripSchedule } from "./strip-schedule.ts";

/** What one line leaves behind. */
export interface SimulatedLineLogs {
  readonly strips: readonly Strip[];
  readonly production: SimulatedProduction;
  readonly pumps: readonly PumpReading[];
  readonly temperatures: readonly BathTemperature[];
  /** What the baths do to each patch on a day's midday, without noise. */
  readonly effectOn: (day: number) => Readonly<Record<string, ThreeDensities>>;
}

/** What holds for all lines. */
export interface LineRun {
  readonly where: string;
  readonly seed: number;
  readonly days: readonly string[];
  readonly noise: StripNoise;
  readonly mixSd: number;
  readonly mixEveryDays: number;
}

/** Runs one line for all its days. */
export function simulateLine(
  run: LineRun,
  line: SimulatedLine,
  all: readonly CheckedFault[],
): SimulatedLineLogs {
  const { where, seed, days } = run;
  const stream = (part: string) => partStream(seed, `${line.id} ${part}`);
  const answers = densityResponseOf(where, line.process);
  const faults = faultsOfLine(line.id, all);
  const production = simulateProduction(line, days, stream("production"));
  const [developer] = line.baths;
  const pumps = line.baths
    .filter((bath) => bath.rateMlPerM2 !== undefined)
    .map((bath) =>
      simulatePump(
        bath,
        days,
        production.areaM2,
        bath === developer ? faults.pumpError : () => 0,
        stream(`pump ${bath.id}`),
      ),
    );
  const heating = line.baths.map((bath) =>
    simulateTemperatures(
      bath,
      days,
      bath === developer ? faults.heaterErrorC : () => 0,
      stream(`heater ${bath.id}`),
    ),
  );
  const developed =
    developer === undefined
      ? []
      : developerOverDays({
          bath: developer,
          days,
          areaM2: production.areaM2,
          deliveredMl: pumps[0]?.deliveredMl ?? [],
          mixStrength: mixes(run, line),
          faults: faults.all,
        });
  const causesAt = (day: number, share: number, mishandled = 0) => {
    const { morning: from = {}, evening: to = {} } = developed[day] ?? {};
    const between = Object.keys(from).map((name) => {
      const start = from[name] ?? 0;
      return [name, start + share * ((to[name] ?? start) - start)] as const;
    });
    return stripCauses({
      developer: Object.fromEntries(between),
      offsetC: heating[0]?.trueOffsetC[day] ?? 0,
      timeFactor: faults.timeFactor(day),
      standing: faults.standing(day),
      mishandled,
    });
  };
  const patches = Object.keys(line.reference);
  return {
    production,
    pumps: pumps.flatMap(({ readings }) => readings),
    temperatures: heating.flatMap(({ readings }) => readings),
    strips: simulateStrips({
      line,
      schedule: stripSchedule(line.startUp, days, stream("strip times")),
      effectOf: ({ day, share }, mishandled) =>
        effectOnPatches(patches, answers, causesAt(day, share, mishandled)),
      mishandledOn: faults.mishandled,
      noise: run.noise,
      random: stream("strips"),
    }),
    effectOn: (day) => effectOnPatches(patches, answers, causesAt(day, 0.5)),
  };
}

/** The strength of the replenisher of each day: every mix with an error of its own. */
function mixes({ seed, days, mixSd, mixEveryDays }: LineRun, line: SimulatedLine): number[] {
  const { normal } = partStream(seed, `${line.id} mixes`);
  let strength = 1;
  return days.map((_, day) => {
    if (day % mixEveryDays === 0) strength = Math.max(0.1, 1 + mixSd * normal());
    return strength;
  });
}
