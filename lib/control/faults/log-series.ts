import { InputError } from "../../input/index.ts";
import type { LogOfReadings } from "./lab-log.ts";
import { LOG_ERROR, type LogKind } from "./log-kinds.ts";

/** A reading before it is counted from a base. */
export interface LogReading {
  readonly at: string;
  /** Up to when it tells, where it tells of a time and not of a moment. */
  readonly until?: string;
  readonly value: number;
  readonly weight: number;
}

/** Which entries count, and which of them stand for "nothing wrong". */
export interface LogPeriod {
  readonly base: { readonly from: string; readonly to: string };
  readonly asOf: string;
}

/** Fewer readings in the base period say too little of how readings vary. */
const FEWEST = 3;
/** The stated wander counts like so many readings where the spread is estimated. */
const PRIOR_READINGS = 4;

/** Counts a series of readings from its mean in the base period; a sentence where that cannot be. */
export function logOfReadings(
  where: string,
  kind: LogKind,
  all: readonly LogReading[],
  { base, asOf }: LogPeriod,
): LogOfReadings | string {
  for (const { at, value } of all) {
    if (Number.isFinite(value)) continue;
    throw new InputError(where, `${kind.quantity} at ${at}`, value, "write a finite number");
  }
  const readings = all
    .filter(({ at, until = at }) => until.slice(0, asOf.length) <= asOf)
    .sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
  const isInBase = ({ at, until = at }: LogReading) =>
    at >= base.from && until.slice(0, base.to.length) <= base.to;
  const inBase = readings.filter(isInBase);
  if (inBase.length < FEWEST) {
    const span = `${readings[0]?.at ?? "no reading"} to ${readings.at(-1)?.at ?? "no reading"}`;
    return `${kind.quantity}: ${inBase.length} readings in the base period (the log runs from ${span}), ${FEWEST} are needed; not used`;
  }
  const afterBase = readings.filter((each) => !isInBase(each) && each.at > base.from);
  const baseWeight = inBase.reduce((sum, { weight }) => sum + weight, 0);
  const mean = inBase.reduce((sum, { weight, value }) => sum + weight * value, 0) / baseWeight;
  if (kind.relative && !(mean > 0)) {
    const advice = "write numbers greater than 0; changes are told as shares of the mean";
    throw new InputError(where, `mean of ${kind.quantity}`, mean, advice);
  }
  const unit = kind.relative ? mean / 100 : 1;
  const [wander, scale] = kind.relative
    ? [100 * kind.wander, 100 * kind.scale]
    : [kind.wander, kind.scale];
  const squares = inBase.reduce(
    (sum, { weight, value }) => sum + weight * ((value - mean) / unit) ** 2,
    0,
  );
  const variance =
    (squares + PRIOR_READINGS * wander * wander) / (inBase.length - 1 + PRIOR_READINGS);
  return {
    kind: "readings",
    log: kind.id,
    check: kind.check,
    quantity: kind.quantity,
    unit: kind.unit,
    readings: afterBase.map(({ at, value, weight }) => ({
      at,
      change: (value - mean) / unit,
      weight,
    })),
    sd: Math.sqrt(variance),
    baseWeight,
    wander,
    scale,
    ...(kind.above === undefined ? {} : { above: kind.above }),
    within: kind.within,
    ...(kind.below === undefined ? {} : { below: kind.below }),
    logError: LOG_ERROR,
  };
}
