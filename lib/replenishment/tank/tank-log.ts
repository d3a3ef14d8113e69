/** One day of a tank. */
export interface TankDay {
  /** `YYYY-MM-DD`; every day once, in order, days of rest with area 0. */
  readonly date: string;
  /** Area that went through, m², at least 0. */
  readonly areaM2: number;
  /** Replenisher delivered that day, mL, at least 0; without it the tank's rate times the area. */
  readonly replenisherMl?: number;
  /** Evaporation of that day, mL, at least 0; without it the tank's. */
  readonly evaporationMl?: number;
  /** The tank was emptied and filled afresh that morning: it begins again at the start. */
  readonly freshBath?: boolean;
}

/** Where a tank stands at the end of a day. */
export interface TankDayState {
  readonly date: string;
  readonly areaM2: number;
  readonly replenisherMl: number;
  readonly overflowMl: number;
  readonly waterMl: number;
  /** Tank turnovers since the first morning. */
  readonly turnovers: number;
  /** g/L by name of the component, at the end of the day. */
  readonly concentrationGPerL: Readonly<Record<string, number>>;
}

/** Where everything of one component went over the whole log, g. */
export interface ComponentLedger {
  readonly name: string;
  readonly startG: number;
  readonly broughtInG: number;
  readonly releasedG: number;
  readonly consumedG: number;
  readonly carriedOutG: number;
  readonly overflowedG: number;
  /** Lost by itself (oxidised). */
  readonly lostG: number;
  /** Poured away at a change of bath, less what the new bath held. */
  readonly dumpedG: number;
  readonly endG: number;
  /** Asked for after the component was used up, and not there. */
  readonly unmetG: number;
  /** startG + ins − outs − endG: rounding only. */
  readonly imbalanceG: number;
}

/** A tank over a log of days. */
export interface TankLog {
  readonly days: readonly TankDayState[];
  readonly ledgers: readonly ComponentLedger[];
  /** The first day on which the level falls; from there on nothing is computed. */
  readonly fallingOn: string | null;
  readonly daysNotComputed: number;
  readonly usedUp: readonly { readonly name: string; readonly date: string }[];
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}
