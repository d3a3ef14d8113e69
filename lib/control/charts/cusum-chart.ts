import { requireNumber, requireObject, requireOneOf } from "../../input/index.ts";
import type { CusumChart, CusumSignal } from "./chart-results.ts";
import { strictlyBeyond } from "./on-the-line.ts";
import { type Readings, requireReadings, restartLookup } from "./readings.ts";

/** Options of `cusumChart`. */
export interface CusumOptions {
  /** Where the process should stand, in the unit of the readings. */
  readonly target: number;
  /** Standard deviation of one reading, above 0. Write 1 to give k and h in the readings' unit. */
  readonly sigma: number;
  /** Reference value k in sigma: half the shift worth catching. Default 0.5. */
  readonly k?: number;
  /** Decision interval h in sigma. Default 5. */
  readonly h?: number;
  /** Head start as a share of h, from 0 (none, default) to below 1; 0.5 is customary. */
  readonly headStart?: number;
  /**
   * After a signal let the sum stand (`"carry on"`, default), put it back to the start
   * (`"start again"`), or put it back once the shift is over: once the sum has fallen from its highest
   * by more than the decision interval (`"start again once over"`).
   */
  readonly afterSignal?: "carry on" | "start again" | "start again once over";
  /** Positions at which both sums start afresh. */
  readonly restartAt?: readonly number[];
}

/**
 * Tabular CUSUM, both sides: adds up what lies beyond the reference value until it is too much.
 *
 * `C⁺(i) = max(0, x(i) − (T + kσ) + C⁺(i−1))`, `C⁻(i) = max(0, (T − kσ) − x(i) + C⁻(i−1))`; a signal
 * when a sum is strictly greater than hσ. A signal is listed once for each excursion of a sum from
 * zero; `beyond` lists every reading at which a sum stands beyond. A sum that carries on stands beyond
 * long after a large shift was mended; `"start again once over"` ends the episode on the same evidence
 * that began it, hσ of readings on the other side of the reference value.
 *
 * @param values readings in the order of time, at least one
 * @param options target and sigma; k (0.5), h (5), head start (0)
 * @returns both sums in the unit of the readings, positions beyond, signals with the readings since
 * the sum last stood at zero (the likely start of the shift)
 * @throws InputError if an option is out of range or a reading is not finite
 *
 * @example
 * cusumChart([0, 1, 2, 2, 3], { target: 0, sigma: 1, k: 0.5, h: 4 }).upperSums // => [0, 0.5, 2, 3.5, 6]
 *
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.3; head start: J. M. Lucas and
 * R. B. Crosier, Technometrics 24 (1982) 199–205; sums put back once the cause is mended: common
 * practice, no source.
 */
export function cusumChart(values: Readings, options: CusumOptions): CusumChart {
  const where = "cusumChart";
  requireObject(where, "options", options, "an object with target and sigma");
  requireReadings(where, "values", values, 1);
  const target = requireNumber(where, "target", options.target);
  const sigma = requireNumber(where, "sigma", options.sigma, { above: 0 });
  const k = requireNumber(where, "k", options.k ?? 0.5, { min: 0 });
  const h = requireNumber(where, "h", options.h ?? 5, { above: 0 });
  const share = requireNumber(where, "headStart", options.headStart ?? 0, { min: 0, below: 1 });
  const after = requireOneOf(where, "afterSignal", options.afterSignal ?? "carry on", [
    "carry on",
    "start again",
    "start again once over",
  ]);
  const restart = restartLookup(where, options.restartAt, values.length);

  const start = share * h * sigma;
  const limit = { decision: h * sigma, sigma, start, restart, after };
  const upper = accumulate(values, "above", (x) => x - (target + k * sigma), limit);
  const lower = accumulate(values, "below", (x) => target - k * sigma - x, limit);
  const beyond: number[] = [];
  for (let i = 0; i < values.length; i++)
    if (upper.isBeyond[i] || lower.isBeyond[i]) beyond.push(i);
  return {
    kind: "CUSUM chart",
    target,
    allowance: k * sigma,
    decisionInterval: h * sigma,
    headStart: start,
    upperSums: upper.sums,
    lowerSums: lower.sums,
    beyond,
    signals: [...upper.signals, ...lower.signals].sort((a, b) => a.at - b.at),
    assumptions: ["readings vary independently about the target while the process is in control"],
  };
}

interface OneSide {
  readonly sums: number[];
  readonly isBeyond: Uint8Array;
  readonly signals: CusumSignal[];
}

/** One side's sums; a signal at the first passage of the decision interval since the last zero. */
function accumulate(
  values: Readings,
  side: "above" | "below",
  step: (x: number) => number,
  limit: {
    readonly decision: number;
    readonly sigma: number;
    readonly start: number;
    readonly restart: Uint8Array | undefined;
    readonly after: NonNullable<CusumOptions["afterSignal"]>;
  },
): OneSide {
  const { decision, sigma, start, restart, after } = limit;
  const n = values.length;
  const found: OneSide = { sums: new Array<number>(n), isBeyond: new Uint8Array(n), signals: [] };
  let sum = start;
  let since = 0;
  let told = false;
  let highest = 0;
  const begin = (from: number) => {
    sum = start;
    since = from;
    told = false;
    highest = 0;
  };
  for (let i = 0; i < n; i++) {
    if (restart !== undefined && restart[i] === 1) begin(i);
    sum = Math.max(0, sum + step(values[i] ?? 0));
    if (sum > highest) highest = sum;
    const fallen = (highest - sum) / sigma;
    if (told && after === "start again once over" && strictlyBeyond(fallen, decision / sigma)) {
      begin(i + 1);
    }
    found.sums[i] = sum;
    if (sum === 0) {
      begin(i + 1);
      sum = 0;
    } else if (strictlyBeyond(sum / sigma, decision / sigma)) {
      found.isBeyond[i] = 1;
      if (!told) found.signals.push(signal(i, since, side));
      told = true;
      if (after === "start again") begin(i + 1);
    }
  }
  return found;
}

function signal(at: number, since: number, side: "above" | "below"): CusumSignal {
  const rows = Array.from({ length: at - since + 1 }, (_, j) => since + j);
  const many = rows.length === 1 ? "1 reading" : `${rows.length} readings`;
  return {
    at,
    side,
    rows,
    sentence: `the CUSUM of readings ${side} target passed its decision interval; the shift has built up over ${many}`,
  };
}
