import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import { requireConsecutiveDays } from "../calendar.ts";
import { requireVolume } from "../require-volume.ts";
import { requireAreaPerDay } from "../tank/bath-tank.ts";
import { TANK_ASSUMPTIONS } from "../tank/steady-state.ts";
import { requireTankNames } from "./compartments.ts";
import { lineFlows } from "./line-flows.ts";
import { closeLineLedger, type LineLedger, openLineLedger, passLineDay } from "./line-ledger.ts";
import type { LineDay, LineDayState, LineLog } from "./line-log.ts";
import type { TankLine } from "./tank-line.ts";

/**
 * A line of tanks over a log of days with different loads: each day solved exactly by the matrix
 * exponential, so there is no step-size error, and every gram accounted for.
 *
 * m(day + 1) = e^A·m(day) + ∫ e^(A·(1 − s))·b ds, with A and b of that day's flows
 *
 * @param line see {@link TankLine}; starts and feeds in g/L
 * @param days see {@link LineDay}: consecutive dates, area in m², perhaps what was fed, and fresh baths
 * @returns g/L in each tank at the end of each day, where every gram went, the first day on which a
 *   tank falls, and components that are used up
 * @throws InputError for a gap, a day that comes twice or out of order, unknown names, or a number out
 *   of range
 *
 * @example
 * const tanks = [{ name: "fixer", volumeL: 10, rateMlPerM2: 1000, carryOverMlPerM2: 50 }, { name: "wash", volumeL: 10, feedMlPerDay: 100000, carryOverMlPerM2: 50 }];
 * const line = { tanks, enteringMlPerM2: 50, components: [{ name: "silver", inTanks: { fixer: { releasedGPerM2: 4 } } }] };
 * tankLineOverDays(line, [{ date: "2026-03-02", areaM2: 5 }, { date: "2026-03-03", areaM2: 0 }]).days[1].concentrationGPerL.silver // => { fixer: 1.55598, wash: 1.62e-7 }
 *
 * Source: as `tankLineOverTime`.
 */
export function tankLineOverDays(line: TankLine, days: readonly LineDay[]): LineLog {
  const where = "tankLineOverDays";
  requireObject(where, "line", line, "an object with tanks and components");
  requireEntries(where, "components", line.components);
  if (!Array.isArray(days)) {
    const advice = 'write a list like [{ date: "2026-03-02", areaM2: 3 }]';
    throw new InputError(where, "days", days, advice);
  }
  requireConsecutiveDays(where, days);
  requireTankNames(where, line, lineFlows(line, 0));
  const ledgers = line.components.map((component) => openLineLedger(where, line, component));
  const warnings = new Set<string>();
  const done: LineDayState[] = [];
  let falling: LineLog["falling"] = null;
  days.forEach((day, i) => {
    const area = requireAreaPerDay(where, day.areaM2, `days[${i}].areaM2`);
    const thatDay = lineOfDay(where, line, day, i);
    if (falling !== null) return;
    const flows = lineFlows(thatDay, area);
    const short = flows.find(({ overflowL }) => overflowL < 0);
    if (short !== undefined) {
      falling = { date: day.date, tank: short.name };
      const lost = Number((-1000 * short.overflowL).toPrecision(3));
      warnings.add(
        `${day.date}: ${short.name} falls by ${lost} mL that day. Nothing is computed from there on; feed it more, top it up, or correct carry-over and evaporation.`,
      );
      return;
    }
    for (const ledger of ledgers) passLineDay(where, ledger, thatDay, flows, day);
    done.push({
      date: day.date,
      areaM2: area,
      concentrationGPerL: byComponent(ledgers, (ledger) =>
        Object.fromEntries(
          line.tanks.map(({ name, volumeL }, k) => {
            const gPerL = (ledger.grams[k] ?? Number.NaN) / volumeL;
            return [name, ledger.usedUp === null ? gPerL : null];
          }),
        ),
      ),
    });
  });
  const usedUp = ledgers.flatMap(({ component, usedUp: at }) =>
    at === null ? [] : [{ name: component.name, ...at }],
  );
  for (const { name, tank, date } of usedUp) {
    warnings.add(
      `${name} is used up in ${tank} on ${date}: more is asked for than comes in, and it is not computed from there on.`,
    );
  }
  const closed = ledgers.map((ledger) => closeLineLedger(ledger, line));
  return {
    days: done,
    leftG: byComponent(ledgers, (_, i) => closed[i]?.leftG ?? {}),
    dumpedG: byComponent(ledgers, ({ dumpedG }) => dumpedG),
    imbalanceG: byComponent(ledgers, (_, i) => closed[i]?.imbalanceG ?? 0),
    falling,
    daysNotComputed: days.length - done.length,
    usedUp,
    assumptions: [
      ...TANK_ASSUMPTIONS,
      "A day's load and what is fed are spread evenly over the day.",
    ],
    warnings: [...warnings],
  };
}

/** The line as it was fed that day. */
function lineOfDay(where: string, line: TankLine, day: LineDay, i: number): TankLine {
  const names = line.tanks.map(({ name }) => name);
  const known = (name: string, argument: string) => {
    if (names.includes(name)) return;
    const advice = `write one of ${names.map((each) => `"${each}"`).join(", ")}`;
    throw new InputError(where, `days[${i}].${argument}`, name, advice);
  };
  for (const name of day.freshBaths ?? []) known(name, "freshBaths");
  const fed = day.feedMl ?? {};
  for (const name of Object.keys(fed)) known(name, "feedMl");
  const tanks = line.tanks.map((tank) => {
    const given = fed[tank.name];
    if (given === undefined) return tank;
    const bounds = { min: 0, max: 1e10, unit: "mL" };
    const feedMlPerDay = requireVolume(where, `days[${i}].feedMl of ${tank.name}`, given, bounds);
    return { ...tank, rateMlPerM2: 0, feedMlPerDay };
  });
  return { ...line, tanks };
}

function byComponent<T>(
  ledgers: readonly LineLedger[],
  pick: (ledger: LineLedger, i: number) => T,
): Readonly<Record<string, T>> {
  return Object.fromEntries(ledgers.map((ledger, i) => [ledger.component.name, pick(ledger, i)]));
}
