import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { normalQuantile } from "../../numerics/index.ts";
import { responseShare } from "./tank-answer.ts";

/** A deliberate change of rate to learn the sensitivity from. */
export interface StepTestPlan {
  readonly stepFraction: number;
  readonly stripsBefore: number;
  readonly stripsAfter: number;
  readonly turnoversAfter: number;
  /** Half-width of the sensitivity's interval that the plan is expected to give. */
  readonly expectedHalfWidth: number;
  /** Largest expected shift of the density at the end of the test, for a guessed sensitivity. */
  readonly expectedShift?: number;
  readonly assumptions: readonly string[];
}

const MOST_STRIPS = 2000;

/**
 * Plans a step test: how many strips before and after a step of the rate give the sensitivity with a
 * wanted interval. Half as many strips are read before the step as after it, but never fewer than 5.
 *
 * The half-width is z·σ / (|f/(1 + f)|·√Σ(g − ḡ)²), with g the share of the answer reached at each strip.
 *
 * @param wanted `halfWidth` of the interval (density per 100 % of rate), `noiseSd` of the channel
 *   between strips, `stepFraction` of the rate (at most ±30 %), `stripsPerTurnover`, and optionally
 *   `confidence` (default 0.95) and a guess of the `sensitivity` to foresee the shift
 * @returns the plan
 * @throws InputError if a number is out of range or 2,000 strips would not do
 *
 * @example
 * planStepTest({ halfWidth: 0.05, noiseSd: 0.01, stepFraction: 0.1, stripsPerTurnover: 10 }).stripsAfter // => 65
 *
 * Source: derived; variance of a least-squares slope.
 */
export function planStepTest(wanted: {
  readonly halfWidth: number;
  readonly noiseSd: number;
  readonly stepFraction: number;
  readonly stripsPerTurnover: number;
  readonly confidence?: number;
  readonly sensitivity?: number;
}): StepTestPlan {
  const where = "planStepTest";
  requireObject(where, "wanted", wanted, "an object with halfWidth, noiseSd, stepFraction, …");
  const halfWidth = requireNumber(where, "halfWidth", wanted.halfWidth, { above: 0 });
  const noiseSd = requireNumber(where, "noiseSd", wanted.noiseSd, { above: 0, unit: "density" });
  const step = requireNumber(where, "stepFraction", wanted.stepFraction, { min: -0.3, max: 0.3 });
  const perTurnover = requireNumber(where, "stripsPerTurnover", wanted.stripsPerTurnover, {
    above: 0,
  });
  const confidence = requireNumber(where, "confidence", wanted.confidence ?? 0.95, {
    min: 0.5,
    max: 0.999,
  });
  if (step === 0) throw new InputError(where, "stepFraction", 0, "write a step that is not 0");
  const reach = normalQuantile((1 + confidence) / 2) * noiseSd;
  const settled = step / (1 + step);
  const expected = (after: number) =>
    reach / (Math.abs(settled) * Math.sqrt(spread(after, perTurnover)));
  let after = 6;
  while (expected(after) > halfWidth) {
    after += 1;
    if (after > MOST_STRIPS) {
      throw new InputError(
        where,
        "halfWidth",
        halfWidth,
        "write a larger step or a wider interval",
      );
    }
  }
  return {
    stepFraction: step,
    stripsBefore: before(after),
    stripsAfter: after,
    turnoversAfter: after / perTurnover,
    expectedHalfWidth: expected(after),
    ...(wanted.sensitivity === undefined
      ? {}
      : { expectedShift: wanted.sensitivity * settled * responseShare(after / perTurnover) }),
    assumptions: [
      "Strips differ by independent noise; load, temperature and mixes stay as they are meanwhile.",
      "The step must keep every strip within the action limits; look at expectedShift first.",
    ],
  };
}

function before(after: number): number {
  return Math.max(5, Math.ceil(after / 2));
}

/** Σ(g − ḡ)² over the strips before and after. */
function spread(after: number, perTurnover: number): number {
  const shares = Array.from({ length: after }, (_, i) => responseShare((i + 1) / perTurnover));
  const n = after + before(after);
  const sum = shares.reduce((s, g) => s + g, 0);
  return shares.reduce((s, g) => s + g * g, 0) - (sum * sum) / n;
}
