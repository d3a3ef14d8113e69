import { requireObject } from "../../input/index.ts";
import { hoursBetween } from "../strips/local-time.ts";
import { readingDecimals } from "../strips/reading-decimals.ts";
import type { StripHistory } from "../strips/strip-history.ts";
import { stripTable } from "../strips/strip-table.ts";
import { judgeStrips } from "./judge-strips.ts";
import { level } from "./limit-level.ts";
import { freshStripWords, noStripWords, overallWords } from "./overall-words.ts";
import { sinceGoodDay } from "./since-good-day.ts";
import { statisticalBase } from "./statistical-base.ts";
import type { ProcessVerdict } from "./verdict.ts";
import {
  batchNotes,
  crossoverWarnings,
  gapNotes,
  verdictAssumptions,
  verdictWarnings,
} from "./verdict-notes.ts";
import { type VerdictOptions, verdictSettings } from "./verdict-options.ts";
import { wordParameter } from "./word-parameter.ts";

/**
 * The verdict on one process from its control strips: run, act or hold, for every parameter and
 * colour and overall, with the reason, the strips that led to it and what to do next.
 *
 * - Beyond a control limit once: act, repeat the strip before any customer work. The next reading
 *   within the repeat window beyond it too (either side): hold. Back within: cleared, with a note.
 *   A hold stands until a reading is within the control limit.
 * - Beyond an action limit only: act, customer work may run.
 * - A statistical signal within the process's limits: act at most, customer work may run.
 * - A patch not read, or a strip that is stale at `asOf`: act, no customer work until it is mended.
 * - No strip at all: hold.
 *
 * A reading exactly on a limit is within it. Deviations are printed to the decimals the strips were
 * read to, one more only where rounding would hide that a limit is passed.
 *
 * @param history strips, batches, crossovers, specification, and `asOf`: the local time for which
 * the verdict is asked (default: the time of the latest strip)
 * @param options statistical charts and their base period, which signals act, repeat window (hours,
 * default 36), age at which a strip is stale (hours, default 12)
 * @returns the verdict, JSON-safe; `rows` are indices into `history.strips`
 * @throws InputError if a batch is not registered, a time or density is not valid, or the base
 * period cannot serve
 *
 * @example
 * const grey = (d: number) => ({ red: d, green: d, blue: d });
 * const reference = { dMin: grey(0.1), ld: grey(0.8), hd: grey(1.6), dMax: grey(2.4) };
 * const batches = [{ id: "77", process: "colour-paper", reference, correction: {} }];
 * const strips = [{
 *   takenAt: "2026-08-14T07:10", process: "colour-paper", stripBatch: "77", operator: "A",
 *   patches: { ...reference, ld: { red: 0.8, green: 0.8, blue: 0.89 }, hd: { red: 1.6, green: 1.6, blue: 1.69 } },
 * }];
 * const verdict = processVerdict({ strips, batches, specification: colourPaperProcess });
 * verdict.reason // => "Colour spread of LD is +0.09, above the control limit of +0.08; one strip alone does not stop the line (also beyond a limit: LD (speed) blue)"
 *
 * Source: published strip-control manuals (action exceeded: early warning, work may run; control
 * exceeded: repeat at once, if the second agrees stop), Kodak publication, minilab manual section 3.
 */
export function processVerdict(
  history: StripHistory,
  options: VerdictOptions = {},
): ProcessVerdict {
  const where = "processVerdict";
  requireObject(where, "history", history, "an object with strips, batches and specification");
  const { specification } = history;
  const settings = verdictSettings(where, options);
  const table = stripTable(where, history);
  const last = table.rows.length - 1;
  const latestTakenAt = table.takenAt[last] ?? null;
  const asOf = history.asOf ?? latestTakenAt ?? "";
  const base = { process: specification.id, name: specification.name, asOf };
  const assumptions = verdictAssumptions(history, settings, table);
  if (latestTakenAt === null) {
    return {
      ...base,
      ...noStripWords(specification, asOf),
      latestRow: null,
      latestTakenAt: null,
      stripBatch: null,
      rows: [],
      parameters: [],
      readingDecimals: 2,
      statisticalBase: statisticalBase(settings.charts, []),
      changeSinceGoodDay: null,
      notes: [],
      assumptions,
      warnings: [],
    };
  }
  const judged = judgeStrips(where, table, specification.id, settings);
  const latestRow = table.rows[last] ?? 0;
  const patches = history.strips[latestRow]?.patches ?? {};
  const decimals = readingDecimals(history.strips, table.rows);
  const worded = judged.series.map((series, k) =>
    wordParameter(table, k, series, specification, patches, decimals),
  );
  const stripBatch = table.batchIds[table.batch[last] ?? 0] ?? null;
  const ageHours = hoursBetween(latestTakenAt, asOf);
  const overall =
    ageHours > settings.staleAfterHours
      ? freshStripWords(worded, specification, latestTakenAt, ageHours, settings.staleAfterHours)
      : overallWords(worded, specification);
  return {
    ...base,
    verdict: overall.level === level.hold ? "hold" : overall.level === level.run ? "run" : "act",
    workMayRun: overall.level < level.wait,
    reason: overall.reason,
    next: overall.next,
    latestRow,
    latestTakenAt,
    stripBatch,
    rows: overall.rows.length > 0 ? overall.rows : [latestRow],
    parameters: worded.map((each) => each.verdict),
    readingDecimals: decimals,
    statisticalBase: statisticalBase(settings.charts, judged.series),
    changeSinceGoodDay: sinceGoodDay(table, judged),
    notes: [
      ...worded.flatMap((each) => (each.note === null ? [] : [each.note])),
      ...batchNotes(table),
      ...gapNotes(table),
    ],
    assumptions,
    warnings: [
      ...verdictWarnings(table, judged, specification),
      ...crossoverWarnings(history, stripBatch),
    ],
  };
}
