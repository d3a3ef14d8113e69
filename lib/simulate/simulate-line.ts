import type { Strip } from "../control/index.ts";
import type { BathTemperature, LineCheck, PumpReading, WorkEntry } from "../records/index.ts";
import { densityResponseOf, type ThreeDensities } from "./density-response.ts";
import { developerOfLine } from "./developer-of-line.ts";
import type { DeveloperState } from "./developer-over-days.ts";
import { faultsOfLine } from "./faults-of-line.ts";
import { batchesOf, freshBathsOf, heatersOf } from "./line-parts.ts";
import { pumpPlan } from "./pump-plan.ts";
import { simulateChecks } from "./simulate-checks.ts";
import { type SimulatedProduction, simulateProduction } from "./simulate-production.ts";
import { simulatePump } from "./simulate-pumps.ts";
import { simulateStrips } from "./simulate-strips.ts";
import { simulateTemperatures } from "./simulate-temperatures.ts";
import { simulateWork } from "./simulate-work.ts";
import { batchesByDay } from "./simulated-batch.ts";
import type { SimulatedEvent } from "./simulated-event.ts";
import type { CheckedFault } from "./simulated-fault.ts";
import type { SimulatedLine } from "./simulated-line.ts";
import { partStream } from "./streams.ts";
import { stripCauses } from "./strip-causes.ts";
import { effectOnPatches, type StripNoise } from "./strip-densities.ts";
import { stripPlan } from "./strip-plan.ts";
import { shareOfDay, stripSchedule } from "./strip-schedule.ts";

/** What one line leaves behind. */
export interface SimulatedLineLogs {
  readonly strips: readonly Strip[];
  readonly production: SimulatedProduction;
  readonly pumps: readonly PumpReading[];
  readonly temperatures: readonly BathTemperature[];
  readonly checks: readonly LineCheck[];
  readonly work: readonly WorkEntry[];
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
  readonly events: readonly SimulatedEvent[];
  readonly repeatStrips: boolean;
  readonly endsInTheMorning: boolean;
}

/** Runs one line for all its days. */
export function simulateLine(
  run: LineRun,
  line: SimulatedLine,
  all: readonly CheckedFault[],
): SimulatedLineLogs {
  const { where, seed, days, events, endsInTheMorning } = run;
  const stream = (part: string) => partStream(seed, `${line.id} ${part}`);
  const answers = densityResponseOf(where, line.process);
  const faults = faultsOfLine(line.id, all);
  const freshAt = freshBathsOf(line, events);
  const workDays = endsInTheMorning ? days.slice(0, -1) : days;
  const production = simulateProduction(line, workDays, stream("production"), (day) => {
    return 1 - shareOfDay(freshAt.get(day) ?? "00:00");
  });
  const [developer] = line.baths;
  const pumps = line.baths
    .filter((bath) => bath.rateMlPerM2 !== undefined)
    .map((bath) =>
      simulatePump(
        bath,
        workDays,
        production.areaM2,
        pumpPlan(bath, events),
        bath === developer ? faults.pumpError : () => 0,
        stream(`pump ${bath.id}`),
      ),
    );
  const heating = heatersOf(line).map((heater) =>
    simulateTemperatures(
      heater,
      days,
      heater === developer ? faults.heaterErrorC : () => 0,
      stream(`heater ${heater.id}`),
      endsInTheMorning,
    ),
  );
  const bath =
    developer === undefined
      ? undefined
      : developerOfLine(
          {
            bath: developer,
            days,
            areaM2: production.areaM2,
            deliveredMl: pumps[0]?.deliveredMl ?? [],
            mixStrength: mixes(run, line),
            faults: faults.all,
          },
          freshAt,
        );
  const causesOn = (day: number, state: DeveloperState, mishandled = 0) =>
    stripCauses({
      developer: state,
      offsetC: heating[0]?.trueOffsetC[day] ?? 0,
      timeFactor: faults.timeFactor(day),
      standing: faults.standing(day),
      mishandled,
    });
  const patches = Object.keys(line.reference);
  return {
    production,
    pumps: pumps.flatMap(({ readings }) => readings),
    temperatures: heating.flatMap(({ readings }) => readings),
    checks: simulateChecks(
      line,
      days,
      (day, takenAt) => faults.checked(day, bath?.metBy({ day, share: 0, takenAt }) ?? {}),
      stream("checks"),
    ),
    work: simulateWork(
      line.id,
      days,
      (day) => day % run.mixEveryDays === 0,
      freshAt,
      faults.all,
      stream("work"),
    ),
    strips: simulateStrips({
      process: line.process,
      planned: stripPlan(stripSchedule(line.startUp, days, stream("strip times")), {
        days,
        batches: batchesByDay(where, line.process, batchesOf(line), days),
        freshAt,
        endsInTheMorning,
      }),
      effectOf: (strip, mishandled) =>
        effectOnPatches(
          patches,
          answers,
          causesOn(strip.day, bath?.metBy(strip) ?? {}, mishandled),
        ),
      mishandledOn: faults.mishandled,
      repeat: run.repeatStrips,
      noise: run.noise,
      random: stream("strips"),
    }),
    effectOn: (day) =>
      effectOnPatches(patches, answers, causesOn(day, bath?.during(day, 0.5) ?? {})),
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
