import { tankOverDays } from "../replenishment/index.ts";
import { contaminants, developerAims, developerTank } from "./developer-tank.ts";
import type { CheckedFault } from "./simulated-fault.ts";
import type { SimulatedBath } from "./simulated-line.ts";

const CONTENT_FAULTS: readonly string[] = [
  "developer-too-strong",
  "developer-too-weak",
  "developer-oxidised",
  "contaminated-with-fixer",
  "contaminated-with-bleach",
];

/** What is in the developer at one moment: g/L, contaminants mL/L. */
export type DeveloperState = Readonly<Record<string, number>>;

/** The developer of one day: as work begins, and as it ends, before anything happens overnight. */
export interface DeveloperDay {
  readonly morning: DeveloperState;
  readonly evening: DeveloperState;
}

/** What a line's developer goes through. */
export interface DeveloperHistory {
  readonly bath: SimulatedBath;
  readonly days: readonly string[];
  readonly areaM2: readonly number[];
  readonly deliveredMl: readonly number[];
  /** Strength of the replenisher mixed for each day, 1 where it is right. */
  readonly mixStrength: readonly number[];
  readonly faults: readonly CheckedFault[];
  /**
   * Days on which the bath is mixed afresh (with starter: at its aim) before work, by index. What has
   * gone wrong with its contents by then is gone.
   */
  readonly freshOn?: readonly number[];
}

/**
 * The developer day by day, solved exactly between the moments at which something changes by itself
 * (a new mix of replenisher, a fault, a fresh bath).
 *
 * @returns the state at the start and at the end of each day's work
 */
export function developerOverDays(history: DeveloperHistory): readonly DeveloperDay[] {
  const { bath, days } = history;
  const done: DeveloperDay[] = [];
  let state = aimState();
  let day = 0;
  while (day < days.length) {
    state = afterEvents(history, state, day);
    const end = nextChange(history, day);
    const tank = developerTank(bath, {
      mixStrength: strengthOn(history, day),
      agentLossPerDay: agentLoss(history, day),
      start: state,
    });
    const rows = days.slice(day, end).map((date, i) => ({
      date,
      areaM2: history.areaM2[day + i] ?? 0,
      replenisherMl: history.deliveredMl[day + i] ?? 0,
    }));
    for (const { concentrationGPerL } of tankOverDays(tank, rows).days) {
      done.push({ morning: state, evening: concentrationGPerL });
      state = concentrationGPerL;
    }
    day = end;
  }
  return done;
}

function aimState(): DeveloperState {
  return Object.fromEntries([
    ...developerAims.map(({ name, aimGPerL }) => [name, aimGPerL]),
    ...contaminants.map((name) => [name, 0]),
  ]);
}

function nextChange({ days, mixStrength, faults, freshOn = [] }: DeveloperHistory, day: number) {
  const moments = [days.length, ...freshOn, ...faults.flatMap((f) => [f.fromDay, f.untilDay])];
  const newMix = mixStrength.findIndex((each, i) => i > day && each !== mixStrength[day]);
  if (newMix > 0) moments.push(newMix);
  return Math.min(...moments.filter((each) => each > day));
}

function sizeOn(faults: readonly CheckedFault[], kind: string, day: number): number {
  return faults
    .filter((f) => f.kind === kind && f.fromDay <= day && day < f.untilDay)
    .reduce((sum, f) => sum + f.size, 0);
}

function strengthError(faults: readonly CheckedFault[], day: number): number {
  return sizeOn(faults, "developer-too-strong", day) - sizeOn(faults, "developer-too-weak", day);
}

function strengthOn({ faults, mixStrength }: DeveloperHistory, day: number): number {
  return (mixStrength[day] ?? 1) * (1 + strengthError(faults, day));
}

/** The loss that holds the agent at the share that oxidation leaves, at the average load. */
function agentLoss({ faults, deliveredMl, bath }: DeveloperHistory, day: number): number {
  const lost = sizeOn(faults, "developer-oxidised", day);
  if (lost === 0) return 0;
  const mean = deliveredMl.reduce((sum, ml) => sum + ml, 0) / Math.max(1, deliveredMl.length);
  return ((mean / 1000 / bath.volumeL) * lost) / (1 - lost);
}

/** What happens to the bath at once, before work. */
function afterEvents(
  { faults, freshOn = [] }: DeveloperHistory,
  before: DeveloperState,
  day: number,
) {
  if (freshOn.includes(day)) return aimState();
  // A bath whose contents were wrong is mended by mixing it afresh, unless it already was.
  const ended = faults.some(
    ({ kind, fromDay, untilDay }) =>
      untilDay === day &&
      CONTENT_FAULTS.includes(kind) &&
      !freshOn.some((fresh) => fromDay <= fresh && fresh < untilDay),
  );
  const state: Record<string, number> = { ...(ended ? aimState() : before) };
  const multiply = (name: string, by: number) => {
    state[name] = (state[name] ?? 0) * by;
  };
  for (const { kind, size, fromDay } of faults) {
    if (fromDay !== day) continue;
    if (kind === "developer-too-strong" || kind === "developer-too-weak") {
      const by = kind === "developer-too-strong" ? 1 + size : 1 - size;
      for (const { name } of developerAims) multiply(name, by);
    }
    if (kind === "developer-oxidised") multiply("developing agent", 1 - size);
    if (kind === "contaminated-with-fixer") state.fixer = (state.fixer ?? 0) + size;
    if (kind === "contaminated-with-bleach") state.bleach = (state.bleach ?? 0) + size;
  }
  return state;
}
