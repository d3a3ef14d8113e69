import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { findRoot } from "../../numerics/index.ts";
import { thiosulfateLimit } from "./carry-over.ts";
import { type MachineWash, type MachineWashResult, machineWash } from "./machine-wash.ts";

/**
 * The fresh water a machine wash needs to keep a limit, and what it then does.
 *
 * the Q at which w·x_n(Q) equals the limit
 *
 * @param wash see {@link MachineWash}, without the water
 * @param options.limitGPerM2 what may stay in the material, g/m², above 0; default the published limit
 * @returns water in L/h and the wash at that flow
 * @throws InputError if no amount of water does it (the exchange in the tanks is not complete enough:
 *   the message says what is left at best), or if no wash is needed at all
 *
 * @example
 * waterForLimit({ areaM2PerHour: 10, carryOverMlPerM2: 40, carriedInGPerL: 111, stages: 2, flow: "counter-current" }, { limitGPerM2: 0.04 }).waterLPerHour // => 4
 *
 * Source: as `machineWash`.
 */
export function waterForLimit(
  wash: Omit<MachineWash, "waterLPerHour">,
  options: { readonly limitGPerM2?: number } = {},
): { readonly waterLPerHour: number; readonly wash: MachineWashResult } {
  const where = "waterForLimit";
  requireObject(
    where,
    "wash",
    wash,
    "an object with areaM2PerHour, carryOverMlPerM2, carriedInGPerL, …",
  );
  requireObject(where, "options", options, "an object of options, or leave it out");
  const limit = requireNumber(
    where,
    "limitGPerM2",
    options.limitGPerM2 ?? thiosulfateLimit.gPerM2,
    {
      above: 0,
      unit: "g/m²",
    },
  );
  const left = (waterLPerHour: number) => machineWash({ ...wash, waterLPerHour }).residualGPerM2;
  const carriedL = (wash.areaM2PerHour * wash.carryOverMlPerM2) / 1000;
  const [least, most] = [1e-9 * carriedL, Math.min(1e9, 1e8 * carriedL)];
  if (left(least) <= limit) {
    const advice = "so little is carried in that the limit is kept without washing";
    throw new InputError(where, "carriedInGPerL", wash.carriedInGPerL, advice);
  }
  if (left(most) > limit) {
    const advice = `even unlimited water leaves ${left(most).toPrecision(2)} g/m²; write more stages, a longer time in each (exchange), or squeegee better`;
    throw new InputError(where, "limitGPerM2", limit, advice);
  }
  const gap = (logWater: number) => Math.log(left(Math.exp(logWater))) - Math.log(limit);
  const root = findRoot(gap, { lower: Math.log(least), upper: Math.log(most), tolerance: 1e-12 });
  const waterLPerHour = Math.exp(root);
  return { waterLPerHour, wash: machineWash({ ...wash, waterLPerHour }) };
}
