import { requireEntries, requireObject } from "../../input/index.ts";
import type { PumpEvidence, RateChange } from "../../replenishment/index.ts";
import type { RateWitness } from "./rate-agreement-figure.ts";

const percent = (value: number) => `${value < 0 ? "−" : "+"}${Math.abs(100 * value).toFixed(1)} %`;
const range = ([low, high]: readonly [number, number]) => `${percent(low)} to ${percent(high)}`;

/** Who says what about the rates of a line's pumps, and whether they agree. */
export interface RateWitnesses {
  /** Of the pump looked at, then of the other pumps. */
  readonly witnesses: readonly RateWitness[];
  /** What the other pumps' logs say, a sentence each. */
  readonly otherPumps: readonly string[];
  /** Whether strips and pump log agree, in a sentence. */
  readonly agreement: string;
  /** null where nothing was measured, or there is no change to compare. */
  readonly agree: boolean | null;
}

/**
 * Puts what the strips found beside what the pumps' own logs say: level of the replenisher tank and
 * measuring cylinder, before and since. Strips cannot tell a weak pump from weak replenisher; the level
 * can.
 *
 * @param change from `tuneRate` or `rateChange`
 * @param evidence from `pumpEvidence`, the pump looked at first
 * @returns witnesses to draw, sentences about the other pumps, and the agreement
 *
 * @example
 * const readings = [0, 1, 2, 3, 4, 5, 6].map((i) => ({ readAt: `2026-03-0${i + 1}T18:00`, counterStrokes: 300 * i, settingMlPerStroke: 5 }));
 * const days = [2, 3, 4, 5, 6, 7].map((d) => ({ date: `2026-03-0${d}`, areaM2: 2.5 }));
 * const turnovers = Array.from({ length: 40 }, (_, i) => i * 0.1);
 * const deviations = turnovers.map((_, i) => [0.001 * Math.sin(5 * i)]);
 * const change = rateChange({ turnovers, deviations, sensitivity: [0.4], noise: [[0.0001]] });
 * rateWitnesses(change, pumpEvidence([{ pump: "developer", readings, days }], { since: "2026-03-05" })).agree // => null
 */
export function rateWitnesses(
  change: RateChange,
  evidence: readonly PumpEvidence[],
): RateWitnesses {
  requireObject("rateWitnesses", "change", change, "an object with finding, reason, error, …");
  requireEntries("rateWitnesses", "evidence", evidence);
  const [first, ...others] = evidence;
  const changed = change.finding === "rate changed";
  const level = first?.since ?? null;
  const witnesses = [
    ...(changed ? witness("strips, since the change", change, true) : []),
    ...witness("level of replenisher, since", level, true),
    ...witness("cylinder, since", first?.cylinderSince ?? null, true),
    ...witness("level of replenisher, before", first?.before ?? null, true),
    ...witness("cylinder, before", first?.cylinderBefore ?? null, true),
    ...others.flatMap(({ pump, since }) => witness(`${pump}, level since`, since)),
  ];
  const agree =
    !changed || level === null
      ? null
      : level.errorInterval[0] <= change.errorInterval[1] &&
        change.errorInterval[0] <= level.errorInterval[1];
  return {
    witnesses,
    otherPumps: others.map(({ pump, finding }) => `${pump} ${finding}.`),
    agree,
    agreement: inWords(change, first, agree),
  };
}

function witness(
  name: string,
  of: {
    readonly error: number | null;
    readonly errorInterval: readonly [number, number] | null;
  } | null,
  suspect = false,
): readonly RateWitness[] {
  if (of === null || of.error === null || of.errorInterval === null) return [];
  return [{ name, error: of.error, interval: of.errorInterval, suspect }];
}

function inWords(change: RateChange, first: PumpEvidence | undefined, agree: boolean | null) {
  const strips = range(change.errorInterval);
  if (change.finding !== "rate changed") {
    return `The strips tell of no change that could be sized; by its own log the pump ${first?.finding ?? "was not looked at"}.`;
  }
  const level = first?.since ?? null;
  if (level === null || agree === null) {
    return `The strips say ${strips}; the level was not measured. Put the cylinder under the pump today.`;
  }
  return agree
    ? `Strips (${strips}) and level (${range(level.errorInterval)}) agree: it is the pump.`
    : `Strips (${strips}) and level (${range(level.errorInterval)}) disagree: look at the mix of the replenisher and at the sensitivity before the pump.`;
}
