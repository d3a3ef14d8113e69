import type { BathTank } from "../replenishment/index.ts";
import type { SimulatedBath } from "./simulated-line.ts";

/** Strength of the developer at its aim, g/L, and of its replenisher over it; invented. */
export const developerAims = [
  { name: "developing agent", aimGPerL: 3.5, replenisherOverAim: 5.2 / 3.5 },
  { name: "bromide", aimGPerL: 1.2, replenisherOverAim: 0 },
  { name: "alkali", aimGPerL: 30, replenisherOverAim: 1.2 },
] as const;

/** What is followed in the developer besides: what does not belong there, mL/L. */
export const contaminants = ["fixer", "bleach"] as const;

/** How replenisher, losses and starts differ from the aim. */
export interface DeveloperCondition {
  /** Replenisher strength over its own, 1 where nothing is amiss. */
  readonly mixStrength: number;
  /** Extra loss of developing agent to the air, 1/day. */
  readonly agentLossPerDay: number;
  /** Concentrations at the start, by name; left out, the aim (0 for contaminants). */
  readonly start?: Readonly<Record<string, number>>;
}

/**
 * The developer as a tank of the replenishment room: what each square metre uses up or gives off is
 * such that the line's own rate holds every component at its aim, whatever the load.
 */
export function developerTank(bath: SimulatedBath, condition: DeveloperCondition): BathTank {
  const rateMlPerM2 = bath.rateMlPerM2 ?? 0;
  const { mixStrength, agentLossPerDay, start = {} } = condition;
  return {
    volumeL: bath.volumeL,
    rateMlPerM2,
    components: [
      ...developerAims.map(({ name, aimGPerL, replenisherOverAim }) => {
        const replenisher = aimGPerL * replenisherOverAim;
        const used = (rateMlPerM2 / 1000) * (replenisher - aimGPerL);
        return {
          name,
          replenisherGPerL: replenisher * mixStrength,
          startGPerL: start[name] ?? aimGPerL,
          ...(used >= 0 ? { consumedGPerM2: used } : { releasedGPerM2: -used }),
          lossPerDay: name === "developing agent" ? agentLossPerDay : 0,
        };
      }),
      ...contaminants.map((name) => ({
        name,
        replenisherGPerL: 0,
        startGPerL: start[name] ?? 0,
      })),
    ],
  };
}
