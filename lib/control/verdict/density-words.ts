import type { ProcessLimit } from "../process/process-limits.ts";
import type { Colour } from "../strip.ts";

/** A signed density as the trade writes it: `+0.08`, `−0.125`, `0.00`. */
export function signed(density: number): string {
  const size = Math.abs(density)
    .toFixed(4)
    .replace(/0{1,2}$/, "");
  const sign = density > 0 ? "+" : density < 0 ? "−" : "";
  return `${sign}${size}`;
}

/** The side of a limit on which a deviation lies, with the limit: `above the control limit of +0.08`. */
export function beyondWords(deviation: number, limit: ProcessLimit, name: string): string {
  const above = limit.upper !== null && deviation > limit.upper;
  const bound = above ? limit.upper : limit.lower;
  return `${above ? "above" : "below"} the ${name} limit of ${signed(bound ?? 0)}`;
}

/** A parameter with its colour: `LD (speed) red`. */
export function seriesName(name: string, colour: Colour | null): string {
  return colour === null ? name : `${name} ${colour}`;
}
