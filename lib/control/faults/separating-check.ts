import { InputError, requireNumber } from "../../input/index.ts";
import { type FaultCheck, faultChecks, outcomeProbabilities } from "./fault-check.ts";

/** A fault, or `"none-of-these"`, `"nothing-wrong"`, with its probability. */
export interface FaultHypothesis {
  readonly id: string;
  readonly name: string;
  readonly probability: number;
}

/** The check that tells most, and what its outcomes would mean. */
export interface SeparatingCheck {
  readonly id: string;
  readonly name: string;
  readonly tool: string;
  readonly minutes: number;
  /** The two it separates. */
  readonly between: readonly [string, string];
  /** Information expected about which of the two it is, bits (1 would settle even odds). */
  readonly bits: number;
  /** Information expected about all hypotheses, bits. */
  readonly bitsOverall: number;
  readonly outcomes: readonly {
    readonly outcome: string;
    /** Probability of this outcome as things stand. */
    readonly probability: number;
    /** The most likely hypothesis after it, with its probability. */
    readonly pointsTo: string;
    readonly pointsToProbability: number;
  }[];
}

/** Checks that tell less about the leading two than this are not proposed, bits. */
const LEAST_BITS = 0.02;

/**
 * The one check that best separates the two most likely hypotheses.
 *
 * For each check the expected information `I = Σ_o Σ_h p(h) p(o|h) log2(p(o|h)/p(o))` about the two,
 * counted as if they were alone; ties (within 0.01 bit) go to the check that tells more about all
 * hypotheses, then to the quicker one.
 *
 * @param hypotheses with probabilities from 0 to 1, at least two
 * @param checks default: the checks that come with the library
 * @returns the check with its outcomes and what each would mean; `null` if none separates the two
 * @throws InputError for fewer than two hypotheses or a probability out of range
 *
 * @example
 * const warm = { id: "developer-too-warm", name: "developer too warm", probability: 0.5 };
 * const long = { id: "developer-too-long", name: "developer time too long", probability: 0.5 };
 * separatingCheck([warm, long])?.id // => "stopwatch"
 *
 * Source: D. V. Lindley, Annals of Mathematical Statistics 27 (1956) 986–1005.
 */
export function separatingCheck(
  hypotheses: readonly FaultHypothesis[],
  checks: readonly FaultCheck[] = faultChecks,
): SeparatingCheck | null {
  const where = "separatingCheck";
  if (!Array.isArray(hypotheses) || hypotheses.length < 2) {
    throw new InputError(where, "hypotheses", hypotheses, "write at least two");
  }
  for (const { id, probability } of hypotheses) {
    requireNumber(where, `probability of ${id}`, probability, { min: 0, max: 1 });
  }
  const ordered = [...hypotheses].sort((a, b) => b.probability - a.probability);
  const [first, second] = ordered;
  if (first === undefined || second === undefined) return null;
  let best: { check: FaultCheck; bits: number; overall: number } | undefined;
  for (const check of checks) {
    const bits = information(check, [first, second]);
    const overall = information(check, ordered);
    if (bits < LEAST_BITS) continue;
    const better =
      best === undefined ||
      bits > best.bits + 0.01 ||
      (bits > best.bits - 0.01 &&
        (overall > best.overall + 0.01 ||
          (overall > best.overall - 0.01 && check.minutes < best.check.minutes)));
    if (better) best = { check, bits, overall };
  }
  if (best === undefined) return null;
  const { id, name, tool, minutes } = best.check;
  return {
    id,
    name,
    tool,
    minutes,
    between: [first.name, second.name],
    bits: best.bits,
    bitsOverall: best.overall,
    outcomes: outcomesOf(best.check, ordered),
  };
}

function outcomesOf(check: FaultCheck, hypotheses: readonly FaultHypothesis[]) {
  const total = hypotheses.reduce((sum, { probability }) => sum + probability, 0) || 1;
  return check.outcomes.map((outcome, o) => {
    const joint = hypotheses.map(
      ({ id, probability }) => (probability / total) * (outcomeProbabilities(check, id)[o] ?? 0),
    );
    const probability = joint.reduce((sum, p) => sum + p, 0);
    const at = joint.indexOf(Math.max(...joint));
    const after = probability > 0 ? (joint[at] ?? 0) / probability : 0;
    const pointsTo = hypotheses[at]?.name ?? "";
    return { outcome, probability, pointsTo, pointsToProbability: after };
  });
}

/** Expected information of a check about hypotheses, bits. */
function information(check: FaultCheck, hypotheses: readonly FaultHypothesis[]): number {
  const total = hypotheses.reduce((sum, { probability }) => sum + probability, 0);
  if (!(total > 0)) return 0;
  const likely = hypotheses.map(({ id }) => outcomeProbabilities(check, id));
  let bits = 0;
  check.outcomes.forEach((_, o) => {
    const overall = hypotheses.reduce(
      (sum, { probability }, h) => sum + (probability / total) * (likely[h]?.[o] ?? 0),
      0,
    );
    hypotheses.forEach(({ probability }, h) => {
      const p = likely[h]?.[o] ?? 0;
      if (p > 0 && probability > 0) bits += (probability / total) * p * Math.log2(p / overall);
    });
  });
  return bits;
}
