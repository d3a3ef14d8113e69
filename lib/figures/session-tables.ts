import type { Session } from "../development/index.ts";
import { formatMinutes } from "../units/index.ts";
import { type Table, type TableColumn, table } from "./table.ts";

/**
 * The session on one printed sheet: a row for each step, a column of clock and length for each
 * batch.
 *
 * @param session from `planSession`
 * @returns table; every step of every batch that runs stands in it once
 * @throws InputError as `table`
 *
 * @example
 * const films = [{ name: "roll 1", format: "135-36", developmentTimeMin: 9 }];
 * const developers = [{ name: "developer", dilution: "1+1", use: "one-shot", bottleMl: 500 }];
 * const session = planSession({ start: "19:30", films, tank: "plastic, 1 reel", developers, temperatures: { developerC: 20, roomC: 20 } });
 * sessionSheet(session).rows[2].batch1 // => "19:43:00 (9:15)"
 */
export function sessionSheet(session: Session): Table {
  const runs = session.batches.filter((batch) => batch.runs);
  const baths: string[] = [];
  for (const { bath } of session.steps) {
    const row = bath === "turn round" ? "mix" : bath;
    if (!baths.includes(row)) baths.push(row);
  }
  const rows = baths.map((bath) => {
    const steps = session.steps.filter(
      (step) => step.bath === bath || (bath === "mix" && step.bath === "turn round"),
    );
    const first = steps.find((step) => step.volumeMl !== null) ?? steps[0];
    const times = steps.map((step) => {
      const day = step.startDayOffset > 0 ? ` +${step.startDayOffset}` : "";
      const text = `${step.startClock}${day} (${formatMinutes(step.lengthS / 60)})`;
      return [`batch${step.batch}`, text] as const;
    });
    const same = new Set(steps.map((step) => step.volumeMl)).size === 1;
    return {
      step: bath === "mix" && runs.length > 1 ? "mix; then dry spirals, mix" : bath,
      temperatureC: first?.temperatureC ?? null,
      volume: same
        ? (first?.volumeMl ?? null)
        : steps.map((step) => (step.volumeMl === null ? "–" : step.volumeMl)).join(" / "),
      agitation: first?.agitation ?? null,
      ...Object.fromEntries(times),
    };
  });
  const columns: TableColumn[] = [
    { field: "step", heading: "Step" },
    { field: "temperatureC", heading: "Bath", unit: "°C", digits: 1 },
    { field: "volume", heading: "Fill", unit: "mL", align: "right" },
    { field: "agitation", heading: "Agitate" },
    ...runs.map((batch) => ({
      field: `batch${batch.number}`,
      heading: `Batch ${batch.number}: clock (length)`,
    })),
  ];
  const day = session.endDayOffset > 0 ? " of the next day" : "";
  return table(rows, {
    caption: `Session sheet, ${session.startClock} to ${session.endClock}${day}, ${session.tank}. A length includes filling and pouring out.`,
    columns,
  });
}

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
  const rows = session.batches.map((batch) => ({
    batch: batch.number,
    films: batch.films.join(", "),
    developer: `${batch.developer} ${batch.dilution}`,
    volumeMl: batch.volumeMl,
    stockMl: batch.stockMl,
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
      { field: "stockMl", heading: "Stock", unit: "mL", digits: 1 },
      { field: "waterMl", heading: "Water", unit: "mL", digits: 1 },
      { field: "develop", heading: "Develop", unit: "min:s", align: "right" },
      { field: "fix", heading: "Fix", unit: "min:s", align: "right" },
      { field: "runs", heading: "Tonight" },
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
