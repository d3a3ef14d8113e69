import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";

/** What a machine does at its speed. */
export interface MachineRun {
  readonly speedMPerMin: number;
  /** m² in an hour of running without gaps, all strands together. */
  readonly areaM2PerHour: number;
  /** Time in each bath, min. */
  readonly baths: readonly {
    readonly name: string;
    readonly pathM: number;
    readonly timeMin: number;
  }[];
  /** Time from entry to exit over all the paths, min. */
  readonly throughMin: number;
  /** Minutes until a reel has gone in; null without one. */
  readonly reelMin: number | null;
  /** Area of a reel, m²; null without one. */
  readonly reelM2: number | null;
  /** mL/min of replenisher while film runs; null without a rate. */
  readonly replenisherMlPerMin: number | null;
}

/**
 * Area per hour, time in each bath and replenisher flow of a machine that transports film or paper.
 *
 * t = path / v; a = v · width · strands · 60; flow = r · a / 60
 *
 * @param machine.widthMm width of the material, mm, above 0
 * @param machine.strands strands side by side, a whole number from 1; default 1
 * @param machine.speedMPerMin transport speed, m/min, above 0; or instead:
 * @param machine.timeIn a bath of the list and the minutes wanted in it: the speed follows
 * @param machine.baths name and length of the path under the surface, m, above 0
 * @param machine.reelM length of a reel, m, above 0
 * @param machine.rateMlPerM2 replenishment rate, mL/m², at least 0
 * @returns speed, area per hour, times in min, flow in mL/min
 * @throws InputError unless exactly one of `speedMPerMin` and `timeIn` is given, or for a number out
 *   of range
 *
 * @example
 * machineRun({ widthMm: 35, speedMPerMin: 3.048, baths: [{ name: "developer", pathM: 9.144 }] }).baths[0].timeMin // => 3
 *
 * Source: definition; the example is that of US Navy NAVEDTRA 14209, 10 ft/min and a path of 30 ft.
 */
export function machineRun(machine: {
  readonly widthMm: number;
  readonly strands?: number;
  readonly speedMPerMin?: number;
  readonly timeIn?: { readonly bath: string; readonly timeMin: number };
  readonly baths?: readonly { readonly name: string; readonly pathM: number }[];
  readonly reelM?: number;
  readonly rateMlPerM2?: number;
}): MachineRun {
  const where = "machineRun";
  requireObject(where, "machine", machine, "an object with widthMm");
  if (machine.baths !== undefined) requireEntries(where, "baths", machine.baths);
  const width = requireNumber(where, "widthMm", machine.widthMm, {
    above: 0,
    max: 5000,
    unit: "mm",
  });
  const strands = requireNumber(where, "strands", machine.strands ?? 1, { min: 1, whole: true });
  const baths = (machine.baths ?? []).map(({ name, pathM }) => ({
    name,
    pathM: requireNumber(where, `pathM of ${name}`, pathM, { above: 0, max: 1e5, unit: "m" }),
  }));
  const speed = speedOf(machine, baths);
  const m2PerMin = (speed * width * strands) / 1000;
  const { reelM, rateMlPerM2 } = machine;
  if (reelM !== undefined) requireNumber(where, "reelM", reelM, { above: 0, max: 1e6, unit: "m" });
  if (rateMlPerM2 !== undefined) {
    requireNumber(where, "rateMlPerM2", rateMlPerM2, { min: 0, max: 1e7, unit: "mL/m²" });
  }
  const timed = baths.map((bath) => ({ ...bath, timeMin: bath.pathM / speed }));
  return {
    speedMPerMin: speed,
    areaM2PerHour: m2PerMin * 60,
    baths: timed,
    throughMin: timed.reduce((sum, { timeMin }) => sum + timeMin, 0),
    reelMin: reelM === undefined ? null : reelM / speed,
    reelM2: reelM === undefined ? null : (reelM * width) / 1000,
    replenisherMlPerMin: rateMlPerM2 === undefined ? null : rateMlPerM2 * m2PerMin,
  };
}

function speedOf(
  machine: {
    readonly speedMPerMin?: number;
    readonly timeIn?: { readonly bath: string; readonly timeMin: number };
  },
  baths: readonly { readonly name: string; readonly pathM: number }[],
): number {
  const where = "machineRun";
  const { speedMPerMin, timeIn } = machine;
  if ((speedMPerMin === undefined) === (timeIn === undefined)) {
    const advice = "write either speedMPerMin, or timeIn with a bath and its minutes";
    throw new InputError(where, "speedMPerMin", speedMPerMin, advice);
  }
  if (timeIn === undefined) {
    return requireNumber(where, "speedMPerMin", speedMPerMin, {
      above: 0,
      min: 1e-6,
      max: 1e4,
      unit: "m/min",
    });
  }
  const bath = baths.find(({ name }) => name === timeIn.bath);
  if (bath === undefined) {
    const names = baths.map(({ name }) => `"${name}"`).join(", ");
    throw new InputError(
      where,
      "timeIn.bath",
      timeIn.bath,
      `write one of the baths: ${names || "none given"}`,
    );
  }
  return (
    bath.pathM /
    requireNumber(where, "timeIn.timeMin", timeIn.timeMin, { min: 1e-4, max: 1e5, unit: "min" })
  );
}
