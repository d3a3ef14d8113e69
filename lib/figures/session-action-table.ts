import type { Session } from "../development/index.ts";
import { InputError, requireNumber } from "../input/index.ts";
import { formatMinutes } from "../units/index.ts";
import { type Table, table } from "./table.ts";

/**
 * One batch of a session to follow at the sink: a row for each thing to do, with the clock, and what
 * a timer shows that was started when the tank was full. Narrow enough for a telephone.
 *
 * @param session from `planSession`
 * @param options.batch number of a batch that runs; default the first
 * @returns table in the order of doing; the last row says when the films should be dry
 * @throws InputError for a batch that is not in the timeline
 *
 * @example
 * const films = [{ name: "roll 1", format: "135-36", developmentTimeMin: 9 }];
 * const developers = [{ name: "developer", dilution: "1+1", use: "one-shot", bottleMl: 500 }];
 * const session = planSession({ start: "19:30", films, tank: "plastic, 1 reel", developers, temperatures: { developerC: 20, roomC: 20 } });
 * sessionActionTable(session).rows[8].timer // => "1:00"
 */
export function sessionActionTable(
  session: Session,
  options: { readonly batch?: number } = {},
): Table {
  const where = "sessionActionTable";
  const batch = requireNumber(where, "batch", options.batch ?? 1, { min: 1, whole: true });
  const steps = session.steps.filter((step) => step.batch === batch);
  if (steps.length === 0) {
    const running = [...new Set(session.steps.map((step) => step.batch))].join(", ");
    const advice = running === "" ? "no batch runs in this session" : `write one of ${running}`;
    throw new InputError(where, "batch", batch, advice);
  }
  const clockText = (clock: string, dayOffset: number) =>
    `${clock}${dayOffset > 0 ? ` +${dayOffset}` : ""}`;
  const rows = steps
    .flatMap((step) => step.actions)
    .map(({ clock, dayOffset, timerS, text }) => ({
      clock: clockText(clock, dayOffset),
      timer: timerS === null ? null : formatMinutes(timerS / 60),
      text,
    }));
  const films = session.batches.find((each) => each.number === batch)?.films.join(", ");
  const dry = session.drying
    .filter((each) => each.batch === batch)
    .map(({ readyClock, readyDayOffset }) => ({
      clock: clockText(readyClock, readyDayOffset),
      timer: null,
      text: `${films} should be dry`,
    }));
  return table([...rows, ...dry], {
    caption: `Batch ${batch}: ${films}`,
    columns: [
      { field: "clock", heading: "Clock" },
      { field: "timer", heading: "Timer", align: "right" },
      { field: "text", heading: "Do" },
    ],
  });
}
