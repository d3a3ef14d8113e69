/** One day of a line. */
export interface LineDay {
  /** `YYYY-MM-DD`; every day once, in order, days of rest with area 0. */
  readonly date: string;
  /** Area that went through, m², at least 0. */
  readonly areaM2: number;
  /** What was fed to a tank that day, mL by its name; without it what the tank says. */
  readonly feedMl?: Readonly<Record<string, number>>;
  /** Tanks that were emptied and filled afresh that morning: they begin again at their start. */
  readonly freshBaths?: readonly string[];
}

/** Where a line stands at the end of a day. */
export interface LineDayState {
  readonly date: string;
  readonly areaM2: number;
  /** g/L by component, then by tank; null from the day on which the component was used up somewhere. */
  readonly concentrationGPerL: Readonly<Record<string, Readonly<Record<string, number | null>>>>;
}

/** A line over a log of days. */
export interface LineLog {
  readonly days: readonly LineDayState[];
  /** g that have left, by component: to the drain, with the material, lost by itself. */
  readonly leftG: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** g poured away at changes of bath, less what the fresh baths held, by component. */
  readonly dumpedG: Readonly<Record<string, number>>;
  /** In less out less stock, by component: rounding only. */
  readonly imbalanceG: Readonly<Record<string, number>>;
  /** The first day on which a tank falls; from there on nothing is computed. */
  readonly falling: { readonly date: string; readonly tank: string } | null;
  readonly daysNotComputed: number;
  readonly usedUp: readonly {
    readonly name: string;
    readonly tank: string;
    readonly date: string;
  }[];
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}
