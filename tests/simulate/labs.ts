import type { Densities, Strip } from "wetside/control";
import { type SimulatedLab, simulatedFaultIds } from "wetside/simulate";

/** All logs of a lab up to (not including) a day, or from that day on. */
export function logsBetween(lab: SimulatedLab, from: string, until: string) {
  const within = (time: string) => from <= time.slice(0, 10) && time.slice(0, 10) < until;
  return {
    strips: lab.strips.filter(({ takenAt }) => within(takenAt)),
    production: lab.production.filter(({ date }) => within(date)),
    pumps: lab.pumps.filter(({ readAt }) => within(readAt)),
    temperatures: lab.temperatures.filter(({ readAt }) => within(readAt)),
    remakes: lab.remakes.filter(({ date }) => within(date)),
    checks: lab.checks.filter(({ readAt }) => within(readAt)),
    work: lab.work.filter(({ doneAt }) => within(doneAt)),
  };
}

/** The date of a day of a lab, 0 the first. */
export function dateOf({ from }: { readonly from: string }, day: number): string {
  return new Date(Date.parse(`${from}T00:00Z`) + day * 86_400_000).toISOString().slice(0, 10);
}

/** Every fault that a line of the usual lab can have. */
export const possibleFaults = simulatedFaultIds.flatMap((kind) =>
  (["film", "paper"] as const)
    .filter((line) => kind !== "printer-at-fault" || line === "paper")
    .map((line) => ({ kind, line })),
);

/** Faults that strips show from the first one on. */
export const atOnce = possibleFaults.filter(
  ({ kind }) => !kind.endsWith("replenished") && kind !== "printer-at-fault",
);

export const processOf = { film: "colour-negative", paper: "colour-paper" } as const;

export function inARow({ red, green, blue }: Densities): readonly [number, number, number] {
  return [red, green, blue];
}

/** Density of a strip less that of another, by patch, red, green, blue. */
export function difference(a: Strip | undefined, b: Strip | undefined) {
  const patches = Object.entries(a?.patches ?? {});
  return Object.fromEntries(
    patches.map(([patch, three]) => {
      const other = b?.patches[patch] ?? { red: Number.NaN, green: Number.NaN, blue: Number.NaN };
      const [red, green, blue] = inARow(other);
      return [patch, [three.red - red, three.green - green, three.blue - blue]];
    }),
  );
}
