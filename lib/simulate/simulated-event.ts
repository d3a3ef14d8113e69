/**
 * Something a simulated lab does itself, and knows of; a fault it does not know of is a
 * `SimulatedFault`. Days are counted from 0, the first day.
 *
 * - `fresh-bath`: a line's developer is mixed afresh (with starter: at its aim). The line stands until
 *   then, loses those hours' work, and two strips clear it.
 * - `pump-setting`: a pump is set to another volume a stroke before work. It fires as often as before, so
 *   the rate changes with it.
 * - `counter-reset`: a pump's counter is set back to 0 before work, and marked so.
 * - `cylinder-check`: all pumps are run into a measuring cylinder in the evening. Without any, they are
 *   every 35 days.
 */
export type SimulatedEvent =
  | {
      readonly kind: "fresh-bath";
      readonly line: string;
      readonly day: number;
      /** Clock time, `"11:30"`. */
      readonly at: string;
    }
  | {
      readonly kind: "pump-setting";
      readonly bath: string;
      readonly day: number;
      readonly settingMlPerStroke: number;
    }
  | { readonly kind: "counter-reset"; readonly bath: string; readonly day: number }
  | { readonly kind: "cylinder-check"; readonly day: number };

/** The kinds of events. */
export const simulatedEventKinds = [
  "fresh-bath",
  "pump-setting",
  "counter-reset",
  "cylinder-check",
] as const;
