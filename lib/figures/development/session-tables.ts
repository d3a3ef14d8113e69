import type { Session } from "../../development/index.ts";
import { requireObject } from "../../input/index.ts";
import { formatMinutes } from "../../units/index.ts";
import { type Table, table } from "../parts/table.ts";

/**
 * What to measure for each batch, how long it develops, fixes and is washed, and whether it runs.
 *
 * @param session from `planSession`
 * @returns table, one row for each batch
 * @throws InputError as `table`
 *
 * @example
 * const films = [{ name: "roll 1", format: "135-36", developmentTimeMin: 9 }];
 * const developers = [{ name: "developer", dilution: "1+1", use: "one-shot", bottleMl: 500 }];
 * const session = planSession({ start: "19:30", films, tank: "plastic, 1 reel", developers, temperatures: { developerC: 20, roomC: 20 } });
 * sessionBatchTable(session).rows[0].develop // => "9:00"
 */
export function sessionBatchTable(session: Session): Table {
  requireObject(
    "sessionBatchTable",
    "session",
    session,
    "an object with process, startClock, endClock, …",
  );
  const rows = session.batches.map((batch) => ({
    batch: batch.number,
    films: batch.films.join(", "),
    developer: `${batch.developer} ${batch.dilution}`,
    volumeMl: batch.volumeMl,
    stock: (batch.parts.length > 1 ? batch.parts : [{ volumeMl: batch.stockMl }])
      .map((part) => part.volumeMl.toFixed(1))
      .join(" + "),
    waterMl: batch.waterMl,
    develop: batch.development && formatMinutes(batch.development.timeS / 60),
    fix: batch.fixS === null ? null : formatMinutes(batch.fixS / 60),
    runs: batch.runs ? "yes" : `no: ${batch.whyNot}`,
  }));
  return table(rows, {
    caption: `Batches and what to measure, ${session.process}`,
    columns: [
      { field: "batch", heading: "Batch" },
      { field: "films", heading: "Films" },
      { field: "developer", heading: "Developer" },
      { field: "volumeMl", heading: "Fill", unit: "mL", digits: 0 },
      { field: "stock", heading: "Stock", unit: "mL", align: "right" },
      { field: "waterMl", heading: "Water", unit: "mL", digits: 1 },
      { field: "develop", heading: "Develop", unit: "min:s", align: "right" },
      { field: "fix", heading: "Fix", unit: "min:s", align: "right" },
      { field: "runs", heading: "Tonight" },
    ],
  });
}

/**
 * What temperature and drift do to the development of each batch that runs, and what it would have
 * cost not to correct.
 *
 * @param session from `planSession`
 * @returns table, one row for each batch that runs; errors in per cent of development
 * @throws InputError as `table`
 *
 * @example
 * const films = [{ name: "roll 1", format: "135-36", developmentTimeMin: 9 }];
 * const developers = [{ name: "developer", dilution: "1+1", use: "one-shot", bottleMl: 500 }];
 * const session = planSession({ start: "19:30", films, tank: "plastic, 1 reel", developers, temperatures: { developerC: 20, roomC: 20 } });
 * sessionDevelopmentTable(session).rows[0].corrected // => "9:00"
 */
export function sessionDevelopmentTable(session: Session): Table {
  requireObject(
    "sessionDevelopmentTable",
    "session",
    session,
    "an object with process, startClock, endClock, …",
  );
  const rows = session.batches.flatMap(({ number, development }) => {
    if (development === null) return [];
    return [
      {
        batch: number,
        bottleC: development.bottleTemperatureC,
        startC: development.startTemperatureC,
        endC: development.endTemperatureC,
        given: `${formatMinutes(development.givenMin)} at ${development.referenceTemperatureC} °C`,
        corrected: formatMinutes(development.timeS / 60),
        uncorrectedPercent: development.errorIfUncorrectedPercent,
        withoutDriftPercent: development.errorWithoutDriftPercent,
      },
    ];
  });
  const degrees = { unit: "°C", digits: 1 };
  const error = { unit: "%", digits: 1, signed: true };
  return table(rows, {
    caption: "Developer in the tank, the corrected time, and the error of development without it",
    columns: [
      { field: "batch", heading: "Batch" },
      { field: "bottleC", heading: "Bottle", ...degrees },
      { field: "startC", heading: "In the tank", ...degrees },
      { field: "endC", heading: "At the end", ...degrees },
      { field: "given", heading: "Time given" },
      { field: "corrected", heading: "Tonight", unit: "min:s", align: "right" },
      { field: "uncorrectedPercent", heading: "Error, time as given", ...error },
      { field: "withoutDriftPercent", heading: "Error, drift forgotten", ...error },
    ],
  });
}

/**
 * What is left in each bottle after a session.
 *
 * @param session from `planSession`
 * @returns table, one row for each bottle
 * @throws InputError as `table`
 *
 * @example
 * const films = [{ name: "roll 1", format: "135-36", developmentTimeMin: 9 }];
 * const developers = [{ name: "developer", dilution: "1+1", use: "one-shot", bottleMl: 500 }];
 * const session = planSession({ start: "19:30", films, tank: "plastic, 1 reel", developers, temperatures: { developerC: 20, roomC: 20 } });
 * sessionBottleTable(session).rows[0].leftMl // => 355
 */
export function sessionBottleTable(session: Session): Table {
  requireObject(
    "sessionBottleTable",
    "session",
    session,
    "an object with process, startClock, endClock, …",
  );
  return table(session.bottles, {
    caption: "What is left in each bottle afterwards",
    columns: [
      { field: "bottle", heading: "Bottle" },
      { field: "beforeMl", heading: "Before", unit: "mL", digits: 0 },
      { field: "usedMl", heading: "Used", unit: "mL", digits: 0 },
      { field: "leftMl", heading: "Left", unit: "mL", digits: 0 },
      { field: "filmsAfter", heading: "Films so far", digits: 1 },
      { field: "filmsLeft", heading: "Films to come", digits: 1 },
      { field: "advice", heading: "Advice" },
    ],
  });
}
