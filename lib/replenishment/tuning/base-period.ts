import { InputError, requireNumber } from "../../input/index.ts";
import { dateOfDay, dayNumber } from "../calendar.ts";

/** The strips of the days at the beginning of a watch that are taken for unchanged. */
export function basePeriod(
  where: string,
  watched: {
    readonly at: readonly string[];
    readonly deviations: readonly (readonly number[])[];
    readonly baseDays: number;
    readonly watchFrom: string;
    readonly sensitivity: readonly number[];
  },
): { readonly baseTo: string; readonly base: readonly (readonly number[])[] } {
  const { at, deviations, baseDays, watchFrom } = watched;
  const [first] = at;
  if (first === undefined) {
    throw new InputError(
      where,
      "watchFrom",
      watchFrom,
      "no strip lies there; write an earlier day",
    );
  }
  const channels = deviations[0]?.length ?? 0;
  if (watched.sensitivity.length !== channels) {
    const given = `${watched.sensitivity.length} numbers`;
    throw new InputError(
      where,
      "sensitivity",
      given,
      `write ${channels}, one a channel of the strips`,
    );
  }
  const start = dayNumber(where, "watchFrom", first.slice(0, 10));
  const baseTo = dateOfDay(start + baseDays - 1);
  const base = deviations.filter((_, i) => (at[i] ?? "").slice(0, 10) <= baseTo);
  requireNumber(where, "number of strips in the unchanged period", base.length, {
    min: channels + 10,
    hint: `ten more than channels; ${first.slice(0, 10)} to ${baseTo} are its ${baseDays} days: write more baseDays, as far as all was well, or bring strips of an earlier time`,
  });
  const still = base[0]?.findIndex((value, c) => base.every((row) => row[c] === value)) ?? -1;
  if (still >= 0) {
    const advice = "strips that all read the same show no noise; write what the densitometer read";
    throw new InputError(where, `channel ${still} of the strips to ${baseTo}`, "unmoved", advice);
  }
  return { baseTo, base };
}
