import { requireNumber } from "../../input/index.ts";

/**
 * The pair of small whole numbers whose ratio is closest to a given one, as rules for the bench are
 * written.
 *
 * @param ratio first to second, above 0
 * @param largest largest whole number allowed, default 12, at most 1000
 * @returns [first, second] in lowest terms; a ratio beyond `largest` gives the closest end
 * @throws InputError for a ratio that is not positive
 *
 * @example
 * wholeParts(0.3724) // => [3, 8]
 */
export function wholeParts(ratio: number, largest = 12): readonly [number, number] {
  const wanted = requireNumber("wholeParts", "ratio", ratio, { above: 0 });
  const most = requireNumber("wholeParts", "largest", largest, { min: 1, max: 1000, whole: true });
  let best: readonly [number, number] = [1, 1];
  let bestDistance = Number.POSITIVE_INFINITY;
  for (let second = 1; second <= most; second++) {
    const first = Math.min(most, Math.max(1, Math.round(wanted * second)));
    // Distance as a ratio, so that 1:2 and 2:1 are treated alike.
    const distance = Math.abs(Math.log(first / second / wanted));
    if (distance < bestDistance - 1e-12) {
      best = [first, second];
      bestDistance = distance;
    }
  }
  return best;
}
