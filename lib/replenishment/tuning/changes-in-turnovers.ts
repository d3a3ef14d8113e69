import type { DeliveredInterval } from "../rates/delivered-rates.ts";
import type { SetRateChange } from "../rates/set-rate-changes.ts";
import { tankTurnoversAt } from "../rates/tank-turnovers.ts";
import type { KnownRateChange } from "./rate-sensitivity.ts";

/** The changes in turnovers, each with its own step, as `rateSensitivity` takes them. */
export function changesInTurnovers(
  changes: readonly SetRateChange[],
  tank: { readonly intervals: readonly DeliveredInterval[]; readonly volumeL: number },
): readonly KnownRateChange[] {
  if (changes.length === 0) return [];
  const moments = changes.map(({ fromReading }) => fromReading);
  const { turnovers } = tankTurnoversAt({ ...tank, at: moments, holdDays: 1 });
  return changes.map(({ fraction }, i) => ({
    atTurnovers: turnovers[i] ?? 0,
    fraction: fraction - (changes[i - 1]?.fraction ?? 0),
  }));
}
