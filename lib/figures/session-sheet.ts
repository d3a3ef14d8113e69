import type { Session, SessionStep } from "../development/index.ts";
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
  const rows = baths.flatMap((bath) => {
    const steps = session.steps.filter(
      (step) => step.bath === bath || (bath === "mix" && step.bath === "turn round"),
    );
    const first = steps.find((step) => step.volumeMl !== null) ?? steps[0];
    const same = new Set(steps.map((step) => step.volumeMl)).size === 1;
    const row = {
      step: bath === "mix" && runs.length > 1 ? "mix; later dry, mix" : bath,
      temperatureC: first?.temperatureC ?? null,
      volume: same
        ? (first?.volumeMl ?? null)
        : steps.map((step) => (step.volumeMl === null ? "–" : step.volumeMl)).join(" / "),
      agitation: first?.agitation ?? null,
      ...perBatch(steps, (step) => ({
        clock: step.startClock,
        dayOffset: step.startDayOffset,
        after: ` (${formatMinutes(step.lengthS / 60)})`,
      })),
    };
    if (bath !== "developer") return [row];
    const out = perBatch(steps, (step) => ({ ...step.actions.at(-1), after: "" }));
    const step = first?.dark ? "LIFT OUT OF DEVELOPER" : "POUR DEVELOPER OUT";
    return [row, { step, temperatureC: null, volume: null, ...out }];
  });
  const columns: TableColumn[] = [
    { field: "step", heading: "Step" },
    { field: "temperatureC", heading: "Bath", unit: "°C", digits: 1 },
    { field: "volume", heading: "Fill", unit: "mL", align: "right" },
    { field: "agitation", heading: "Agitate" },
    ...runs.map((batch) => ({
      field: `batch${batch.number}`,
      heading: `Batch ${batch.number}`,
    })),
  ];
  const day = session.endDayOffset > 0 ? " of the next day" : "";
  return table(rows, {
    caption: `Session sheet, ${session.startClock} to ${session.endClock}${day}, ${session.tank}. Clock (length); a length includes filling and pouring out.`,
    columns,
  });
}

/** One cell for each batch: clock, mark of the next day, and what follows. */
function perBatch(
  steps: readonly SessionStep[],
  cell: (step: SessionStep) => {
    readonly clock?: string;
    readonly dayOffset?: number;
    readonly after: string;
  },
): { readonly [column: string]: string } {
  return Object.fromEntries(
    steps.map((step) => {
      const { clock = "", dayOffset = 0, after } = cell(step);
      return [`batch${step.batch}`, `${clock}${dayOffset > 0 ? ` +${dayOffset}` : ""}${after}`];
    }),
  );
}
