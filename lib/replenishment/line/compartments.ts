import { InputError, requireEntries, requireNumber } from "../../input/index.ts";
import type { ComponentInTank, LineComponent, LineTankFlows, TankLine } from "./tank-line.ts";

/** Where what leaves the tanks goes to. */
export const SINKS = ["drain", "with the material", "lost by itself"] as const;

/** dm/dt = A·m + b over tanks, then sinks; m in g, time in days. */
export interface Compartments {
  readonly matrix: readonly (readonly number[])[];
  readonly inflowG: readonly number[];
  readonly startG: readonly number[];
}

/** An error where a component names a tank that is not there. */
export function requireTankNames(
  where: string,
  line: TankLine,
  flows: readonly LineTankFlows[],
): void {
  const names = flows.map(({ name }) => name);
  requireEntries(where, "components", line.components);
  for (const component of line.components) {
    for (const tank of Object.keys(component.inTanks)) {
      if (names.includes(tank)) continue;
      const advice = `write one of ${names.map((name) => `"${name}"`).join(", ")}`;
      throw new InputError(where, `inTanks of ${component.name}`, tank, advice);
    }
  }
}

/** The compartment model of one component: every gram that leaves a tank arrives somewhere. */
export function compartmentsOf(
  where: string,
  line: TankLine,
  flows: readonly LineTankFlows[],
  areaM2: number,
  component: LineComponent,
): Compartments {
  const n = flows.length;
  const size = n + SINKS.length;
  const matrix = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const inflowG = new Array<number>(size).fill(0);
  const startG = new Array<number>(size).fill(0);
  const move = (from: number, to: number, perDay: number) => {
    const [source, target] = [matrix[from], matrix[to]];
    if (source === undefined || target === undefined) return;
    source[from] = (source[from] ?? 0) - perDay;
    target[from] = (target[from] ?? 0) + perDay;
  };
  flows.forEach((flow, i) => {
    const inTank = checkedInTank(where, component, flow.name);
    const volumeL = line.tanks[i]?.volumeL ?? Number.NaN;
    const drain = flows.findIndex(({ name }) => name === flow.overflowTo);
    move(i, drain < 0 ? n : drain, flow.overflowL / volumeL);
    move(i, i + 1 < n ? i + 1 : n + 1, flow.carryOutL / volumeL);
    move(i, n + 2, inTank.lossPerDay);
    inflowG[i] =
      flow.feedL * inTank.feedGPerL +
      areaM2 * (inTank.releasedGPerM2 - inTank.consumedGPerM2) +
      (i === 0 ? flow.carryInL * entering(where, component) : 0);
    startG[i] = inTank.startGPerL * volumeL;
  });
  return { matrix, inflowG, startG };
}

function entering(where: string, { name, enteringGPerL }: LineComponent): number {
  return requireNumber(where, `enteringGPerL of ${name}`, enteringGPerL ?? 0, {
    min: 0,
    max: 1e6,
    unit: "g/L",
  });
}

function checkedInTank(
  where: string,
  component: LineComponent,
  tank: string,
): Required<ComponentInTank> {
  const given = component.inTanks[tank] ?? {};
  const at = (key: keyof ComponentInTank, unit: string) =>
    requireNumber(where, `${key} of ${component.name} in ${tank}`, given[key] ?? 0, {
      min: 0,
      max: 1e6,
      unit,
    });
  return {
    startGPerL: at("startGPerL", "g/L"),
    feedGPerL: at("feedGPerL", "g/L"),
    releasedGPerM2: at("releasedGPerM2", "g/m²"),
    consumedGPerM2: at("consumedGPerM2", "g/m²"),
    lossPerDay: at("lossPerDay", "1/day"),
  };
}
