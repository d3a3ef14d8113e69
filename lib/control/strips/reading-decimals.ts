import type { Strip } from "../strip.ts";

/** How many of the latest strips are looked at. */
const LOOKED_AT = 20;
/** A density this near to whole hundredths was read to hundredths. */
const HAIR = 1e-6;

/**
 * Decimals to which densities were read: 3 if any of the latest strips has a third one, else 2. A
 * file does not say 0.260 from 0.26, so one strip alone could mislead.
 */
export function readingDecimals(strips: readonly Strip[], rows: readonly number[]): 2 | 3 {
  for (const row of rows.slice(-LOOKED_AT)) {
    for (const densities of Object.values(strips[row]?.patches ?? {})) {
      const { red, green, blue } = densities;
      for (const d of [red, green, blue]) {
        if (Math.abs(d * 100 - Math.round(d * 100)) > HAIR) return 3;
      }
    }
  }
  return 2;
}
