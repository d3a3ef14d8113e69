import { factorPerTenDegreesModel } from "../development/index.ts";
import type { DensityCause, StripCauses } from "./density-response.ts";
import type { DeveloperState } from "./developer-over-days.ts";
import { developerAims } from "./developer-tank.ts";
import { type CheckedFault, standingCauses } from "./simulated-fault.ts";

/** Colour developers run hot; twice as fast ten degrees warmer is illustrative. */
const FACTOR_PER_TEN_DEGREES = 2;

const model = factorPerTenDegreesModel({
  factorPerTenDegrees: FACTOR_PER_TEN_DEGREES,
  referenceTemperatureC: 37,
  range: { minC: 30, maxC: 44 },
});

/** What a strip meets: the developer's contents, how warm and how long it was, what else is wrong. */
export interface StripConditions {
  readonly developer: DeveloperState;
  readonly offsetC: number;
  /** Time in the developer over its own, 1 where it is right. */
  readonly timeFactor: number;
  /** Faults that stand at that moment. */
  readonly standing: readonly CheckedFault[];
  /** Whether it is the strip that gets mishandled, and how badly. */
  readonly mishandled: number;
}

/** A line's state as the sizes of the causes that the densities answer to. */
export function stripCauses(conditions: StripConditions): StripCauses {
  const { developer, offsetC, timeFactor, standing, mishandled } = conditions;
  const relative = (name: string) => {
    const aim = developerAims.find((each) => each.name === name)?.aimGPerL ?? 1;
    return (developer[name] ?? aim) / aim - 1;
  };
  const causes: Partial<Record<DensityCause, number>> = {
    developingAgent: relative("developing agent"),
    bromide: relative("bromide"),
    alkali: relative("alkali"),
    development: Math.log(model.relativeRate(37 + offsetC) * timeFactor),
    temperature: offsetC,
    fixerInDeveloper: developer.fixer ?? 0,
    bleachInDeveloper: developer.bleach ?? 0,
    mishandledStrip: mishandled,
  };
  for (const { kind, size } of standing) {
    const at = standingCauses[kind];
    if (at !== undefined) causes[at.cause] = (causes[at.cause] ?? 0) + at.perSize * size;
  }
  return causes;
}
