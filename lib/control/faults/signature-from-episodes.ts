import { inverse, Matrix } from "ml-matrix";
import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { episodeSize } from "./episode-size.ts";
import { faultById } from "./fault-by-id.ts";
import { type FaultComponent, requireComponents } from "./fault-component.ts";
import type { FaultTable, WholeSignature } from "./fault-table.ts";
import { patternSignature } from "./pattern-signature.ts";

/** A past episode whose cause was found: the mean deviation of its strips. */
export interface FaultEpisode {
  /** Mean deviation in density, one for each component. */
  readonly deviation: readonly number[];
  /** Strips it is the mean of. Default 1. */
  readonly strips?: number;
}

/** A signature estimated from episodes. */
export interface EpisodeSignature {
  readonly fault: string;
  /** Mean and covariance at size 1, for `withSignature`. */
  readonly signature: WholeSignature;
  /** Fitted size of each episode, in multiples of the limit. */
  readonly sizes: readonly number[];
  /** Weight of the episodes against the table's signature, 0 to 1, over all components. */
  readonly weight: number;
  readonly warnings: readonly string[];
}

/** Episodes' worth of trust in the table's own scatter. */
const PRIOR_EPISODES = 4;

/**
 * Estimates a fault's signature from the lab's own labelled episodes, shrunk to the table's.
 *
 * Each episode is `y_e = a_e·(s + ε_e) + n_e`, ε_e ~ N(0, C), n_e ~ N(0, Σ/m_e). With the table's
 * shape s₀ and scatter C₀ as prior: sizes by generalised least squares, `z_e = y_e/a_e`, scatter
 * `C = (ν·C₀/2 + Σ(z_e − z̄)(z_e − z̄)ᵀ)/(ν + n − 1)` with ν = 4, and mean
 * `(C₀⁻¹ + n·C⁻¹)⁻¹(C₀⁻¹·s₀ + n·C⁻¹·z̄)`, repeated until the sizes settle. One episode moves the
 * signature a little, a dozen nearly replace it.
 *
 * @param input `table` and `fault` (id); `components` and `noise` (covariance of one strip, density²)
 * as in `faultEvidence`; `episodes`, at least one, of a fault with a direction
 * @returns the signature at size 1, sizes of the episodes, weight of the episodes, warnings where the
 * lab's direction goes against a published one
 * @throws InputError for an unknown fault, one that may go either way, no episode, or one that does
 * not show the fault (a size of 0 or below)
 *
 * @example
 * const components = (["red", "green", "blue"] as const).map((colour) => ({ parameter: "ld", name: "LD", colour, limit: 0.06 }));
 * const noise = [[1e-4, 0, 0], [0, 1e-4, 0], [0, 0, 1e-4]];
 * const episodes = [{ deviation: [0.05, 0.06, 0.1], strips: 4 }, { deviation: [0.1, 0.13, 0.2], strips: 4 }];
 * const own = signatureFromEpisodes({ table: colourNegativeFaults, fault: "developer-too-warm", components, noise, episodes });
 * own.signature.mean.map((v) => v.toFixed(3)) // => ["0.034", "0.041", "0.060"]
 *
 * Source: A. Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, 3.5–3.6 (normal mean, inverse Wishart).
 */
export function signatureFromEpisodes(input: {
  readonly table: FaultTable;
  readonly fault: string;
  readonly components: readonly FaultComponent[];
  readonly noise: readonly (readonly number[])[];
  readonly episodes: readonly FaultEpisode[];
}): EpisodeSignature {
  const where = "signatureFromEpisodes";
  requireObject(where, "input", input, "an object with table, fault, components, …");
  requireEntries(where, "episodes", input.episodes);
  requireEntries(where, "noise", input.noise);
  requireObject(where, "table", input.table, "an object with process, name, note, …");
  const { table, components, episodes } = input;
  const entry = faultById(table, input.fault);
  requireComponents(where, components);
  const pattern = table.patterns[entry.pattern];
  const p = components.length;
  if (pattern === undefined || Object.keys(pattern.shape).length === 0) {
    const advice = "it may go either way, so episodes have no common direction to learn";
    throw new InputError(where, "fault", entry.id, advice);
  }
  if (!(episodes?.length > 0)) {
    throw new InputError(where, "episodes", episodes, "write at least one { deviation, strips }");
  }
  for (const [i, { deviation, strips }] of episodes.entries()) {
    requireNumber(where, `episodes[${i}].deviation.length`, deviation.length, { min: p, max: p });
    requireNumber(where, `episodes[${i}].strips`, strips ?? 1, { min: 1 });
    for (const v of deviation)
      requireNumber(where, `episodes[${i}].deviation`, v, { min: -6, max: 6 });
  }
  const prior = patternSignature(pattern, table, components);
  const noise = new Matrix(input.noise.map((row) => [...row]));
  const priorPrecision = inverse(prior.covariance);
  const n = episodes.length;
  let mean = Matrix.columnVector([...prior.mean]);
  let scatter = prior.covariance;
  let sizes: number[] = [];
  let weight = 0;
  for (let round = 0; round < 20; round++) {
    sizes = episodes.map(({ deviation, strips }, i) =>
      episodeSize(where, i, deviation, mean, scatter, Matrix.div(noise, strips ?? 1)),
    );
    const scaled = episodes.map(({ deviation }, i) => deviation.map((v) => v / (sizes[i] ?? 1)));
    const Z = new Matrix(scaled);
    const average = Matrix.columnVector(Z.mean("column"));
    const centred = Z.clone().subRowVector(average.to1DArray());
    scatter = Matrix.mul(prior.covariance, PRIOR_EPISODES / 2)
      .add(centred.transpose().mmul(centred))
      .div(PRIOR_EPISODES + n - 1);
    const own = inverse(scatter).mul(n);
    const uncertainty = inverse(Matrix.add(priorPrecision, own));
    const gain = uncertainty.mmul(own);
    weight = gain.trace() / p;
    mean = gain
      .mmul(average)
      .add(uncertainty.mmul(priorPrecision).mmul(Matrix.columnVector([...prior.mean])));
    const largest = Math.max(...components.map(({ limit }, j) => Math.abs(mean.get(j, 0)) / limit));
    mean.div(largest);
  }
  const final = mean.to1DArray();
  return {
    fault: entry.id,
    signature: {
      components: components.map(({ parameter, colour }) => ({ parameter, colour })),
      mean: final,
      covariance: symmetric(scatter),
    },
    sizes,
    weight,
    warnings: againstPublished(pattern.published, components, final),
  };
}

function symmetric(matrix: Matrix): number[][] {
  return Matrix.add(matrix, matrix.transpose()).div(2).to2DArray();
}

function againstPublished(
  published: FaultTable["patterns"][string]["published"],
  components: readonly FaultComponent[],
  mean: readonly number[],
): readonly string[] {
  return published.flatMap(({ parameter, sign, source }) => {
    const values = mean.filter((_, j) => components[j]?.parameter === parameter);
    const sum = values.reduce((total, v) => total + v, 0);
    if (values.length === 0 || sum * (sign === "-" ? -1 : 1) >= 0) return [];
    return [
      `in these episodes ${parameter} goes against the published direction (${sign}, ${source})`,
    ];
  });
}
