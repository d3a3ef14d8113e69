import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { ADDITIVE_VOLUMES } from "../dilution/dilute.ts";
import { requireVolumeMl } from "../dilution/require-volume.ts";

/** What to do to a tank, in order: first dump, then add. */
export interface TankCorrection {
  readonly action: "nothing" | "add" | "dump and add";
  readonly dumpMl: number;
  /** What is added: the corrector of that strength. */
  readonly addMl: number;
  readonly addStrength: number;
  readonly finalMl: number;
  readonly finalStrength: number;
  readonly assumptions: readonly string[];
}

/** A tank, what is in it, and where it shall go. */
export interface TankToCorrect {
  /** What the tank holds when full, mL. */
  readonly tankMl: number;
  /** What is in it now, mL; default a full tank. */
  readonly presentMl?: number;
  /** Strength now, any unit per volume. */
  readonly strength: number;
  /** Strength wanted in the same unit. */
  readonly target: number;
  /** Strength of what is added: 0 for water, the concentrate's own for concentrate. */
  readonly addStrength: number;
  /** Allow part of the bath to be dumped first; default false, then an overflow is refused. */
  readonly dump?: boolean;
}

/**
 * Brings a tank to a strength with water or concentrate, within its volume.
 *
 * Without dumping: x = V·(t − s) / (a − t). If V + x exceeds the tank, with dumping, to a full tank F:
 * x = F·(t − s) / (a − s), dump = V + x − F.
 *
 * @param tank see {@link TankToCorrect}; volumes in mL above 0, strengths at least 0
 * @returns what to dump and add, final volume (never above the tank's) and strength
 * @throws InputError if the corrector lies on the wrong side of the target, or if the correction would
 *   overfill and dumping is not allowed: the message says how much to dump first
 *
 * @example
 * correctTank({ tankMl: 10000, presentMl: 9000, strength: 1.05, target: 1, addStrength: 0 }).addMl // => 450
 * correctTank({ tankMl: 10000, strength: 1.05, target: 1, addStrength: 0, dump: true }).dumpMl // => 476.19
 *
 * Source: mass balance with additive volumes.
 */
export function correctTank(tank: TankToCorrect): TankCorrection {
  const where = "correctTank";
  requireObject(where, "tank", tank, "an object with tankMl, strength, target, …");
  const strengths = { min: 0, max: 1e12 };
  const full = requireVolumeMl(where, "tankMl", tank.tankMl);
  const present = requireNumber(where, "presentMl", tank.presentMl ?? full, {
    above: 0,
    max: full,
    unit: "mL",
    hint: "no more than the tank holds",
  });
  const s = requireNumber(where, "strength", tank.strength, strengths);
  const t = requireNumber(where, "target", tank.target, strengths);
  const a = requireNumber(where, "addStrength", tank.addStrength, strengths);
  if (s === t) return result("nothing", 0, 0, a, present, t);
  if (t > s ? a <= s || a < t : a >= s || a > t) throw wrongSide(s, t, a);
  const neededMl = a === t ? Number.POSITIVE_INFINITY : present * ((t - s) / (a - t));
  if (present + neededMl <= full) return result("add", 0, neededMl, a, present + neededMl, t);
  const addMl = full * ((t - s) / (a - s));
  const dumpMl = Math.min(present, Math.max(0, present + addMl - full));
  if (tank.dump !== true) {
    const advice = `it would overfill the tank; dump ${tidy(dumpMl)} mL first, then add ${tidy(addMl)} mL (write dump: true)`;
    throw new InputError(where, "dump", tank.dump, advice);
  }
  return result("dump and add", dumpMl, addMl, a, full, t);
}

function result(
  action: TankCorrection["action"],
  dumpMl: number,
  addMl: number,
  addStrength: number,
  finalMl: number,
  finalStrength: number,
): TankCorrection {
  const assumptions = [ADDITIVE_VOLUMES, "the bath is well mixed before any of it is dumped"];
  return { action, dumpMl, addMl, addStrength, finalMl, finalStrength, assumptions };
}

function wrongSide(s: number, t: number, a: number): InputError {
  const advice =
    t > s
      ? `write a corrector of at least ${t}, stronger than the ${s} in the tank`
      : `write a corrector of at most ${t}; 0 is water`;
  return new InputError("correctTank", "addStrength", a, advice);
}

function tidy(value: number): string {
  return String(Number(value.toPrecision(4)));
}
