import { InputError, requireObject } from "../../input/index.ts";
import { requireConsecutiveDays } from "../calendar.ts";
import { type BathTank, checkedTank, requireStart } from "./bath-tank.ts";
import { closeLedger, openLedger, passDay, refill } from "./component-ledger.ts";
import { dayFlows } from "./day-flows.ts";
import { TANK_ASSUMPTIONS } from "./steady-state.ts";
import type { TankDay, TankDayState, TankLog } from "./tank-log.ts";

const DAY_ASSUMPTION = "A day's load, replenisher and evaporation are spread evenly over the day.";

/**
 * A tank over a log of days with different loads: each day solved exactly, so there is no step-size
 * error, and every gram accounted for.
 *
 * Within a day c(t) = c_ss + (c_0 − c_ss)·e^(−t/τ), with that day's flows; the next day begins where
 * it ends. A component that is used up stays at 0 and is reported; a tank whose level falls is
 * reported and not computed on.
 *
 * @param tank see {@link BathTank}, with `startGPerL` of each component
 * @param days see {@link TankDay}: consecutive dates, area in m², perhaps the replenisher delivered
 * @returns the end of each day in g/L, turnovers, and a ledger in g for each component
 * @throws InputError for a gap, a day that comes twice or out of order, a missing start, or a number
 *   out of range
 *
 * @example
 * const bromide = { name: "bromide", replenisherGPerL: 0, releasedGPerM2: 0.8, startGPerL: 1.2 };
 * const tank = { volumeL: 20, rateMlPerM2: 600, components: [bromide] };
 * const log = tankOverDays(tank, [{ date: "2026-03-02", areaM2: 3 }, { date: "2026-03-03", areaM2: 0 }, { date: "2026-03-04", areaM2: 5 }]);
 * log.days.map((day) => day.concentrationGPerL.bromide) // => [1.211476, 1.211476, 1.22845]
 *
 * Source: mass balance of a well-stirred tank.
 */
export function tankOverDays(tank: BathTank, days: readonly TankDay[]): TankLog {
  const where = "tankOverDays";
  requireObject(where, "tank", tank, "an object with volumeL, rateMlPerM2 and components");
  const checked = checkedTank(where, tank);
  if (!Array.isArray(days)) {
    const advice = 'write a list like [{ date: "2026-03-02", areaM2: 3 }]';
    throw new InputError(where, "days", days, advice);
  }
  requireConsecutiveDays(where, days);
  const states = checked.components.map((each) => openLedger(each, requireStart(where, each)));
  const usedUp = new Map<string, string>();
  const warnings = new Set<string>();
  const done: TankDayState[] = [];
  let fallingOn: string | null = null;
  let turnovers = 0;
  days.forEach((day, i) => {
    const { flows, areaM2 } = dayFlows(where, checked, day, i);
    if (fallingOn !== null) return;
    if (flows.level === "falling") {
      fallingOn = day.date;
      warnings.add(`${day.date}: ${flows.warnings[0]}`);
      return;
    }
    for (const warning of flows.warnings) warnings.add(warning);
    turnovers += flows.turnoversPerDay;
    for (const state of states) {
      if (day.freshBath === true) refill(state, checked);
      const { name } = state.component;
      if (passDay(state, checked, flows, areaM2) && !usedUp.has(name)) usedUp.set(name, day.date);
    }
    done.push({
      date: day.date,
      areaM2,
      replenisherMl: flows.replenisherL * 1000,
      overflowMl: flows.overflowL * 1000,
      waterMl: flows.waterL * 1000,
      turnovers,
      concentrationGPerL: Object.fromEntries(
        states.map(({ component, concentration }) => [component.name, concentration]),
      ),
    });
  });
  for (const [name, date] of usedUp) {
    warnings.add(`${name} is used up on ${date}: more is asked for than comes in.`);
  }
  return {
    days: done,
    ledgers: states.map((state) => closeLedger(state, checked)),
    fallingOn,
    daysNotComputed: days.length - done.length,
    usedUp: [...usedUp].map(([name, date]) => ({ name, date })),
    assumptions: [...TANK_ASSUMPTIONS, DAY_ASSUMPTION],
    warnings: [...warnings],
  };
}
