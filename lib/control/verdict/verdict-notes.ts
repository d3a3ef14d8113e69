import { rulesOf } from "../charts/chart-choices.ts";
import type { ProcessSpecification } from "../process/process-specification.ts";
import { runRuleFalseAlarms } from "../rules/false-alarms.ts";
import { hoursBetween } from "../strips/local-time.ts";
import type { StripHistory } from "../strips/strip-history.ts";
import type { StripTable } from "../strips/strip-table.ts";
import type { JudgedStrips } from "./judge-strips.ts";
import type { VerdictSettings } from "./verdict-options.ts";

/** A month typed one too high makes a pause of four weeks. */
const LONG_PAUSE_DAYS = 28;

/** What the verdict rests on. */
export function verdictAssumptions(
  history: StripHistory,
  settings: VerdictSettings,
  table: StripTable,
): readonly string[] {
  const { later } = table;
  const charted = table.keys.filter((key) => key.colour !== null).length;
  const said = [
    `a strip within ${settings.repeatWindowHours} hours of one beyond a control limit is its repeat; a strip older than ${settings.staleAfterHours} hours is stale`,
  ];
  if (history.asOf === undefined) {
    said.push("no asOf was given: the verdict is as of the latest strip, so it cannot be stale");
  }
  if (later > 0) {
    said.push(`${later} strip${later === 1 ? "" : "s"} taken after ${history.asOf} left out`);
  }
  if (settings.charts === undefined) {
    said.push("there is no base period: only the process's limits are judged, no run rules");
  } else if (settings.actOn.includes("run rules")) {
    const { sentence, averageRunLength } = runRuleFalseAlarms(rulesOf(settings.charts));
    said.push(`run rules: ${sentence}${togetherWords(averageRunLength, charted)}`);
  }
  return said;
}

function togetherWords(averageRunLength: number | null, series: number): string {
  if (averageRunLength === null) return "";
  const share = 1 - (1 - 1 / averageRunLength) ** series;
  return `; with ${series} series up to one strip in ${Math.max(1, Math.round(1 / share))} carries one (fewer when the colours move together)`;
}

/** A recent change of strip batch that no crossover covers. */
export function batchNotes(table: StripTable): readonly string[] {
  const recent = 10;
  const last = table.rows.length - 1;
  for (let i = last; i > Math.max(0, last - recent); i--) {
    const [from, to] = [table.batch[i - 1] ?? 0, table.batch[i] ?? 0];
    if (from === to || table.crossedOver[to] || table.crossedOver[from]) continue;
    const time = (table.takenAt[i] ?? "").replace("T", " ");
    return [
      `strip batch ${table.batchIds[from]} gave way to ${table.batchIds[to]} on ${time} without a crossover: a step there may be the strips' and not the process's`,
    ];
  }
  return [];
}

/** A latest strip that comes long after the one before: more often a slip of the pen than a pause. */
export function gapNotes({ takenAt }: Pick<StripTable, "takenAt">): readonly string[] {
  const [before, latest] = takenAt.slice(-2);
  if (before === undefined || latest === undefined) return [];
  const days = Math.floor(hoursBetween(before, latest) / 24);
  if (days < LONG_PAUSE_DAYS) return [];
  return [
    `the latest strip, of ${latest.replace("T", " ")}, comes ${days} days after the one before it, of ${before.replace("T", " ")}: see that its date is right`,
  ];
}

/** Doubts about the crossover from which the latest strip's aims come. */
export function crossoverWarnings(
  { crossovers = [], specification }: StripHistory,
  stripBatch: string | null,
): readonly string[] {
  return crossovers
    .filter(({ to, aims }) => to === stripBatch && aims.process === specification.id)
    .flatMap(({ from, to, warnings }) =>
      warnings.map((warning) => `crossover ${from} to ${to}: ${warning}`),
    );
}

/** What the user should think about. */
export function verdictWarnings(
  table: StripTable,
  judged: JudgedStrips,
  specification: ProcessSpecification,
): readonly string[] {
  const warnings = limitOriginWarnings(specification);
  const found = new Map<string, Map<string, string[]>>();
  const add = (warning: string, k: number) => {
    const { parameter, colour } = table.keys[k] ?? {};
    if (parameter === undefined || colour === undefined || colour === null) return;
    const byName = found.get(warning) ?? new Map<string, string[]>();
    byName.set(parameter.name, [...(byName.get(parameter.name) ?? []), colour]);
    found.set(warning, byName);
  };
  judged.series.forEach(({ marks }, k) => {
    if (marks === null) return;
    if (marks.notCharted !== null) add(`no statistical limits: ${marks.notCharted}`, k);
    for (const warning of marks.warnings) add(warning, k);
  });
  for (const [warning, byName] of found) {
    const names = [...byName].map(([name, colours]) => `${name} ${colours.join(", ")}`);
    warnings.push(`${names.join("; ")}: ${warning}`);
  }
  return warnings;
}

function limitOriginWarnings(specification: ProcessSpecification): string[] {
  const doubtful = new Map<string, string[]>();
  for (const { name, limits } of specification.parameters) {
    for (const limit of [limits.action, limits.control]) {
      if (limit === null || limit.howObtained === "read in a copy") continue;
      if (limit.howObtained === "the lab's own") continue;
      const names = doubtful.get(limit.howObtained) ?? [];
      if (!names.includes(name)) names.push(name);
      doubtful.set(limit.howObtained, names);
    }
  }
  return [...doubtful].map(
    ([how, names]) =>
      `limits of ${names.join(", ")}: ${how}; replace them by those of your maker or your own`,
  );
}
