import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { findRoot } from "../../numerics/index.ts";
import { type FilmWash, washByChanges, washByFlow } from "./wash-film.ts";
import { washRules } from "./wash-rules.ts";

/** How far below the limit to wash unless said otherwise: to a half of it. */
const MARGIN = 2;
const MOST_CHANGES = 40;
const LONGEST_MIN = 600;

/**
 * How many changes of water bring film below the limit of residual thiosulfate.
 *
 * @param wash film, water and fixer
 * @param options.minutesEach how long each change stands, min; default 3
 * @param options.margin wash down to the limit divided by this, 1 or more; default 2
 * @returns whole number of changes, 1 to 40
 * @throws InputError if 40 changes would not do, or for values out of range
 *
 * @example
 * washChangesNeeded({ areaM2: 0.1134, waterMl: 600, temperatureC: 20 }) // => 4
 *
 * Source: washByChanges; change every three minutes US Army, subcourse SS0509-8, p. 24.
 */
export function washChangesNeeded(
  wash: FilmWash,
  options: { readonly minutesEach?: number; readonly margin?: number } = {},
): number {
  const where = "washChangesNeeded";
  requireObject(where, "wash", wash, "an object with areaM2 and waterMl");
  const each = options.minutesEach ?? washRules.changeEveryMin.minutes;
  requireNumber(where, "minutesEach", each, { above: 0, unit: "min" });
  const margin = requireNumber(where, "margin", options.margin ?? MARGIN, { min: 1 });
  const changes = new Array<number>(MOST_CHANGES).fill(each);
  const { residualGPerM2, limitGPerM2 } = washByChanges(wash, changes);
  const needed = residualGPerM2.findIndex((left, i) => i > 0 && left <= limitGPerM2 / margin);
  if (needed > 0) return needed;
  const advice = `write longer changes or more water: ${MOST_CHANGES} changes would leave ${residualGPerM2.at(-1)?.toPrecision(2)} g/m²`;
  throw new InputError(where, "minutesEach", each, advice);
}

/**
 * How long a flow of water must run to bring film below the limit of residual thiosulfate.
 *
 * @param wash film, tank and fixer
 * @param options.mlPerMin water through the tank, mL/min
 * @param options.margin wash down to the limit divided by this, 1 or more; default 2
 * @returns minutes
 * @throws InputError if ten hours would not do, or for values out of range
 *
 * @example
 * washMinutesNeeded({ areaM2: 0.1134, waterMl: 600 }, { mlPerMin: 1500 }) // => 10.28353
 *
 * Source: washByFlow.
 */
export function washMinutesNeeded(
  wash: FilmWash,
  options: { readonly mlPerMin: number; readonly margin?: number },
): number {
  const where = "washMinutesNeeded";
  requireObject(where, "wash", wash, "an object with areaM2 and waterMl");
  requireObject(where, "options", options, "an object with mlPerMin");
  const margin = requireNumber(where, "margin", options.margin ?? MARGIN, { min: 1 });
  const { mlPerMin } = options;
  const target = washRules.thiosulfateLimit.gPerM2 / margin;
  const excess = (minutes: number) =>
    (washByFlow(wash, { mlPerMin, minutes }).residualGPerM2[1] ?? 0) - target;
  const shortest = 1e-3;
  if (excess(shortest) <= 0) return shortest;
  if (excess(LONGEST_MIN) > 0) {
    const advice = "write more water: ten hours of this flow would not reach the limit";
    throw new InputError(where, "mlPerMin", mlPerMin, advice);
  }
  return findRoot(excess, { lower: shortest, upper: LONGEST_MIN, tolerance: 1e-6 });
}
