import type { ProcessLimit, ProcessLimits } from "../process/process-limits.ts";
import type { Colour } from "../strip.ts";
import { isBeyondLimit } from "./limit-level.ts";

/** A limit as it was written, to two decimals or more: `+0.08`, `−0.125`, `0.00`. */
export function limitText(density: number): string {
  const size = Math.abs(density)
    .toFixed(4)
    .replace(/0{1,2}$/, "");
  return `${signOf(density)}${size}`;
}

/**
 * A deviation to the decimals its strip was read to: `−0.073`. Aims of a crossover are means and finer
 * than a reading, and so are deviations from them. A decimal more is printed only where rounding would
 * put the deviation on the wrong side of a limit: −0.0602 against −0.06.
 */
export function deviationText(deviation: number, decimals: number, limits: ProcessLimits): string {
  const told = (digits: number) => Number(deviation.toFixed(digits));
  const judged = ({ action, control }: ProcessLimits, value: number) =>
    [isBeyondLimit(value, action), isBeyondLimit(value, control)].join();
  const right = judged(limits, deviation);
  let digits = decimals;
  while (digits < 9 && judged(limits, told(digits)) !== right) digits++;
  return `${signOf(told(digits))}${Math.abs(deviation).toFixed(digits)}`;
}

/** The side of a limit on which a deviation lies, with the limit: `above the control limit of +0.08`. */
export function beyondWords(deviation: number, limit: ProcessLimit, name: string): string {
  const above = limit.upper !== null && deviation > limit.upper;
  const bound = above ? limit.upper : limit.lower;
  return `${above ? "above" : "below"} the ${name} limit of ${limitText(bound ?? 0)}`;
}

/** A parameter with its colour: `LD (speed) red`. */
export function seriesName(name: string, colour: Colour | null): string {
  return colour === null ? name : `${name} ${colour}`;
}

function signOf(value: number): string {
  return value > 0 ? "+" : value < 0 ? "−" : "";
}
