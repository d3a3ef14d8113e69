import {
  type DeveloperDay,
  type DeveloperHistory,
  type DeveloperState,
  developerOverDays,
} from "./developer-over-days.ts";
import type { ScheduledStrip } from "./strip-schedule.ts";

/** What a line's developer holds when a strip runs. */
export interface DeveloperOfLine {
  /** When a share of a day's work is done, work going evenly over the day. */
  readonly during: (day: number, share: number) => DeveloperState;
  /** When a strip runs: before a bath is mixed afresh it meets the old one. */
  readonly metBy: (strip: ScheduledStrip) => DeveloperState;
}

/** Follows a line's developer; on a day with a fresh bath all work goes through that. */
export function developerOfLine(
  history: Omit<DeveloperHistory, "freshOn">,
  freshAt: ReadonlyMap<number, string>,
): DeveloperOfLine {
  const freshDays = [...freshAt.keys()];
  const days = developerOverDays({ ...history, freshOn: freshDays });
  const old = new Map<number, DeveloperDay | undefined>(
    freshDays.map((day) => {
      const before = freshDays.filter((each) => each < day);
      return [day, developerOverDays({ ...history, freshOn: before })[day]];
    }),
  );
  const during = (day: number, share: number): DeveloperState => {
    const { morning = {}, evening = {} } = days[day] ?? {};
    const between = Object.entries(morning).map(([name, start]) => {
      return [name, start + share * ((evening[name] ?? start) - start)] as const;
    });
    return Object.fromEntries(between);
  };
  const metBy = ({ day, share, takenAt }: ScheduledStrip) =>
    takenAt.slice(11) < (freshAt.get(day) ?? "")
      ? (old.get(day)?.morning ?? {})
      : during(day, share);
  return { during, metBy };
}
