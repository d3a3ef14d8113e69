import { requireNumber } from "../../input/index.ts";
import { requireKnownKeys } from "./require-shape.ts";

/** How long the handling takes; the defaults are common practice or published where said. */
export interface SessionHandling {
  /** Measure, mix and temper before the first batch; default 600 s. */
  readonly mixS?: number;
  /** Load one roll in the dark; default 180 s. */
  readonly loadSPerFilm?: number;
  /** Load one sheet in the dark; default 45 s. */
  readonly loadSPerSheet?: number;
  /** Fill the tank; default 15 s. */
  readonly pourInS?: number;
  /** Empty it, or drain a sheet, counted into the step; default 10 s. */
  readonly pourOutS?: number;
  /** Trays: one sheet moves every so many seconds; default 10. */
  readonly sheetEveryS?: number;
  /** Between batches: rinse and dry the spirals, temper again; default 900 s. */
  readonly turnRoundS?: number;
  /** Hang one film; default 60 s. */
  readonly hangSPerFilm?: number;
  /** Drying, beside the session; default 7200 s. */
  readonly dryS?: number;
}

/** Defaults of handling; pouring: US Navy, NAVEDTRA 14209, ch. 10; the rest common practice. */
const DEFAULTS: Required<SessionHandling> = {
  mixS: 600,
  loadSPerFilm: 180,
  loadSPerSheet: 45,
  pourInS: 15,
  pourOutS: 10,
  sheetEveryS: 10,
  turnRoundS: 900,
  hangSPerFilm: 60,
  dryS: 7200,
};

/** Steps in which the films hang in the air between two baths stay short. */
const LONGEST_MOVE_S = 300;

/** Checks the handling and fills in the defaults. */
export function readHandling(where: string, given: SessionHandling): Required<SessionHandling> {
  requireKnownKeys(where, "handling", given, Object.keys(DEFAULTS));
  const merged = { ...DEFAULTS, ...given };
  for (const [name, value] of Object.entries(merged)) {
    const moves = ["pourInS", "pourOutS", "sheetEveryS"].includes(name);
    const max = moves ? LONGEST_MOVE_S : 86_400;
    requireNumber(where, `handling.${name}`, value, { min: 0, max, whole: true, unit: "s" });
  }
  return merged;
}
