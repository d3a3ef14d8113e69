import { compartmentsOf, SINKS } from "./compartments.ts";
import { lineFlows } from "./line-flows.ts";
import type { LineDay } from "./line-log.ts";
import type { LineComponent, LineTankFlows, TankLine } from "./tank-line.ts";
import { afterTransition, type Transition, transitionOf } from "./transition.ts";

/** A component on its way through a log of the line. */
export interface LineLedger {
  readonly component: LineComponent;
  readonly startG: readonly number[];
  /** In the tanks, then in the sinks. */
  grams: readonly number[];
  cameG: number;
  dumpedG: number;
  usedUp: { readonly tank: string; readonly date: string } | null;
  /** Days of the same area and feeds share their exponential. */
  readonly known: Map<string, { readonly transition: Transition; readonly cameG: number }>;
}

export function openLineLedger(
  where: string,
  line: TankLine,
  component: LineComponent,
): LineLedger {
  const { startG } = compartmentsOf(where, line, lineFlows(line, 0), 0, component);
  return { component, startG, grams: startG, cameG: 0, dumpedG: 0, usedUp: null, known: new Map() };
}

/** One day at constant flows, fresh baths first. */
export function passLineDay(
  where: string,
  ledger: LineLedger,
  line: TankLine,
  flows: readonly LineTankFlows[],
  day: LineDay,
): void {
  if (ledger.usedUp !== null) return;
  const fresh = new Set(day.freshBaths ?? []);
  const morning = ledger.grams.map((gram, k) => {
    if (!fresh.has(flows[k]?.name ?? "")) return gram;
    const start = ledger.startG[k] ?? 0;
    ledger.dumpedG += gram - start;
    return start;
  });
  const key = JSON.stringify([day.areaM2, day.feedMl ?? null]);
  const known = ledger.known.get(key) ?? solved(where, ledger, line, flows, day.areaM2);
  ledger.known.set(key, known);
  ledger.grams = afterTransition(known.transition, morning);
  ledger.cameG += known.cameG;
  const most = Math.max(...ledger.grams.slice(0, flows.length), 0);
  const empty = flows.find((_, k) => (ledger.grams[k] ?? 0) < -1e-12 * most);
  if (empty !== undefined) ledger.usedUp = { tank: empty.name, date: day.date };
}

function solved(
  where: string,
  { component }: LineLedger,
  line: TankLine,
  flows: readonly LineTankFlows[],
  areaM2: number,
) {
  const model = compartmentsOf(where, line, flows, areaM2, component);
  return {
    transition: transitionOf(model, 1),
    cameG: model.inflowG.reduce((sum, value) => sum + value, 0),
  };
}

/** Everything of the component accounted for. */
export function closeLineLedger(
  { startG, grams, cameG, dumpedG }: LineLedger,
  line: TankLine,
): { readonly leftG: Readonly<Record<string, number>>; readonly imbalanceG: number } {
  const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
  const left = SINKS.map((sink, k) => [sink, grams[line.tanks.length + k] ?? 0] as const);
  return {
    leftG: Object.fromEntries(left),
    imbalanceG: total(startG) + cameG - dumpedG - total(grams),
  };
}
