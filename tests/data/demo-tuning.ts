import { readFileSync } from "node:fs";
import {
  colourNegativeProcess,
  crossoversOfStrips,
  type ParameterSeries,
  seriesOfStrips,
} from "wetside/control";
import {
  type ProductionRow,
  type PumpReading,
  parseProductionLog,
  parsePumpLog,
  parseStripBatchRegister,
  parseStripLog,
  requireCleanLog,
} from "wetside/records";
import { areaByDay, deliveredRates, tankTurnoversAt } from "wetside/replenishment";

const PUMP = "film-developer";
const VOLUME_L = 20;
/** Steps of the step test: the evening before, and the fraction of the usual rate. */
const STEPS = [
  { evening: "2026-02-01T18:20", fraction: 0.08 },
  { evening: "2026-03-01T18:20", fraction: -0.16 },
  { evening: "2026-03-29T18:20", fraction: 0.08 },
] as const;
/** The parameters that answer to the rate. */
const PARAMETERS: readonly string[] = ["ld", "hdLessLd"];

/** Film strips from aim, and turnovers by the pump log. */
export interface FilmTuning {
  readonly series: readonly ParameterSeries[];
  readonly readings: readonly PumpReading[];
  readonly rows: readonly ProductionRow[];
  readonly strips: readonly { readonly takenAt: string; readonly deviations: readonly number[] }[];
  readonly turnoversAt: (moments: readonly string[]) => readonly number[];
}

/** One of the demo lab's folders as tuning takes it. */
export function filmTuning(folder: string): FilmTuning {
  const read = (file: string) =>
    readFileSync(new URL(`../../data/${folder}/${file}`, import.meta.url), "utf8");
  const named = (file: string) => [read(file), { file }] as const;
  const batches = requireCleanLog(parseStripBatchRegister(...named("strip-batches.csv"))).filter(
    ({ process }) => process === "colour-negative",
  );
  const strips = requireCleanLog(
    parseStripLog(read("film-strips.csv"), { file: "film-strips.csv", batches }),
  );
  const crossovers = crossoversOfStrips(strips, batches);
  const series = seriesOfStrips({
    strips,
    batches,
    crossovers,
    specification: colourNegativeProcess,
  }).filter(({ parameter, colour }) => PARAMETERS.includes(parameter) && colour !== null);
  const readings = requireCleanLog(parsePumpLog(...named("pumps.csv"))).filter(
    ({ pump }) => pump === PUMP,
  );
  const rows = requireCleanLog(parseProductionLog(...named("production.csv")));
  const { days } = areaByDay(rows, { process: "colour-negative" });
  const { intervals } = deliveredRates({ readings, days });
  const at = series[0]?.takenAt ?? [];
  return {
    series,
    readings,
    rows,
    strips: at.map((takenAt, i) => ({
      takenAt,
      deviations: series.map(({ deviations }) => deviations[i] ?? Number.NaN),
    })),
    turnoversAt: (moments: readonly string[]) =>
      tankTurnoversAt({ intervals, volumeL: VOLUME_L, at: moments, holdDays: 1 }).turnovers,
  };
}

/** The deliberate changes of the step test, in its own turnovers. */
export function stepTestChanges({ turnoversAt }: Pick<FilmTuning, "turnoversAt">) {
  const at = turnoversAt(STEPS.map(({ evening }) => evening));
  return STEPS.map(({ fraction }, i) => ({ atTurnovers: at[i] ?? Number.NaN, fraction }));
}
