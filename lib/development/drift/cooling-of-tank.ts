import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { shown } from "../rate/shown.ts";
import { liquidHeat, type VesselPart, vesselHeat } from "../tempering/heat-parts.ts";
import { heatTransferMedium, vesselMaterial } from "../tempering/heat-properties.ts";
import { type NewtonCooling, newtonCooling } from "./newton-cooling.ts";

/** A tank or bottle, as far as heat is concerned. */
export interface CoolingTank {
  readonly volumeMl: number;
  /** Outer surface that gives off heat, cm²; or `diameterMm` and `heightMm` of a cylinder. */
  readonly surfaceCm2?: number;
  readonly diameterMm?: number;
  readonly heightMm?: number;
  /** Wall, if it matters (plastic in a water bath): material and thickness. */
  readonly wall?: { readonly material: string; readonly thicknessMm: number };
  /** Tank, spiral and films as heat capacity: mass in g and material or specific heat. */
  readonly vessels?: readonly Omit<VesselPart, "temperatureC">[];
}

/** Newton cooling estimated from a tank's size. */
export interface CoolingOfTank extends NewtonCooling {
  readonly surfaceCm2: number;
  readonly heatCapacityJPerK: number;
  readonly overallWPerM2K: number;
  /** The rate for the lowest and highest published coefficient of the surroundings, per minute. */
  readonly slowestRatePerMin: number;
  readonly fastestRatePerMin: number;
}

/**
 * Newton cooling of a tank estimated from its size: no more than an order of magnitude, to be
 * replaced by two readings of a thermometer as soon as there are any.
 *
 * k = U·A/C;  1/U = 1/h_out + wall/conductivity + 1/h_in;  cylinder A = π·d·(h + d/2)
 *
 * @param input.tank volume in mL, surface in cm² or diameter and height in mm, wall, vessels
 * @param input.startTemperatureC @param input.surroundingsC temperatures, °C
 * @param input.medium "still air" (default), "moving air", "still water" or "stirred water"
 * @param input.outsideWPerM2K heat transfer coefficient outside, W/(m²·K), in place of the medium's
 * @param input.insideWPerM2K coefficient inside, default that of still water, 100
 * @returns the course, with surface, heat capacity, overall coefficient and the range of the rate
 * @throws InputError for a missing or unlikely size
 *
 * @example
 * coolingOfTank({
 *   tank: { volumeMl: 600, diameterMm: 90, heightMm: 110 },
 *   startTemperatureC: 22.5,
 *   surroundingsC: 16,
 * }).ratePerMin // => 0.00953137
 *
 * Source: lumped heat capacity; coefficients of Berk, Food Process Engineering and Technology,
 * Table 3.3, and Çengel (data/development/heat-properties.json).
 */
export function coolingOfTank(input: {
  readonly tank: CoolingTank;
  readonly startTemperatureC: number;
  readonly surroundingsC: number;
  readonly medium?: string;
  readonly outsideWPerM2K?: number;
  readonly insideWPerM2K?: number;
}): CoolingOfTank {
  const where = "coolingOfTank";
  requireObject(where, "input", input, "an object with tank, startTemperatureC and surroundingsC");
  requireObject(where, "tank", input.tank, "an object with volumeMl");
  const { tank } = input;
  const medium = heatTransferMedium(where, "medium", input.medium ?? "still air");
  const positive = { above: 0, max: 1e5, unit: "W/(m²·K)" };
  const outside = requireNumber(
    where,
    "outsideWPerM2K",
    input.outsideWPerM2K ?? medium.typicalWPerM2K,
    positive,
  );
  const inside = requireNumber(where, "insideWPerM2K", input.insideWPerM2K ?? 100, positive);
  const surfaceCm2 = outerSurfaceCm2(where, tank);
  const heatCapacityJPerK = [
    liquidHeat(where, "tank", { volumeMl: tank.volumeMl, temperatureC: 20 }),
    ...(tank.vessels ?? []).map((each, i) =>
      vesselHeat(where, `tank.vessels[${i}]`, { ...each, temperatureC: 20 }),
    ),
  ].reduce((sum, each) => sum + each.heatCapacityJPerK, 0);
  requireNumber(where, "tank.volumeMl", tank.volumeMl, { above: 0, unit: "mL" });
  const wall = wallResistance(where, tank);
  const overall = (h: number) => 1 / (1 / h + wall + 1 / inside);
  const rate = (h: number) => (60 * overall(h) * surfaceCm2 * 1e-4) / heatCapacityJPerK;
  const course = newtonCooling({
    startTemperatureC: input.startTemperatureC,
    surroundingsC: input.surroundingsC,
    ratePerMin: rate(outside),
  });
  const given = input.outsideWPerM2K !== undefined;
  return {
    ...course,
    surfaceCm2,
    heatCapacityJPerK,
    overallWPerM2K: overall(outside),
    slowestRatePerMin: rate(given ? outside : medium.lowestWPerM2K),
    fastestRatePerMin: rate(given ? outside : medium.highestWPerM2K),
    assumptions: [
      ...course.assumptions,
      `heat transfer outside ${shown(outside)} W/(m²·K) (${given ? "given" : `typical of ${medium.medium}; published values run from ${medium.lowestWPerM2K} to ${medium.highestWPerM2K}`}), inside ${shown(inside)} W/(m²·K)`,
    ],
  };
}

function outerSurfaceCm2(where: string, tank: CoolingTank): number {
  if (tank.surfaceCm2 !== undefined) {
    return requireNumber(where, "tank.surfaceCm2", tank.surfaceCm2, { above: 0, unit: "cm²" });
  }
  if (tank.diameterMm === undefined || tank.heightMm === undefined) {
    const advice = "write surfaceCm2, or diameterMm and heightMm of a cylinder";
    throw new InputError(where, "tank", tank, advice);
  }
  const d = requireNumber(where, "tank.diameterMm", tank.diameterMm, { above: 0, unit: "mm" });
  const h = requireNumber(where, "tank.heightMm", tank.heightMm, { above: 0, unit: "mm" });
  const holdsMl = (Math.PI * d ** 2 * h) / 4000;
  requireNumber(where, "tank.volumeMl", tank.volumeMl, {
    above: 0,
    max: Math.round(holdsMl * 1.05),
    unit: "mL",
    hint: `a cylinder of ${d} × ${h} mm holds ${holdsMl.toFixed(0)} mL`,
  });
  return (Math.PI * d * (h + d / 2)) / 100;
}

function wallResistance(where: string, tank: CoolingTank): number {
  if (tank.wall === undefined) return 0;
  const { conductivityWPerMK } = vesselMaterial(where, "tank.wall.material", tank.wall.material);
  const thickness = requireNumber(where, "tank.wall.thicknessMm", tank.wall.thicknessMm, {
    min: 0,
    max: 50,
    unit: "mm",
  });
  return thickness / 1000 / conductivityWPerMK;
}
