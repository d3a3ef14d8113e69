import type { LineTankFlows } from "./tank-line.ts";

/** A tank of a line that loses more than it gains. */
export interface FallingTank {
  readonly name: string;
  /** mL that its level falls by in a day. */
  readonly mlPerDay: number;
}

/** The tanks of a line that fall at these flows. */
export function fallingTanks(flows: readonly LineTankFlows[]): readonly FallingTank[] {
  return flows.flatMap(({ name, overflowL }) =>
    overflowL < 0 ? [{ name, mlPerDay: -1000 * overflowL }] : [],
  );
}

/** What is said of a tank that falls. */
export function fallingInWords({ name, mlPerDay }: FallingTank): string {
  return `${name} falls: it loses ${Number(mlPerDay.toPrecision(3))} mL a day more than it gains. Concentrations are not computed; feed it more, top it up, or correct carry-over and evaporation.`;
}
