import { requireNumber } from "../input/index.ts";
import { requireKnownKeys } from "./known-keys.ts";
import { type StripNoise, usualStripNoise } from "./strip-densities.ts";

/** Lets the noise of strips in; what is left out is as usual. */
export function checkedNoise(where: string, given: Partial<StripNoise>): StripNoise {
  requireKnownKeys(where, "noise", given, Object.keys(usualStripNoise));
  const noise = { ...usualStripNoise, ...given };
  for (const [name, sd] of Object.entries(noise)) {
    requireNumber(where, `noise.${name}`, sd, {
      min: 0,
      max: 0.2,
      hint: "a standard deviation, in density",
    });
  }
  return noise;
}
