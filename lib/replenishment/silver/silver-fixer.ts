import type { BathTank, TankDay } from "../tank/index.ts";

/** Electrolytic recovery on the fixer tank itself. */
export interface InLineRecovery {
  /** A, at least 0. */
  readonly currentA: number;
  /** 0 to 1. */
  readonly currentEfficiency: number;
  /** Hours a day that the unit runs, 0 to 24. */
  readonly hoursPerDay: number;
  /** The unit stops plating at this silver, g/L, at least 0: below, sulfide forms. */
  readonly stopsAtGPerL: number;
}

/** A fixer that takes silver from film or paper. */
export interface SilverFixer {
  /** Volume, rates and carry-over; its `components` may be empty. */
  readonly tank: BathTank;
  /** Silver coated, g/m². */
  readonly coatedGPerM2: number;
  /** Share that the fixer takes out, 0 to 1. */
  readonly fractionRemoved: number;
  /** Silver in the fixer at the start, g/L; default 0. */
  readonly startGPerL?: number;
  /** Silver in the liquid carried in, g/L; default 0. */
  readonly carryInGPerL?: number;
  readonly recovery?: InLineRecovery;
  /** Change or recover above this, g/L: your own limit, from your supplier or residual tests. */
  readonly limitGPerL?: number;
}

/** A day of the fixer. */
export interface SilverDay {
  readonly date: string;
  readonly areaM2: number;
  /** At the end of the day. */
  readonly silverGPerL: number;
  /** That day, g. */
  readonly removedG: number;
  readonly platedG: number;
  readonly overflowedG: number;
  readonly carriedOutG: number;
}

/** Silver over a log of days. */
export interface SilverLog {
  readonly days: readonly SilverDay[];
  readonly removedG: number;
  readonly carriedInG: number;
  readonly platedG: number;
  readonly overflowedG: number;
  readonly carriedOutG: number;
  /** Poured away with changed baths. */
  readonly dumpedG: number;
  readonly inTankG: number;
  /** In less out less stock: rounding only. */
  readonly imbalanceG: number;
  /** Overflow of all days, L, and silver in it, g/L; null without overflow. */
  readonly overflowL: number;
  readonly overflowGPerL: number | null;
  /**
   * Plated over removed; null if none was removed. Above 1 where the cell also took what stood in the
   * fixer at the start.
   */
  readonly recoveredShare: number | null;
  /** First day that ends above the limit; null if none does, or without a limit. */
  readonly aboveLimitOn: string | null;
  readonly fallingOn: string | null;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
  readonly cautions: readonly string[];
}

export type SilverDays = readonly TankDay[];
