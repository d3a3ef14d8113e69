import { requireNumber, requireObject, requireOneOf } from "../input/index.ts";
import type { Distribution, InputQuantity } from "./distribution.ts";
import { vesselFills } from "./vessel-fills.ts";

/** Volume expansion of water near room temperature, per °C (EURACHEM/CITAC CG 4, A1.4). */
const WATER_EXPANSION_PER_C = 2.1e-4;

const SHAPES = ["rectangular", "triangular"] as const;

/** What is known of a graduate, cylinder, flask or syringe and how it was read. */
export interface GraduateReading {
  readonly name: string;
  /** Volume read, mL, above 0. */
  readonly readingMl: number;
  /** Maker's tolerance or what a check by weight showed, ± mL. */
  readonly toleranceMl: number;
  /** Smallest division, mL; the level is taken as read to half of it. 0 for a one-mark flask. */
  readonly divisionMl: number;
  /** What it holds, mL: a larger volume takes several fills. One fill if left out. */
  readonly capacityMl?: number;
  /** Rectangular if left out; triangular for a volumetric flask. */
  readonly toleranceShape?: "rectangular" | "triangular";
  /** How far the liquid may be from the graduate's own temperature, ± °C; 0 if left out. */
  readonly temperatureSpreadC?: number;
}

/**
 * A volume read in a graduate, as an input quantity with all its parts.
 *
 * V = reading + tolerance (rectangular or triangular) + level (rectangular, ± half a division)
 *   + expansion (rectangular, ± V · 2.1·10⁻⁴/°C · ΔT). A vessel filled n times is off by its tolerance
 * n times the same way; its level is read anew each time.
 *
 * @param reading name, reading, tolerance, division and capacity in mL, temperature spread in °C
 * @returns an input quantity in mL
 * @throws InputError for a reading not above 0, a negative tolerance, division or spread, or more than
 *   a hundred fills
 *
 * @example
 * standardUncertainty(graduateInput({ name: "V", readingMl: 100, toleranceMl: 1, divisionMl: 1 }).distribution) // => 0.645497
 *
 * Source: EURACHEM/CITAC CG 4, 3rd ed. (2012), example A1.4; JCGM 100:2008, F.2.2.1 (resolution).
 */
export function graduateInput(reading: GraduateReading): InputQuantity {
  const where = "graduateInput";
  requireObject(where, "reading", reading, "an object with name, readingMl, toleranceMl, …");
  const volume = requireNumber(where, "readingMl", reading.readingMl, { above: 0, unit: "mL" });
  const tolerance = atLeastZero(where, "toleranceMl", reading.toleranceMl);
  const division = atLeastZero(where, "divisionMl", reading.divisionMl);
  const spread = atLeastZero(where, "temperatureSpreadC", reading.temperatureSpreadC ?? 0);
  const shape = requireOneOf(
    where,
    "toleranceShape",
    reading.toleranceShape ?? "rectangular",
    SHAPES,
  );
  const fills = vesselFills(where, volume, reading.capacityMl);
  const level: Distribution = { kind: "rectangular", mean: 0, halfWidth: division / 2 };
  const expansion = volume * WATER_EXPANSION_PER_C * spread;
  const parts: Distribution[] = [
    { kind: shape, mean: 0, halfWidth: fills * tolerance },
    ...Array.from({ length: fills }, () => level),
    { kind: "rectangular", mean: 0, halfWidth: expansion },
  ];
  return sumInput(reading.name, "mL", volume, parts);
}

/** What is known of a balance and how it was used. */
export interface BalanceReading {
  readonly name: string;
  /** Mass shown, g, above 0. */
  readonly massG: number;
  /** Smallest step of the display, g. */
  readonly divisionG: number;
  /** Accuracy at this load, ± g; one division if left out. */
  readonly toleranceG?: number;
}

/**
 * A mass weighed by difference (tare and load), as an input quantity with all its parts.
 *
 * m = reading + tolerance (rectangular) + two roundings of the display (rectangular, ± half a
 * division each). Air buoyancy, below 0.1 % for salts, is left out.
 *
 * @param reading name, mass, division and tolerance in g
 * @returns an input quantity in g
 * @throws InputError for a mass not above 0 or a negative division or tolerance
 *
 * @example
 * standardUncertainty(balanceInput({ name: "m", massG: 2, divisionG: 0.1 }).distribution) // => 0.0707107
 *
 * Source: JCGM 100:2008, F.2.2.1 (resolution) and 4.3.7.
 */
export function balanceInput(reading: BalanceReading): InputQuantity {
  const where = "balanceInput";
  requireObject(where, "reading", reading, "an object with name, massG and divisionG");
  const mass = requireNumber(where, "massG", reading.massG, { above: 0, unit: "g" });
  const division = atLeastZero(where, "divisionG", reading.divisionG);
  const tolerance = atLeastZero(where, "toleranceG", reading.toleranceG ?? division);
  const rounding: Distribution = { kind: "rectangular", mean: 0, halfWidth: division / 2 };
  const accuracy: Distribution = { kind: "rectangular", mean: 0, halfWidth: tolerance };
  return sumInput(reading.name, "g", mass, [accuracy, rounding, rounding]);
}

/** What is known of a thermometer. */
export interface ThermometerReading {
  readonly name: string;
  /** Temperature shown, °C. */
  readonly readingC: number;
  /** Maker's tolerance, ± °C. */
  readonly toleranceC: number;
  /** Smallest division or step of the display, °C. */
  readonly divisionC: number;
}

/**
 * A temperature read on a thermometer, as an input quantity with its parts.
 *
 * T = reading + tolerance (rectangular) + resolution (rectangular, ± half a division).
 *
 * @param reading name, reading, tolerance and division in °C
 * @returns an input quantity in °C
 * @throws InputError for a reading that is not finite or a negative tolerance or division
 *
 * @example
 * standardUncertainty(thermometerInput({ name: "T", readingC: 20, toleranceC: 0.5, divisionC: 0.5 }).distribution) // => 0.322749
 *
 * Source: JCGM 100:2008, 4.3.7 and F.2.2.1.
 */
export function thermometerInput(reading: ThermometerReading): InputQuantity {
  const where = "thermometerInput";
  requireObject(where, "reading", reading, "an object with name, readingC, toleranceC, …");
  const temperature = requireNumber(where, "readingC", reading.readingC, { unit: "°C" });
  const tolerance = atLeastZero(where, "toleranceC", reading.toleranceC);
  const division = atLeastZero(where, "divisionC", reading.divisionC);
  return sumInput(reading.name, "°C", temperature, [
    { kind: "rectangular", mean: 0, halfWidth: tolerance },
    { kind: "rectangular", mean: 0, halfWidth: division / 2 },
  ]);
}

function atLeastZero(where: string, argument: string, value: number): number {
  return requireNumber(where, argument, value, { min: 0 });
}

function sumInput(
  name: string,
  unit: string,
  mean: number,
  parts: readonly Distribution[],
): InputQuantity {
  const present = parts.filter((part) => !("halfWidth" in part) || part.halfWidth > 0);
  const distribution: Distribution =
    present.length === 0 ? { kind: "constant", mean } : { kind: "sum", mean, parts: present };
  return { name, unit, distribution };
}
