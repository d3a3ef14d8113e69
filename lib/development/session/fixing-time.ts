import { requireNumber, requireObject } from "../../input/index.ts";
import { coldFixerFactor } from "./wash-factors.ts";
import { washRules } from "./wash-rules.ts";

/** What is known of a fixer. */
export interface FixerState {
  /** Time in which a scrap of film cleared in the fixer when it was fresh, s. */
  readonly clearingTimeFreshS: number;
  /** Time in which it clears today, s; default as fresh. */
  readonly clearingTimeNowS?: number;
  /** Temperature of the fixer when today's test was made, °C; default `temperatureC`. */
  readonly testedAtC?: number;
  /** Temperature of the fixer during fixing, °C; default 20. */
  readonly temperatureC?: number;
  /** Films rich in iodide (tabular grain): three times the clearing time instead of twice. */
  readonly modernFilm?: boolean;
}

/** How long to fix, and how much life the fixer has left. */
export interface FixingTime {
  readonly fixS: number;
  readonly clearingTimeS: number;
  /** 2, or 3 for modern films. */
  readonly multiple: number;
  /** Share of the fixer's life that is spent: 0 fresh, 1 when the clearing time has doubled. */
  readonly spent: number;
  readonly exhausted: boolean;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * Fixing time from the clearing time: twice it, or three times for films rich in iodide. The fixer
 * is used up when the clearing time has doubled.
 *
 * fix = multiple · clearing time; in a colder bath than tested the time doubles for every 10 °C
 * below 20 °C
 *
 * @param fixer clearing times in seconds, temperatures in °C (0 to 45)
 * @returns seconds, the share of the fixer's life that is spent, warnings
 * @throws InputError for a time that is not positive, today's shorter than half the fresh one, or a
 *   temperature out of range
 *
 * @example
 * fixingTime({ clearingTimeFreshS: 60, clearingTimeNowS: 75 }).fixS // => 150
 *
 * Source: US Navy, Photography (Basic), NAVEDTRA 14209, ch. 10, life of a fixing bath; temperature
 * US Army TM 11-2323, para. 33c; three times: common practice.
 */
export function fixingTime(fixer: FixerState): FixingTime {
  const where = "fixingTime";
  requireObject(where, "fixer", fixer, "an object with clearingTimeFreshS");
  const bounds = { above: 0, max: 3600, unit: "s" };
  const fresh = requireNumber(where, "clearingTimeFreshS", fixer.clearingTimeFreshS, bounds);
  const now = requireNumber(where, "clearingTimeNowS", fixer.clearingTimeNowS ?? fresh, {
    ...bounds,
    min: fresh / 2,
    hint: "a test much faster than in fresh fixer was made warmer, or with another film",
  });
  const temperature = fixer.temperatureC ?? fixer.testedAtC ?? 20;
  const colder = coldFixerFactor(temperature) / coldFixerFactor(fixer.testedAtC ?? temperature);
  const { ordinaryMultiple, modernMultiple, exhaustedAt } = washRules.fixing;
  const multiple = fixer.modernFilm ? modernMultiple : ordinaryMultiple;
  const spent = Math.max(0, (now - fresh) / (fresh * (exhaustedAt - 1)));
  const exhausted = now >= exhaustedAt * fresh;
  const clearingTimeS = now * colder;
  return {
    fixS: multiple * clearingTimeS,
    clearingTimeS,
    multiple,
    spent,
    exhausted,
    assumptions: [
      `fix for ${multiple} times the clearing time; clear a scrap of the same kind of film before each batch`,
      ...(colder === 1 ? [] : ["fixing time doubles for every 10 °C below 20 °C"]),
    ],
    warnings: exhausted
      ? [
          "the clearing time has doubled: this fixer is used up; mix fresh and keep the old for silver recovery or licensed disposal",
        ]
      : spent > 0.75
        ? ["the fixer nears its end: the clearing time has almost doubled"]
        : [],
  };
}
