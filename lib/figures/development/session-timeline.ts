import type { Session } from "../../development/index.ts";
import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { formatMinutes } from "../../units/index.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { batchPanel } from "./session-timeline-panel.ts";

/**
 * The timeline of a session: one panel for each batch, one bar for each step on an axis of minutes
 * since the batch began, the clock before each bar and its length after it. Narrow enough to be
 * read on a telephone, and three batches fit one printed sheet.
 *
 * @param session from `planSession`; at least one batch that runs
 * @param options.plotWidth width of the bars in pixels, 120 to 700; default 230
 * @returns Vega-Lite figure; its text alternative gives start, end and the developing times
 * @throws InputError if no batch runs, or for a width out of range
 *
 * @example
 * const films = [{ name: "roll 1", format: "135-36", developmentTimeMin: 9 }];
 * const developers = [{ name: "developer", dilution: "1+1", use: "one-shot", bottleMl: 500 }];
 * const session = planSession({ start: "19:30", films, tank: "plastic, 1 reel", developers, temperatures: { developerC: 20, roomC: 20 } });
 * sessionTimeline(session).description.includes("batch 1 develops for 9:00") // => true
 */
export function sessionTimeline(
  session: Session,
  options: { readonly plotWidth?: number } = {},
): VegaLiteFigure {
  const where = "sessionTimeline";
  requireObject(where, "session", session, "an object with process, startClock, endClock, …");
  const bounds = { min: 120, max: 700 };
  const plotWidth = requireNumber(where, "plotWidth", options.plotWidth ?? 230, bounds);
  const batches = [...new Set(session.steps.map((step) => step.batch))];
  if (batches.length === 0) {
    const advice = "write a session of which at least one batch runs";
    throw new InputError(where, "session.steps", session.steps, advice);
  }
  const ofBatch = (batch: number) => session.steps.filter((step) => step.batch === batch);
  const longest = Math.max(
    ...batches.map((batch) => ofBatch(batch).reduce((sum, step) => sum + step.lengthS, 0) / 60),
  );
  const charts = batches.map((batch) =>
    batchPanel(session, batch, ofBatch(batch), { plotWidth, longest }),
  );
  const day = session.endDayOffset > 0 ? ` (+${session.endDayOffset} day)` : "";
  const title = `Session ${session.startClock} to ${session.endClock}${day}`;
  return vegaLiteFigure({
    title,
    description: `${describe(session, batches)} One bar for each step, on minutes since the batch began; white ticks on the developer are the bouts of agitation.`,
    specification: {
      title: { text: title, fontSize: 14, frame: "bounds" },
      vconcat: charts,
      spacing: 14,
    },
  });
}

function describe(session: Session, batches: readonly number[]): string {
  const parts = batches.map((batch) => {
    const timeS = session.batches.find((each) => each.number === batch)?.development?.timeS ?? 0;
    const start = session.steps.find((step) => step.batch === batch)?.startClock;
    return `batch ${batch} develops for ${formatMinutes(timeS / 60)} and begins at ${start}`;
  });
  return `A session from ${session.startClock} to ${session.endClock}: ${parts.join("; ")}.`;
}
