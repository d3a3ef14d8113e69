import { requireNumber, requireObject } from "../../input/index.ts";
import type { RandomStream } from "../../numerics/index.ts";
import type { RateChange } from "./rate-change-result.ts";
import { type TuningSeries, weightedSeries } from "./strip-series.ts";
import { rateAnswer } from "./tank-answer.ts";

const MOST = 0.9;

/**
 * The share of the strips' variance that wanders slowly instead of from strip to strip: mixes of
 * replenisher that are a little strong or weak, a thermostat that drifts. The tank carries such things on
 * with e^−n, so strips that follow each other are not independent, and a test or interval made for
 * independent ones finds too much.
 *
 * white = ½·mean (rᵢ₊₁ − rᵢ)² of the residuals r about the fitted change; slow = variance − white, put up
 * for what the fit itself took away: tr(PR)/m with R = e^−|nᵢ−nⱼ| and P the projection on the fit.
 *
 * @param series as given to `rateChange`
 * @param change what `rateChange` found for it
 * @returns a fraction, 0 (independent strips) to 0.9; `slowShare` of `rateChange` and `rateAlarm`
 * @throws InputError if the series is too short or its parts do not fit together
 *
 * @example
 * const turnovers = Array.from({ length: 40 }, (_, i) => i * 0.1);
 * const deviations = turnovers.map((_, i) => [0.004 * (i % 2 === 0 ? 1 : -1)]);
 * const series = { turnovers, deviations, sensitivity: [0.4], noise: [[0.0001]] };
 * slowShareOfNoise(series, rateChange(series)) // => 0
 *
 * Source: J. von Neumann et al., Annals of Mathematical Statistics 12 (1941) 153–162; the rest derived.
 */
export function slowShareOfNoise(series: TuningSeries, change: RateChange): number {
  requireObject("slowShareOfNoise", "change", change, "an object with finding, reason, error, …");
  const { turnovers, z } = weightedSeries("slowShareOfNoise", series);
  const m = requireNumber("slowShareOfNoise", "number of strips", z.length, { min: 10 });
  const g = turnovers.map((n) => rateAnswer(change.error, n - change.changeAtTurnovers));
  const mean = (list: readonly number[]) => list.reduce((sum, each) => sum + each, 0) / m;
  const gMean = mean(g);
  const h = g.map((each) => each - gMean);
  const raw = z.map((each, i) => each - (g[i] ?? 0));
  const level = mean(raw);
  const r = raw.map((each) => each - level);
  const variance = r.reduce((sum, each) => sum + each * each, 0) / Math.max(1, m - 3);
  let white = 0;
  for (let i = 1; i < m; i++) white += ((r[i] ?? 0) - (r[i - 1] ?? 0)) ** 2 / (2 * (m - 1));
  const hh = h.reduce((sum, each) => sum + each * each, 0);
  let [constant, along] = [0, 0];
  for (let i = 0; i < m; i++) {
    for (let j = 0; j < m; j++) {
      const carried = Math.exp(-Math.abs((turnovers[i] ?? 0) - (turnovers[j] ?? 0)));
      constant += carried / m;
      along += hh > 0 ? (carried * (h[i] ?? 0) * (h[j] ?? 0)) / hh : 0;
    }
  }
  const left = Math.max(0.2, 1 - (constant + along) / m);
  const slow = Math.max(0, variance - white) / left;
  return slow === 0 ? 0 : Math.min(MOST, slow / (slow + white));
}

/** Fills `z` with noise of standard deviation 1, a share of its variance carried on by the tank. */
export function fillNoise(
  z: Float64Array,
  turnovers: readonly number[],
  slowShare: number,
  normal: RandomStream["normal"],
): void {
  const n = turnovers.length;
  if (slowShare === 0) {
    for (let i = 0; i < n; i++) z[i] = normal();
    return;
  }
  const [white, slow] = [Math.sqrt(1 - slowShare), Math.sqrt(slowShare)];
  let carried = normal();
  for (let i = 0; i < n; i++) {
    if (i > 0) {
      const phi = Math.exp((turnovers[i - 1] ?? 0) - (turnovers[i] ?? 0));
      carried = phi * carried + Math.sqrt(1 - phi * phi) * normal();
    }
    z[i] = white * normal() + slow * carried;
  }
}

/** `slowShare` as an option, checked. */
export function requireSlowShare(where: string, slowShare: number | undefined): number {
  return requireNumber(where, "slowShare", slowShare ?? 0, { min: 0, max: MOST });
}
