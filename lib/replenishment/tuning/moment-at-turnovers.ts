import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { dateOfDay } from "../calendar.ts";
import { momentOf } from "../rates/pump-days.ts";

/**
 * The date and time at which a tank had turned over so often, between strips on a straight line: when
 * a change found in turnovers happened.
 *
 * @param strips.at moments of the strips, `2026-08-14T08:05`; strips.turnovers at each, never falling
 * @param turnovers wanted, not before the first strip; past the last one the last strip's time is given
 * @returns `YYYY-MM-DDTHH:MM`
 * @throws InputError for no strip, lists of unequal length, or a number that is not finite
 *
 * @example
 * momentAtTurnovers({ at: ["2026-08-13T08:00", "2026-08-14T08:00"], turnovers: [2, 2.2] }, 2.1) // => "2026-08-13T20:00"
 *
 * Source: arithmetic.
 */
export function momentAtTurnovers(
  strips: { readonly at: readonly string[]; readonly turnovers: readonly number[] },
  turnovers: number,
): string {
  const where = "momentAtTurnovers";
  requireObject(where, "strips", strips, "an object with at and turnovers");
  requireEntries(where, "turnovers", strips.turnovers, "a list of numbers");
  requireEntries(where, "at", strips.at, "a list of texts");
  const wanted = requireNumber(where, "turnovers", turnovers);
  const { at, turnovers: reached } = strips;
  if (at.length === 0 || at.length !== reached.length) {
    const lists = `${at.length} moments and ${reached.length} turnovers`;
    throw new InputError(where, "strips", lists, "write one of each a strip, at least one");
  }
  let low = 0;
  while (low < at.length - 1 && (reached[low + 1] ?? 0) <= wanted) low += 1;
  const moment = (i: number) => momentOf(where, `at[${i}]`, at[i]);
  const high = Math.min(low + 1, at.length - 1);
  const [a, b] = [reached[low] ?? 0, reached[high] ?? 0];
  const share = b > a ? Math.min(1, Math.max(0, (wanted - a) / (b - a))) : 0;
  const minutes = Math.round((moment(low) + share * (moment(high) - moment(low))) * 1440);
  const ofDay = minutes - Math.floor(minutes / 1440) * 1440;
  const two = (n: number) => String(n).padStart(2, "0");
  return `${dateOfDay(Math.floor(minutes / 1440))}T${two(Math.floor(ofDay / 60))}:${two(ofDay % 60)}`;
}
