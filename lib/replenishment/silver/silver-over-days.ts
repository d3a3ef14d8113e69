import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { requireConsecutiveDays } from "../calendar.ts";
import { quotient } from "../quotient.ts";
import { checkedTank } from "../tank/bath-tank.ts";
import { dayFlows } from "../tank/day-flows.ts";
import { solutionOutL } from "../tank/tank-flows.ts";
import { electrolyticSilver } from "./electrolytic-recovery.ts";
import { platedDay } from "./silver-balance.ts";
import { silverCautions } from "./silver-data.ts";
import type { SilverDay, SilverDays, SilverFixer, SilverLog } from "./silver-fixer.ts";
import { silverRemoved } from "./silver-removed.ts";

/**
 * Silver in a fixer over a log of days: what film or paper gives, what a cell plates, what overflows
 * and what is carried on, each day solved exactly.
 *
 * V dc/dt = a·coated·fraction + a·w_i·c_i − (overflow + a·w_o)·c − plating, with plating = η·I·M/F
 * while c is above the cell's stop, and there just what comes in
 *
 * @param fixer see {@link SilverFixer}
 * @param days consecutive days with area, as for `tankOverDays`
 * @returns g/L at the end of each day, where every gram went, and the first day above the limit
 * @throws InputError for a gap or overlap in the days, or a number out of range
 *
 * @example
 * const tank = { volumeL: 16, rateMlPerM2: 800, components: [] };
 * const log = silverOverDays({ tank, coatedGPerM2: 5, fractionRemoved: 1 }, [{ date: "2026-03-02", areaM2: 3 }, { date: "2026-03-03", areaM2: 3 }]);
 * log.days.map((day) => day.silverGPerL) // => [0.87058, 1.61989]
 *
 * Source: mass balance; Faraday's law.
 */
export function silverOverDays(fixer: SilverFixer, days: SilverDays): SilverLog {
  const where = "silverOverDays";
  requireObject(where, "fixer", fixer, "an object with tank, coatedGPerM2 and fractionRemoved");
  const tank = checkedTank(where, { ...fixer.tank, components: [] });
  if (!Array.isArray(days)) {
    const advice = 'write a list like [{ date: "2026-03-02", areaM2: 3 }]';
    throw new InputError(where, "days", days, advice);
  }
  requireConsecutiveDays(where, days);
  const perM2 = silverRemoved({ ...fixer, areaM2: 1 });
  const bounds = { min: 0, max: 1000, unit: "g/L" };
  const start = requireNumber(where, "startGPerL", fixer.startGPerL ?? 0, bounds);
  const carried = requireNumber(where, "carryInGPerL", fixer.carryInGPerL ?? 0, bounds);
  const limit = requireNumber(where, "limitGPerL", fixer.limitGPerL ?? 1000, bounds);
  const { platingG, floor } = recoveryOf(fixer);
  const done: SilverDay[] = [];
  let concentration = start;
  let [carriedInG, dumpedG, overflowL] = [0, 0, 0];
  let falling: string | null = null;
  days.forEach((day, i) => {
    const { flows, areaM2 } = dayFlows(where, tank, day, i);
    if (falling !== null) return;
    if (flows.level === "falling") {
      falling = `${day.date}: ${flows.warnings[0]}`;
      return;
    }
    if (day.freshBath === true) {
      dumpedG += concentration * tank.volumeL;
      concentration = 0;
    }
    const removedG = areaM2 * perM2;
    const inG = flows.carryInL * carried;
    const balance = {
      source: (removedG + inG) / tank.volumeL,
      rate: solutionOutL(flows) / tank.volumeL,
    };
    const state = platedDay(balance, concentration, platingG / tank.volumeL, floor);
    concentration = state.concentration;
    carriedInG += inG;
    overflowL += flows.overflowL;
    done.push({
      date: day.date,
      areaM2,
      silverGPerL: concentration,
      removedG,
      platedG: state.platedGPerL * tank.volumeL,
      overflowedG: flows.overflowL * state.integral,
      carriedOutG: flows.carryOutL * state.integral,
    });
  });
  const total = (pick: (day: SilverDay) => number) => done.reduce((sum, day) => sum + pick(day), 0);
  const [removedG, platedG] = [total((day) => day.removedG), total((day) => day.platedG)];
  const overflowedG = total((day) => day.overflowedG);
  const carriedOutG = total((day) => day.carriedOutG);
  const inTankG = concentration * tank.volumeL;
  const outG = platedG + overflowedG + carriedOutG + dumpedG + inTankG;
  return {
    days: done,
    removedG,
    carriedInG,
    platedG,
    overflowedG,
    carriedOutG,
    dumpedG,
    inTankG,
    imbalanceG: start * tank.volumeL + removedG + carriedInG - outG,
    overflowL,
    overflowGPerL: quotient(overflowedG, overflowL),
    recoveredShare: quotient(platedG, removedG),
    aboveLimitOn: done.find((day) => day.silverGPerL > limit)?.date ?? null,
    fallingOn: falling === null ? null : (falling as string).slice(0, 10),
    assumptions: SILVER_ASSUMPTIONS,
    warnings: falling === null ? [] : [falling],
    cautions: silverCautions,
  };
}

const SILVER_ASSUMPTIONS: readonly string[] = [
  "The fixer is well stirred; a day's work and the hours of the cell are spread over the day.",
  "Coated weight and fraction removed hold for all of the material.",
];

function recoveryOf({ recovery }: SilverFixer): {
  readonly platingG: number;
  readonly floor: number;
} {
  if (recovery === undefined) return { platingG: 0, floor: 0 };
  const where = "silverOverDays";
  const hours = requireNumber(where, "hoursPerDay", recovery.hoursPerDay, {
    min: 0,
    max: 24,
    unit: "h",
  });
  const floor = requireNumber(where, "stopsAtGPerL", recovery.stopsAtGPerL, {
    min: 0,
    max: 100,
    unit: "g/L",
  });
  return { platingG: electrolyticSilver({ ...recovery, hours }), floor };
}
