import { requireNumber } from "../../input/index.ts";
import { requireSlowShare } from "./slow-noise.ts";

/** Choices of a test whose threshold comes from simulated unchanged series. */
export interface ChangeTestOptions {
  /** Share of unchanged lines that may be called changed, 0.001 to 0.5; default 0.05. */
  readonly falseAlarms?: number;
  /** Simulated series, 200 to 20,000; default 500. */
  readonly draws?: number;
  /** Seed of the simulation; default 1. */
  readonly seed?: number;
  /** Share of the noise that wanders slowly, 0 to 0.9; default 0. See `slowShareOfNoise`. */
  readonly slowShare?: number;
}

/** The choices, checked and with defaults. */
export function changeTestOptions(
  where: string,
  options: ChangeTestOptions,
): Required<ChangeTestOptions> {
  return {
    falseAlarms: requireNumber(where, "falseAlarms", options.falseAlarms ?? 0.05, {
      min: 0.001,
      max: 0.5,
    }),
    draws: requireNumber(where, "draws", options.draws ?? 500, {
      min: 200,
      max: 20_000,
      whole: true,
    }),
    seed: requireNumber(where, "seed", options.seed ?? 1, { whole: true }),
    slowShare: requireSlowShare(where, options.slowShare),
  };
}
