import type { ProcessSpecification } from "../process/process-specification.ts";
import type { Patches } from "../strip.ts";
import { dateOf } from "../strips/local-time.ts";
import type { StripTable } from "../strips/strip-table.ts";
import { beyondWords, deviationText, seriesName } from "./density-words.ts";
import type { JudgedSeries } from "./judge-strips.ts";
import { type Level, level } from "./limit-level.ts";
import type { ParameterVerdict, StatisticalSignal } from "./verdict.ts";

/** The verdict on one series with its level and, if there is something to know, a note. */
export interface WordedParameter {
  readonly verdict: ParameterVerdict;
  readonly level: Level;
  readonly note: string | null;
}

/** The work that waits for the verdict: `customer film` or `customer prints`. */
export function customerWork(specification: ProcessSpecification): string {
  return specification.geometry === "transmission" ? "customer film" : "customer prints";
}

/** Puts the state of one series after the latest strip into words. */
export function wordParameter(
  table: StripTable,
  k: number,
  judged: JudgedSeries,
  specification: ProcessSpecification,
  latestPatches: Patches,
  decimals: number,
): WordedParameter {
  const key = table.keys[k];
  const column = table.columns[k];
  if (key === undefined || column === undefined) throw new RangeError(`no series ${k}`);
  const { limits, id, name } = key.parameter;
  const last = column.length - 1;
  const deviation = column[last] ?? Number.NaN;
  const missing = Number.isNaN(deviation);
  const before = previousReading(column, last);
  const byLimits = judged.byLimits[last] ?? 0;
  const signals = missing ? [] : (judged.marks?.latest ?? []);
  const acting = signals.filter((signal) => signal.acts);
  const label = seriesName(name, key.colour);
  const work = customerWork(specification);
  const told = (value: number) => deviationText(value, decimals, limits);
  const row = (i: number) => table.rows[i] ?? 0;
  const when = (i: number) => {
    const time = table.takenAt[i] ?? "";
    const sameDay = dateOf(time) === dateOf(table.takenAt[last] ?? "");
    return sameDay ? time.slice(11, 16) : time.slice(0, 16).replace("T", " ");
  };
  const said = (
    now: Level,
    reason: string,
    next: string,
    rows: readonly number[],
    note: string | null = null,
  ): WordedParameter => ({
    level: now,
    note,
    verdict: {
      parameter: id,
      name,
      colour: key.colour,
      verdict: now === level.hold ? "hold" : now === level.run ? "run" : "act",
      workMayRun: now < level.wait,
      reason,
      next,
      deviation: missing ? null : deviation,
      limits,
      rows,
      signals,
    },
  });

  if (missing) {
    const unread = key.patches.filter((patch) => latestPatches[patch] === undefined);
    const patches = unread.join(" and ");
    const held = byLimits === level.hold;
    const standing = held ? ", and the hold before it stands" : "";
    return said(
      held ? level.hold : level.wait,
      `${label} cannot be judged: ${patches} was not read on the latest strip${standing}`,
      `Read ${patches} on the strip, or run another strip, before any ${work}.`,
      held && before >= 0 ? [row(before), row(last)] : [row(last)],
    );
  }
  const reading = `${label} is ${told(deviation)}`;
  if (byLimits >= level.wait && limits.control !== null) {
    const fault = `${reading}, ${beyondWords(deviation, limits.control, "control")}`;
    if (byLimits === level.wait) {
      const next = `Repeat the strip before any ${work}.`;
      return said(level.wait, `${fault}; one strip alone does not stop the line`, next, [
        row(last),
      ]);
    }
    return said(
      level.hold,
      `${fault}, and the strip of ${when(before)} (${told(column[before] ?? 0)}) was beyond it too`,
      `Stop ${work}; find and correct the cause, then run a fresh strip.`,
      [row(before), row(last)],
    );
  }
  const beforeLevel = before < 0 ? level.run : (judged.byLimits[before] ?? 0);
  const cleared = beforeLevel >= level.wait;
  const note = cleared ? clearedNote(beforeLevel) : null;
  if (byLimits === level.act && limits.action !== null) {
    return said(
      level.act,
      `${reading}, ${beyondWords(deviation, limits.action, "action")}`,
      `${capital(work)} may run; find the cause before it reaches the control limit.`,
      [row(last)],
      note,
    );
  }
  if (acting.length > 0) {
    return said(
      level.act,
      `${reading}, within its process limits, but: ${signalWords(acting)}`,
      `${capital(work)} may run; look for what changed. A statistical signal alone does not stop the line.`,
      [...new Set(acting.flatMap((signal) => signal.rows))].sort((a, b) => a - b),
      note,
    );
  }
  return said(
    level.run,
    `${reading}, within its limits`,
    `Run ${work}.`,
    cleared ? [row(before), row(last)] : [row(last)],
    note,
  );

  function clearedNote(was: number): string {
    const earlier = `${label}: the strip of ${when(before)} (${told(column?.[before] ?? 0)}) was beyond the control limit`;
    return was === level.hold
      ? `${earlier}, confirmed; the strip of ${when(last)} (${told(deviation)}) is back within it. Write down what was corrected`
      : `${earlier}; the strip of ${when(last)} (${told(deviation)}) clears it`;
  }
}

function signalWords([first, ...others]: readonly StatisticalSignal[]): string {
  const before = (first?.strips ?? 1) - 1;
  const again =
    before === 0 ? "" : before === 1 ? ", as before" : `, as on ${before} strips before`;
  const count = others.length === 1 ? "1 more signal" : `${others.length} more signals`;
  return `${first?.sentence ?? ""}${again}${others.length > 0 ? ` (and ${count})` : ""}`;
}

function previousReading(column: Float64Array, from: number): number {
  for (let i = from - 1; i >= 0; i--) if (!Number.isNaN(column[i] ?? Number.NaN)) return i;
  return -1;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
