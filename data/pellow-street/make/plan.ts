/**
 * What happens at Pellow Street in the ninety days, and when. Everything here is invented.
 * The faults are told in ../hidden-faults.md and nowhere else.
 */

/**
 * Seeds of the simulated lines, found among some two thousand so that the last morning makes a call to
 * think about (film just beyond an action limit, paper quiet), that no strip but those of the plan
 * asked for a repeat, that the pairs of a crossover agree, and that the pump's error and its day lie
 * within the intervals that tuning gives.
 */
export const SEEDS = { film: 20261368, paper: 20261076 } as const;

export const FIRST_DAY = "2026-05-17";
export const TODAY = "2026-08-14";

/** The film developer's replenisher pump delivers less than it is set to. */
export const PUMP_FAULT = { pump: "film-developer", from: "2026-07-27", error: -0.16 } as const;

/** The paper developer runs warmer than its controller shows, until the probe is replaced. */
export const HEATER_FAULT = {
  bath: "paper-developer",
  from: "2026-06-24",
  until: "2026-07-10",
  offsetC: 0.5,
} as const;

/** Fixer gets into the film developer; the bath is dumped and mixed afresh before noon. */
export const CONTAMINATION = {
  day: "2026-06-09",
  fixerMlPerL: 1,
  freshBathAt: "11:30",
} as const;

/** Strips that read wrong by themselves and were repeated. */
export const FALSE_ALARMS = {
  film: { day: "2026-06-18", what: "a strip that had seen light" },
  paper: { day: "2026-08-06", what: "a strip read before it was dry" },
} as const;

/** Days on which the old and the new batch of strips run side by side; the new one stays. */
export const CROSSOVERS = {
  film: ["2026-06-29", "2026-06-30", "2026-07-01", "2026-07-02", "2026-07-03"],
  paper: ["2026-07-20", "2026-07-21", "2026-07-22", "2026-07-23", "2026-07-24"],
} as const;

/** The counter of this pump was set back when it was serviced. */
export const COUNTER_RESET = { pump: "paper-bleach-fix", day: "2026-07-10" } as const;

/** Days on which every pump was run into a measuring cylinder. */
export const CYLINDER_DAYS = ["2026-06-01", "2026-07-06", "2026-08-03"] as const;

/** A mix of replenisher lasts six days; a mix from a kit is right to 0.3 %. */
export const MIXES = { mixEveryDays: 6, mixSd: 0.003 } as const;

/** Prints are looked at closely: 0.04 of density off, and twice as many are made again. */
export const DOUBLING_DENSITY = 0.04;
