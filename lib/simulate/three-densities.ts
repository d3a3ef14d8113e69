import type { Densities } from "../control/index.ts";
import type { ThreeDensities } from "./density-response.ts";

/** Red, green, blue in a row as the named densities of a patch. */
export function densities([red, green, blue]: ThreeDensities): Densities {
  return { red, green, blue };
}

/** The densities of a patch in a row. */
export function inARow({ red, green, blue }: Densities): ThreeDensities {
  return [red, green, blue];
}
