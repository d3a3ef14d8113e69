import type { Session, SessionBatch, SessionStep } from "../../development/index.ts";
import { requireObject } from "../../input/index.ts";
import { formatMinutes } from "../../units/index.ts";
import { type Table, type TableColumn, table } from "../parts/table.ts";

/**
 * The session on one printed sheet: a row for each step, a column of clock and length for each
 * batch; films and what to measure before them, the moments to pour the developer out and to open
 * the lid among them, and when the films are dry.
 *
 * @param session from `planSession`
 * @returns table; every step of every batch that runs stands in it once
 * @throws InputError as `table`
 *
 * @example
 * const films = [{ name: "roll 1", format: "135-36", developmentTimeMin: 9 }];
 * const developers = [{ name: "developer", dilution: "1+1", use: "one-shot", bottleMl: 500 }];
 * const session = planSession({ start: "19:30", films, tank: "plastic, 1 reel", developers, temperatures: { developerC: 20, roomC: 20 } });
 * sessionSheet(session).rows[4].batch1 // => "19:43:00 (9:15)"
 */
export function sessionSheet(session: Session): Table {
  requireObject(
    "sessionSheet",
    "session",
    session,
    "an object with process, startClock, endClock, …",
  );
  const runs = session.batches.filter((batch) => batch.runs);
  const baths = new Set(session.steps.map(rowOf));
  const rows = [...baths].flatMap((bath) => stepRows(bath, session, runs.length));
  const day = session.endDayOffset > 0 ? " of the next day" : "";
  const columns: TableColumn[] = [
    { field: "step", heading: "Step" },
    ...runs.map(({ number }) => ({ field: `batch${number}`, heading: `Batch ${number}` })),
    { field: "temperature", heading: "Bath", unit: "°C", align: "right" },
    { field: "volume", heading: "Fill", unit: "mL", align: "right" },
    { field: "agitation", heading: "Agitate" },
  ];
  const films = runs.map((batch) => [`batch${batch.number}`, batch.films.join(", ")]);
  const measure = runs.map((batch) => [`batch${batch.number}`, measured(batch)]);
  const mixed = runs.some((batch) => batch.waterMl > 0);
  const dry = session.drying.map(({ batch, readyClock, readyDayOffset }) => [
    `batch${batch}`,
    clockText(readyClock, readyDayOffset),
  ]);
  return table(
    [
      { step: "films", ...Object.fromEntries(films) },
      { step: mixed ? "stock + water (mL)" : "developer (mL)", ...Object.fromEntries(measure) },
      ...rows,
      { step: "dry", ...Object.fromEntries(dry) },
    ],
    {
      caption: `Session sheet, ${session.startClock} to ${session.endClock}${day}, ${session.tank}. Clock (length); a length includes filling and pouring out.`,
      columns,
    },
  );
}

/** Mixing and turning round share a row. */
function rowOf({ bath }: SessionStep): string {
  return bath === "turn round" ? "mix" : bath;
}

function stepRows(bath: string, session: Session, batches: number) {
  const steps = session.steps.filter((step) => rowOf(step) === bath);
  const first = steps.find((step) => step.volumeMl !== null) ?? steps[0];
  const same = new Set(steps.map((step) => step.volumeMl)).size === 1;
  const row = {
    step: rowName(bath, session, batches),
    temperature: temperatureText(first),
    volume: same
      ? (first?.volumeMl ?? null)
      : steps.map((step) => (step.volumeMl === null ? "–" : step.volumeMl)).join(" / "),
    agitation: first?.agitation ?? null,
    ...perBatch(steps, (step) => {
      const clock = clockText(step.startClock, step.startDayOffset);
      return `${clock} (${formatMinutes(step.lengthS / 60)})`;
    }),
  };
  const opens = (step: SessionStep) =>
    step.actions.find((action) => /lid may come off|light may go on/.test(action.text));
  const light = steps.some((step) => opens(step) !== undefined);
  const tray = first?.dark === true;
  const out = { step: tray ? "LIFT OUT OF DEVELOPER" : "POUR DEVELOPER OUT" };
  const open = { step: tray ? "light may go on" : "lid may come off" };
  const moment = (action: SessionStep["actions"][number] | undefined) => {
    if (action === undefined) return "";
    // Said when the first sheet leaves; the others follow while it is still dark.
    if (action.text.startsWith("when the last sheet")) return "last sheet out";
    return clockText(action.clock, action.dayOffset);
  };
  return [
    row,
    ...(bath === "developer"
      ? [{ ...out, ...perBatch(steps, (step) => moment(step.actions.at(-1))) }]
      : []),
    ...(light ? [{ ...open, ...perBatch(steps, (step) => moment(opens(step))) }] : []),
  ];
}

function rowName(bath: string, { steps }: Session, batches: number): string {
  if (bath === "mix" && batches > 1) return "mix; later dry, mix";
  if (bath === "load") return "load, in the dark";
  const second = steps.some((step) => step.bath !== bath && step.bath.endsWith(" developer"));
  return bath === "developer" && second ? "first developer" : bath;
}

/** With the process's tolerance where it has one: `"37.8 ± 0.15"`. */
function temperatureText(step: SessionStep | undefined): string | null {
  if (step?.temperatureC == null) return null;
  const { temperatureC, toleranceC } = step;
  return `${temperatureC.toFixed(1)}${toleranceC === null ? "" : ` ± ${toleranceC}`}`;
}

/** Concentrates and water: `"290 + 290"`. */
function measured({ parts, stockMl, waterMl }: SessionBatch): string {
  const amounts = parts.length > 1 ? parts.map((part) => part.volumeMl) : [stockMl];
  return [...amounts, ...(waterMl > 0 ? [waterMl] : [])]
    .map((volume) => String(Math.round(volume * 10) / 10))
    .join(" + ");
}

function clockText(clock: string, dayOffset: number): string {
  return `${clock}${dayOffset > 0 ? ` +${dayOffset}` : ""}`;
}

/** One cell for each batch. */
function perBatch(
  steps: readonly SessionStep[],
  cell: (step: SessionStep) => string,
): { readonly [column: string]: string } {
  return Object.fromEntries(steps.map((step) => [`batch${step.batch}`, cell(step)]));
}
