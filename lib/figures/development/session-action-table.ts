import type { Session, SessionAction } from "../../development/index.ts";
import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { formatMinutes } from "../../units/index.ts";
import { type Table, table } from "../parts/table.ts";

/**
 * One batch of a session to follow at the sink: a row for each thing to do, with the clock, and what
 * a timer shows that was started when the tank was full. Bouts of agitation at equal distances share
 * a row (`sessionLines` has one for each). Narrow enough for a telephone, short enough for a sheet.
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
 * sessionActionTable(session).rows[8].text // => "agitate 5 s, then every 1:00 until 8:00"
 */
export function sessionActionTable(
  session: Session,
  options: { readonly batch?: number } = {},
): Table {
  const where = "sessionActionTable";
  requireObject(where, "session", session, "an object with process, startClock, endClock, …");
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
    .flatMap((step) => boutsTogether(step.actions))
    .map(({ clock, dayOffset, timerS, text }) => {
      const timer = timerS === null ? null : formatMinutes(timerS / 60);
      const what = timer === null ? text : `${timer} · ${text}`;
      return { clock: clockText(clock, dayOffset), timer, text, what };
    });
  const films = session.batches.find((each) => each.number === batch)?.films.join(", ");
  const dry = session.drying
    .filter((each) => each.batch === batch)
    .map(({ readyClock, readyDayOffset }) => ({
      clock: clockText(readyClock, readyDayOffset),
      timer: null,
      text: `${films} should be dry`,
      what: `${films} should be dry`,
    }));
  return table([...rows, ...dry], {
    caption: `Batch ${batch}: ${films}`,
    columns: [
      { field: "clock", heading: "Clock" },
      // The timer has no column of its own, so that a telephone shows the words whole.
      { field: "what", heading: "Timer · do" },
    ],
  });
}

/** Three equal bouts or more, at equal distances, as one action. */
function boutsTogether(actions: readonly SessionAction[]): readonly SessionAction[] {
  const together: SessionAction[] = [];
  for (let i = 0; i < actions.length; ) {
    const first = actions[i];
    if (first === undefined) break;
    const everyS = (actions[i + 1]?.atS ?? 0) - first.atS;
    let end = i + 1;
    while (
      /^agitate \d+ s$/.test(first.text) &&
      actions[end]?.text === first.text &&
      actions[end]?.atS === first.atS + (end - i) * everyS
    ) {
      end++;
    }
    const several = end - i >= 3;
    together.push(several ? { ...first, text: untilLast(first, everyS, actions[end - 1]) } : first);
    i = several ? end : i + 1;
  }
  return together;
}

function untilLast(first: SessionAction, everyS: number, last: SessionAction | undefined): string {
  const until = formatMinutes((last?.timerS ?? 0) / 60);
  return `${first.text}, then every ${formatMinutes(everyS / 60)} until ${until}`;
}
