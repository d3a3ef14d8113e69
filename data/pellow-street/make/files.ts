import {
  formatCheckLog,
  formatProductionLog,
  formatPumpLog,
  formatRemakesLog,
  formatStripBatchRegister,
  formatStripLog,
  formatTemperatureLog,
  formatWorkLog,
} from "../../../lib/records/index.ts";
import type { SimulatedLab } from "../../../lib/simulate/index.ts";
import { lab as description } from "./lab.ts";
import { film, paper } from "./lines.ts";
import { simulateLineOfPellowStreet } from "./simulation.ts";

/** The densitometer of the lab shows thousandths. */
const DENSITY_DECIMALS = 3;

/** All files of the demo lab by name: the same text every time. */
export function demoLabFiles(
  lines: readonly SimulatedLab[] = [film, paper].map((line) => simulateLineOfPellowStreet(line)),
): Readonly<Record<string, string>> {
  const decimals = { decimals: DENSITY_DECIMALS };
  const strips = Object.fromEntries(
    description.lines.map(({ strips: file }, i) => {
      return [file, formatStripLog(lines[i]?.strips ?? [], decimals)];
    }),
  );
  const all = <T>(of: (line: SimulatedLab) => readonly T[]) => lines.flatMap(of);
  return {
    "lab.json": `${JSON.stringify(description, null, 2)}\n`,
    ...strips,
    "strip-batches.csv": formatStripBatchRegister(
      all(({ batches }) => batches),
      decimals,
    ),
    "production.csv": formatProductionLog(
      inOrder(
        all(({ production }) => production),
        ({ date }) => date,
      ),
    ),
    "pumps.csv": formatPumpLog(
      asWalked(
        all(({ pumps }) => pumps),
        ({ pump }) => pump,
      ),
    ),
    "temperatures.csv": formatTemperatureLog(
      asWalked(
        all(({ temperatures }) => temperatures),
        ({ bath }) => bath,
      ),
    ),
    "checks.csv": formatCheckLog(
      inOrder(
        all(({ checks }) => checks),
        ({ readAt }) => readAt,
      ),
    ),
    "work.csv": formatWorkLog(
      inOrder(
        all(({ work }) => work),
        ({ doneAt }) => doneAt,
      ),
    ),
    "remakes.csv": formatRemakesLog(all(({ remakes }) => remakes)),
  };
}

function inOrder<T>(rows: readonly T[], of: (row: T) => string): readonly T[] {
  return [...rows].sort((a, b) => (of(a) < of(b) ? -1 : of(a) > of(b) ? 1 : 0));
}

/**
 * Both lines' readings as one person takes them: round by round, in the order of the path. The minutes
 * of a round stay and are given out in that order.
 */
function asWalked<T extends { readonly readAt: string }>(
  rows: readonly T[],
  placeOf: (row: T) => string,
): readonly T[] {
  const path: readonly string[] = description.lines.flatMap(({ baths, dryer }) => [
    ...baths.map(({ id }) => id),
    dryer.id,
  ]);
  const at = (row: T) => path.indexOf(placeOf(row));
  const rounds = new Map<string, T[]>();
  for (const row of inOrder(rows, ({ readAt }) => readAt)) {
    const hour = row.readAt.slice(0, 13);
    rounds.set(hour, [...(rounds.get(hour) ?? []), row]);
  }
  return [...rounds.values()].flatMap((round) =>
    [...round]
      .sort((a, b) => at(a) - at(b))
      .map((row, i) => ({ ...row, readAt: round[i]?.readAt ?? row.readAt })),
  );
}
