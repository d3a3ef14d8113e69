import type { ProcessLimits } from "../process/process-limits.ts";
import { roundDensity } from "../strips/density.ts";
import { dateOf } from "../strips/local-time.ts";
import type { StripTable } from "../strips/strip-table.ts";
import type { JudgedStrips } from "./judge-strips.ts";
import { level } from "./limit-level.ts";
import type { ChangeSinceGoodDay, ParameterChange } from "./verdict.ts";

/** Compares the latest strip with the last strip of the last earlier day that ended as run. */
export function sinceGoodDay(table: StripTable, judged: JudgedStrips): ChangeSinceGoodDay | null {
  const now = table.rows.length - 1;
  const then = lastGoodStrip(table, judged);
  if (then < 0) return null;
  const changes: ParameterChange[] = [];
  table.keys.forEach((key, k) => {
    const deviationThen = table.columns[k]?.[then] ?? Number.NaN;
    const deviationNow = table.columns[k]?.[now] ?? Number.NaN;
    if (Number.isNaN(deviationThen) || Number.isNaN(deviationNow)) return;
    const change = roundDensity(deviationNow - deviationThen);
    const reach = reachOf(key.parameter.limits, change);
    changes.push({
      parameter: key.parameter.id,
      name: key.parameter.name,
      colour: key.colour,
      deviationThen,
      deviationNow,
      change,
      changeOverLimit: reach === null ? null : roundDensity(Math.abs(change) / reach),
    });
  });
  const size = (each: ParameterChange) => each.changeOverLimit ?? -1;
  return {
    goodDay: dateOf(table.takenAt[then] ?? ""),
    rowThen: table.rows[then] ?? 0,
    rowNow: table.rows[now] ?? 0,
    changes: changes.sort((a, b) => size(b) - size(a) || Math.abs(b.change) - Math.abs(a.change)),
  };
}

function lastGoodStrip(table: StripTable, judged: JudgedStrips): number {
  const date = (i: number) => dateOf(table.takenAt[i] ?? "");
  const end = table.rows.length - 1;
  let day = end < 0 ? "" : date(end);
  for (let i = end - 1; i >= 0; i--) {
    const here = date(i);
    if (here === day) continue;
    // The first strip met from behind is the day's last.
    day = here;
    if (judged.worst[i] === level.run) return i;
  }
  return -1;
}

function reachOf(limits: ProcessLimits, change: number): number | null {
  const limit = limits.control ?? limits.action;
  if (limit === null) return null;
  const [towards, away] = change < 0 ? [limit.lower, limit.upper] : [limit.upper, limit.lower];
  const reach = towards ?? away;
  return reach === null || reach === 0 ? null : Math.abs(reach);
}
