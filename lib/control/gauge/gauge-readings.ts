import { InputError, requireNumber } from "../../input/index.ts";

/**
 * A crossed gauge study: every operator reads every patch as often. `readings[operator][patch]` is
 * the list of repeats.
 */
export type GaugeReadings = readonly (readonly (readonly number[])[])[];

/** How many of each a study has. */
export interface GaugeDesign {
  readonly operators: number;
  readonly patches: number;
  readonly repeats: number;
}

/** Checks that a study is complete and crossed: at least 2 operators, 2 patches and 2 repeats. */
export function gaugeDesign(where: string, readings: GaugeReadings): GaugeDesign {
  const operators = requireNumber(where, "number of operators", readings.length, { min: 2 });
  const patches = requireNumber(where, "number of patches", readings[0]?.length ?? 0, { min: 2 });
  const repeats = requireNumber(where, "number of repeats", readings[0]?.[0]?.length ?? 0, {
    min: 2,
  });
  readings.forEach((byPatch, o) => {
    if (byPatch.length !== patches) {
      throw new InputError(
        where,
        `readings[${o}]`,
        `${byPatch.length} patches`,
        `write ${patches}: every operator reads every patch`,
      );
    }
    byPatch.forEach((list, p) => {
      if (list.length !== repeats) {
        throw new InputError(
          where,
          `readings[${o}][${p}]`,
          `${list.length} repeats`,
          `write ${repeats}: every patch is read as often`,
        );
      }
      list.forEach((value, r) => {
        requireNumber(where, `readings[${o}][${p}][${r}]`, value);
      });
    });
  });
  return { operators, patches, repeats };
}

export function mean(values: readonly number[]): number {
  return values.reduce((sum, v) => sum + v, 0) / values.length;
}
