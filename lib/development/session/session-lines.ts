import { InputError, requireEntries } from "../../input/index.ts";
import type { Session } from "./session-result.ts";

/**
 * The session as plain lines for the sink, one for each action: clock, then what to do.
 *
 * @param session from `planSession`
 * @returns lines such as `"19:42:00  pour in developer: 580 mL, 22.5 °C"`; a line with the batch
 *   stands before each batch, `+1` after a clock marks the next day
 * @throws InputError if it is not a session
 *
 * @example
 * sessionLines(planSession({ start: "19:30", process: "colour negative", films: [{ name: "roll 1", format: "135-36" }], tank: "plastic, 1 reel", temperatures: { developerC: 37.8, roomC: 20, waterBathC: 38 } }))[1] // => "19:30:00  measure 290 mL developer, 37.8 °C"
 */
export function sessionLines(session: Session): readonly string[] {
  if (!Array.isArray(session?.steps)) {
    throw new InputError("sessionLines", "session", session, "write the result of planSession");
  }
  const like = "the result of planSession";
  requireEntries("sessionLines", "session.batches", session.batches, like);
  requireEntries("sessionLines", "session.drying", session.drying, like);
  const lines: string[] = [];
  let batch = 0;
  for (const step of session.steps) {
    if (step.batch !== batch) {
      batch = step.batch;
      const films = session.batches.find((each) => each.number === batch)?.films.join(", ");
      lines.push(`batch ${batch}: ${films}`);
    }
    for (const { clock, dayOffset, text } of step.actions) {
      lines.push(`${clock}${dayOffset > 0 ? ` +${dayOffset}` : ""}  ${text}`);
    }
  }
  for (const { batch: number, readyClock, readyDayOffset } of session.drying) {
    const day = readyDayOffset > 0 ? ` +${readyDayOffset}` : "";
    lines.push(`${readyClock}${day}  batch ${number} should be dry`);
  }
  return lines;
}
