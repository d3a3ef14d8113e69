import { requireNumber, requireObject } from "../../input/index.ts";
import { prespecifiedLimits } from "../charts/prespecified-limits.ts";
import type { StatisticalLimits } from "../charts/statistical-limits.ts";
import type { Ar1Model } from "./ar1-model.ts";

/** Limits for readings that remember the one before, with what they cost. */
export interface CorrelatedLimits {
  /** For the individuals chart: centre ± width · σ of the readings. */
  readonly individuals: StatisticalLimits;
  /** Standard deviation to give to `ewmaChart` so that its asymptotic limits hold. */
  readonly ewmaSigma: number;
  readonly ewmaLambda: number;
  /** By how much the short-term sigma of moving ranges understates σ of the readings. */
  readonly movingRangeUnderstates: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * Limits widened for readings that follow an AR(1) model.
 *
 * Individuals: `μ ± L·σ_x` with `σ_x = σ_e/√(1 − φ²)`; moving ranges would give only
 * `σ_x·√(1 − φ)`. EWMA: its variance is `σ_x²·λ/(2−λ)·(1 + φ(1−λ))/(1 − φ(1−λ))`, so sigma is
 * multiplied by the square root of the last factor.
 *
 * @param model from `fitAr1`
 * @param options `widthSigma` (default 3) of the individuals chart, `lambda` of the EWMA (default 0.2)
 * @returns limits of the individuals chart and the sigma for an EWMA chart, in the unit of the model
 * @throws InputError for a width of 0 or less, λ outside (0, 1], or |φ| of 1 or more
 *
 * @example
 * const model = { mean: 0, phi: 0.6, innovationSd: 0.8 };
 * correlatedLimits(model).individuals.upperLimit // => 3
 *
 * Source: A. V. Vasilopoulos and A. P. Stamboulis, Journal of Quality Technology 10 (1978) 20–30;
 * W. Schmid, Metrika 44 (1997) (EWMA of an AR(1) process, from memory).
 */
export function correlatedLimits(
  model: Pick<Ar1Model, "mean" | "phi" | "innovationSd">,
  options: { readonly widthSigma?: number; readonly lambda?: number } = {},
): CorrelatedLimits {
  const where = "correlatedLimits";
  requireObject(where, "model", model, "an object with mean, phi and innovationSd");
  const phi = requireNumber(where, "model.phi", model.phi, { above: -1, below: 1 });
  const innovationSd = requireNumber(where, "model.innovationSd", model.innovationSd, { above: 0 });
  const widthSigma = requireNumber(where, "widthSigma", options.widthSigma ?? 3, { above: 0 });
  const lambda = requireNumber(where, "lambda", options.lambda ?? 0.2, { above: 0, max: 1 });
  const sigma = innovationSd / Math.sqrt(1 - phi * phi);
  const carried = phi * (1 - lambda);
  return {
    individuals: prespecifiedLimits({ centre: model.mean, sigma, widthSigma }),
    ewmaSigma: sigma * Math.sqrt((1 + carried) / (1 - carried)),
    ewmaLambda: lambda,
    movingRangeUnderstates: Math.sqrt(1 - phi),
    assumptions: [
      "readings follow the AR(1) model of the base period",
      "false alarms still come in clusters: the limits hold the share of readings beyond, not the run length, which for positive φ is longer than the tables of independent readings say",
    ],
    warnings:
      phi > 0.5
        ? [
            "with φ above 0.5 wide limits see little; chart the innovations beside them (ar1Innovations)",
          ]
        : [],
  };
}
