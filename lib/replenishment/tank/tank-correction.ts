import { InputError, requireNumber, requireObject, requireOneOf } from "../../input/index.ts";
import { cautionsFor, strengthAfterAdditions } from "../../solutions/index.ts";
import { requireLitres } from "../require-litres.ts";
import { requireVolume } from "../require-volume.ts";

/** One step at the tank. */
export interface CorrectionStep {
  /** What is poured in: "water", "replenisher", "starter" or a name of your own. */
  readonly add: string;
  /** L, above 0, at most the tank. */
  readonly litres: number;
  /** What it contains, g/L by name; what is not named counts as 0 (water). */
  readonly gPerL?: Readonly<Record<string, number>>;
  /** `"dump first"`: as much is removed before; `"overflow"`: it runs over, mixed. */
  readonly how: "dump first" | "overflow";
  /** How often; a whole number from 1; default 1. */
  readonly times?: number;
}

/** A tank before and after a correction. */
export interface CorrectedTank {
  readonly components: readonly {
    readonly name: string;
    readonly beforeGPerL: number;
    readonly afterGPerL: number;
    /** After over before, minus 1; null if there was none before. */
    readonly change: number | null;
  }[];
  /** After each step, g/L by name. */
  readonly steps: readonly Readonly<Record<string, number>>[];
  /** What runs to the drain, L. */
  readonly drainedL: number;
  /** Share of the old bath that is still in the tank. */
  readonly keptShare: number;
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
}

/**
 * A correction step by step, by dumping and replacing or by overflowing with water, replenisher or
 * starter, with every concentration before and after.
 *
 * dump first: c ← (1 − f)·c + f·c_add; overflow: c ← (c + f·c_add)/(1 + f), f = added over tank
 *
 * @param bath.volumeL the full tank, L, above 0
 * @param bath.gPerL concentrations before, g/L by name, each at least 0
 * @param steps see {@link CorrectionStep}, in order
 * @returns before, after, after each step, and what went to the drain
 * @throws InputError for a name the bath does not have, or a number out of range
 *
 * @example
 * correctBath({ volumeL: 20, gPerL: { bromide: 1.4 } }, [{ add: "water", litres: 1, how: "overflow", times: 3 }]).components[0].change // => -0.1362
 *
 * Source: mass balance with additive volumes; additions of 5 % water as in Kodak publication CIS-254,
 * p. 6.
 */
export function correctBath(
  bath: { readonly volumeL: number; readonly gPerL: Readonly<Record<string, number>> },
  steps: readonly CorrectionStep[],
): CorrectedTank {
  const where = "correctBath";
  requireObject(where, "bath", bath, "an object with volumeL and gPerL");
  requireObject(where, "gPerL", bath.gPerL, "an object");
  const volume = requireLitres(where, "volumeL", bath.volumeL, bath);
  const names = Object.keys(bath.gPerL);
  for (const name of names) {
    requireNumber(where, `gPerL of ${name}`, bath.gPerL[name], { min: 0, max: 1e6, unit: "g/L" });
  }
  if (!Array.isArray(steps) || steps.length === 0) {
    const advice = 'write at least one step, like { add: "water", litres: 1, how: "dump first" }';
    throw new InputError(where, "steps", steps, advice);
  }
  const checked = steps.map((step, i) => checkedStep(where, step, i, volume, names));
  let now = bath.gPerL;
  let keptShare = 1;
  const after = checked.map(({ fraction, times, how, gPerL }) => {
    const added = { fraction, times, order: how };
    now = Object.fromEntries(
      names.map((name) => {
        const state = { strength: now[name] ?? 0, addStrength: gPerL[name] ?? 0 };
        return [name, strengthAfterAdditions({ ...state, ...added })];
      }),
    );
    keptShare = strengthAfterAdditions({ strength: keptShare, addStrength: 0, ...added });
    return now;
  });
  return {
    components: names.map((name) => {
      const [beforeGPerL, afterGPerL] = [bath.gPerL[name] ?? 0, now[name] ?? 0];
      const change = beforeGPerL > 0 ? afterGPerL / beforeGPerL - 1 : null;
      return { name, beforeGPerL, afterGPerL, change };
    }),
    steps: after,
    drainedL: checked.reduce((sum, { fraction, times }) => sum + fraction * times * volume, 0),
    keptShare,
    assumptions: [
      "Volumes are additive, the bath is mixed before any of it runs off.",
      "Run a strip before and after; a correction by numbers is checked by the process.",
    ],
    cautions: cautionsFor([...steps.map(({ add }) => add), ...names]),
  };
}

function checkedStep(
  where: string,
  step: CorrectionStep,
  i: number,
  volume: number,
  names: readonly string[],
) {
  const at = `steps[${i}]`;
  const litres = requireVolume(where, `${at}.litres`, step.litres, {
    above: 0,
    max: volume,
    unit: "L",
    hint: "no more than the tank holds",
  });
  const gPerL = step.gPerL ?? {};
  for (const [name, value] of Object.entries(gPerL)) {
    requireNumber(where, `${at}.gPerL of ${name}`, value, { min: 0, max: 1e6, unit: "g/L" });
    if (names.includes(name)) continue;
    const advice = `write one of ${names.map((each) => `"${each}"`).join(", ")}, or add it to the bath with 0`;
    throw new InputError(where, `${at}.gPerL`, name, advice);
  }
  return {
    fraction: litres / volume,
    times: requireNumber(where, `${at}.times`, step.times ?? 1, { min: 1, max: 1000, whole: true }),
    how: requireOneOf(where, `${at}.how`, step.how, ["dump first", "overflow"]),
    gPerL,
  };
}
