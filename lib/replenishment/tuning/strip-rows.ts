import { closestWord, InputError, requireEntries, requireObject } from "../../input/index.ts";

/** Deviations of one parameter in one colour in order of time, as `seriesOfStrips` gives them. */
export interface StripChannel {
  readonly process: string;
  readonly parameter: string;
  /** `null` for a parameter with one value a strip; tuning does not use it. */
  readonly colour: string | null;
  /** For each reading, which strip it belongs to. */
  readonly rows: readonly number[];
  readonly takenAt: readonly string[];
  readonly deviations: readonly number[];
}

/** Strips as tuning takes them: one row a strip, one deviation a channel. */
export interface StripRows {
  readonly process: string;
  readonly channels: readonly { readonly parameter: string; readonly colour: string }[];
  /** When each strip was run: give it to `tankTurnoversAt`. */
  readonly at: readonly string[];
  readonly deviations: readonly (readonly number[])[];
  /** Strips that lack one of the channels; they are not in the rows. */
  readonly leftOut: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * The rows that tuning takes from the series of a control chart: strips that have every wanted
 * parameter in all its colours, in order of time.
 *
 * @param series series of one process, as `seriesOfStrips` gives them
 * @param options.parameters ids that answer to the rate; default `["ld", "hdLessLd"]`
 * @param options.from first moment that counts, `2026-07-01T00:00`; default the first strip
 * @param options.to last moment that counts; default the last strip
 * @returns deviations by strip and channel, the strips' moments, and strips left out
 * @throws InputError for series of several processes, a parameter that is not there or has no colours,
 *   or if no strip has all channels
 *
 * @example
 * const ld = (colour: string, deviations: number[]) => ({ process: "colour-paper", parameter: "ld", colour, rows: [0, 1], takenAt: ["2026-08-13T07:10", "2026-08-14T07:10"], deviations });
 * stripRows([ld("red", [0.01, 0]), ld("green", [0.02, 0.01])], { parameters: ["ld"] }).deviations // => [[0.01, 0.02], [0, 0.01]]
 *
 * Source: definition.
 */
export function stripRows(
  series: readonly StripChannel[],
  options: {
    readonly parameters?: readonly string[];
    readonly from?: string;
    readonly to?: string;
  } = {},
): StripRows {
  const where = "stripRows";
  requireEntries(where, "series", series);
  requireObject(where, "options", options, "an object of options, or leave it out");
  if (options.parameters !== undefined)
    requireEntries(where, "parameters", options.parameters, "a list of texts");
  const [process, ...others] = [...new Set(series.map((each) => each.process))];
  if (process === undefined) {
    throw new InputError(where, "series", series, "write the series of seriesOfStrips");
  }
  if (others.length > 0) {
    const advice = "these strips are of different processes; write the series of one process";
    throw new InputError(where, "series", [process, ...others].join(" and "), advice);
  }
  const channels = (options.parameters ?? ["ld", "hdLessLd"]).flatMap((parameter) =>
    channelsOf(where, series, parameter),
  );
  const { from = "", to = "~" } = options;
  const taken = new Map<number, string>();
  for (const each of channels) {
    each.rows.forEach((row, i) => {
      const at = each.takenAt[i] ?? "";
      if (at >= from && at <= to) taken.set(row, at);
    });
  }
  const readings = channels.map(
    (each) => new Map(each.rows.map((row, i) => [row, each.deviations[i] ?? Number.NaN])),
  );
  const complete = (row: number) => readings.every((byRow) => byRow.has(row));
  const inOrder = [...taken].sort(([a, x], [b, y]) => (x < y ? -1 : x > y ? 1 : a - b));
  const kept = inOrder.filter(([row]) => complete(row));
  if (kept.length === 0) {
    const advice = "no strip has all of these; look at the strip log, or at from and to";
    throw new InputError(where, "parameters", options.parameters, advice);
  }
  const leftOut = inOrder.filter(([row]) => !complete(row)).map(([, at]) => at);
  return {
    process,
    channels: channels.map(({ parameter, colour }) => ({ parameter, colour })),
    at: kept.map(([, at]) => at),
    deviations: kept.map(([row]) => readings.map((byRow) => byRow.get(row) ?? Number.NaN)),
    leftOut,
    warnings:
      leftOut.length === 0
        ? []
        : [`${leftOut.length} strips lack a reading and were left out (${leftOut.join(", ")}).`],
  };
}

/** The colours of a parameter, or an error that says what there is. */
function channelsOf(where: string, series: readonly StripChannel[], parameter: string) {
  const found = series.filter((each) => each.parameter === parameter);
  const coloured = found.flatMap((each) =>
    each.colour === null ? [] : [{ ...each, colour: each.colour }],
  );
  if (coloured.length > 0) return coloured;
  const names = [...new Set(series.flatMap((s) => (s.colour === null ? [] : [s.parameter])))];
  const near = closestWord(parameter, names);
  const meant = near === undefined ? "" : ` (did you mean "${near}"?)`;
  const advice =
    found.length > 0
      ? `it has one value a strip and no sign of its own; write some of ${names.join(", ")}`
      : `write some of ${names.join(", ")}${meant}`;
  throw new InputError(where, "parameters", parameter, advice);
}
