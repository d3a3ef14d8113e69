import { Matrix, solve } from "ml-matrix";
import { requireNumber, requireObject, requireOneOf } from "../../input/index.ts";
import { requireVolume } from "../require-volume.ts";
import { thiosulfateLimit } from "./carry-over.ts";

/** A wash of one or more tanks in a machine. */
export interface MachineWash {
  /** Load, m²/h, above 0. */
  readonly areaM2PerHour: number;
  /** Liquid the material carries, in and out, mL/m², above 0: 19 with good squeegees to 390. */
  readonly carryOverMlPerM2: number;
  /** g/L in the liquid carried in; of a fixer, its thiosulfate. */
  readonly carriedInGPerL: number;
  /** Number of tanks, a whole number from 1 to 20. */
  readonly stages: number;
  /** `"counter-current"`: fresh water into the last tank only; `"each fresh"`: shared out to all. */
  readonly flow: "counter-current" | "each fresh";
  /** Fresh water in all, L/h, above 0. */
  readonly waterLPerHour: number;
  /**
   * Share of the exchange between layer and water that a tank completes, above 0, at most 1; default 1.
   * With time t in a tank and half-time h of the washing out, 1 − 2^(−t/h).
   */
  readonly exchange?: number;
}

/** What a machine wash leaves, and what it takes. */
export interface MachineWashResult {
  /** g/L in the water of each tank, in the order the material passes. */
  readonly tanksGPerL: readonly number[];
  /** g/L in the liquid that leaves with the material. */
  readonly leavesGPerL: number;
  /** g/m² left in the material: carry-over times concentration. */
  readonly residualGPerM2: number;
  /** The same in µg/cm². */
  readonly residualUgPerCm2: number;
  readonly limitGPerM2: number;
  readonly withinLimit: boolean;
  readonly waterLPerM2: number;
  /** g/h that go down the drain with the water, and g/h that stay in the material. */
  readonly toDrainGPerHour: number;
  readonly withMaterialGPerHour: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * Residual of a machine wash, counter-current or with fresh water in each tank, and its water.
 *
 * In each tank, with carried liquid w, water Q and exchange η: x_i = c_i + (1 − η)(x_(i−1) − c_i) leaves
 * with the material, and w·x_(i−1) + Q·c_in = w·x_i + Q·c_i. With η = 1 and counter-current water that
 * is (R − 1)/(R^(n+1) − 1), R = Q/w.
 *
 * @param wash see {@link MachineWash}
 * @returns g/L by tank, g/m² left against the published limit, water in L/m²
 * @throws InputError for a number out of range
 *
 * @example
 * machineWash({ areaM2PerHour: 10, carryOverMlPerM2: 40, carriedInGPerL: 111, stages: 2, flow: "counter-current", waterLPerHour: 4 }).tanksGPerL // => [11, 1]
 *
 * Source: mass balance; limit ISO 18917:1999 as quoted by a conservation laboratory.
 */
export function machineWash(wash: MachineWash): MachineWashResult {
  const where = "machineWash";
  requireObject(
    where,
    "wash",
    wash,
    "an object with areaM2PerHour, carryOverMlPerM2, carriedInGPerL, …",
  );
  const area = requireNumber(where, "areaM2PerHour", wash.areaM2PerHour, {
    above: 0,
    max: 1e6,
    unit: "m²/h",
  });
  const carry = requireNumber(where, "carryOverMlPerM2", wash.carryOverMlPerM2, {
    above: 0,
    max: 1e5,
    unit: "mL/m²",
  });
  const strength = requireNumber(where, "carriedInGPerL", wash.carriedInGPerL, {
    min: 0,
    max: 1e4,
    unit: "g/L",
  });
  const stages = requireNumber(where, "stages", wash.stages, { min: 1, max: 20, whole: true });
  const water = requireVolume(where, "waterLPerHour", wash.waterLPerHour, {
    above: 0,
    max: 1e9,
    unit: "L/h",
  });
  const exchange = requireNumber(where, "exchange", wash.exchange ?? 1, { above: 0, max: 1 });
  const flow = requireOneOf(where, "flow", wash.flow, ["counter-current", "each fresh"]);
  const carriedL = (area * carry) / 1000;
  const { tanks, leaves } = tankStrengths({ stages, strength, carriedL, water, exchange, flow });
  const perArea = (carry / 1000) * leaves;
  const first = tanks[0] ?? 0;
  const drained = flow === "counter-current" ? water * first : (water / stages) * sum(tanks);
  return {
    tanksGPerL: tanks,
    leavesGPerL: leaves,
    residualGPerM2: perArea,
    residualUgPerCm2: perArea * 100,
    limitGPerM2: thiosulfateLimit.gPerM2,
    withinLimit: perArea <= thiosulfateLimit.gPerM2,
    waterLPerM2: water / area,
    toDrainGPerHour: drained,
    withMaterialGPerHour: carriedL * leaves,
    assumptions: [
      `carry-over ${carry} mL/m², the same into and out of every tank`,
      exchange === 1
        ? "layer and water come to balance in every tank; check with a residual test"
        : `each tank completes ${Number((100 * exchange).toPrecision(3))} % of the exchange`,
      "film or resin-coated paper: fibre-based paper holds thiosulfate far longer",
    ],
    warnings: water < carriedL ? ["Less water than carried liquid: the wash hardly dilutes."] : [],
  };
}

interface StageInputs {
  readonly stages: number;
  readonly strength: number;
  readonly carriedL: number;
  readonly water: number;
  readonly exchange: number;
  readonly flow: MachineWash["flow"];
}

/** Unknowns c_1 … c_n of the water; x_i follows from them tank by tank. */
function tankStrengths({ stages, strength, carriedL, water, exchange, flow }: StageInputs) {
  const counter = flow === "counter-current";
  const q = counter ? water : water / stages;
  const matrix = Matrix.zeros(stages, stages);
  const right = Matrix.zeros(stages, 1);
  const keep = 1 - exchange;
  for (let i = 0; i < stages; i++) {
    // What enters tank i with the material is keep^i of the start and exchange·keep^(i−1−j) of tank j.
    for (let j = 0; j < i; j++) {
      matrix.set(i, j, -carriedL * exchange * exchange * keep ** (i - 1 - j));
    }
    matrix.set(i, i, carriedL * exchange + q);
    if (counter && i + 1 < stages) matrix.set(i, i + 1, -q);
    right.set(i, 0, carriedL * exchange * strength * keep ** i);
  }
  const tanks = solve(matrix, right).to1DArray();
  const leaves = tanks.reduce((x, c) => c + keep * (x - c), strength);
  return { tanks, leaves };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
