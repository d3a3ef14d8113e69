import type { Densities, Patches, Strip, StripBatch } from "wetside/control";

/** One density in all three colours. */
export const grey = (d: number): Densities => ({ red: d, green: d, blue: d });

/** Reference readings of an invented batch of colour-paper strips. */
export const reference: Patches = {
  dMin: grey(0.1),
  ld: grey(0.8),
  hd: grey(1.6),
  dMax: grey(2.4),
};

export const batch = (id: string, change: Partial<StripBatch> = {}): StripBatch => ({
  id,
  process: "colour-paper",
  reference,
  correction: {},
  ...change,
});

export const batches: readonly StripBatch[] = [batch("77")];

/** A colour-paper strip whose LD and HD deviate from aim by the same, so that HD − LD does not. */
export function paperStrip(takenAt: string, ld: number, change: Partial<Strip> = {}): Strip {
  return {
    takenAt,
    process: "colour-paper",
    stripBatch: "77",
    operator: "A",
    patches: { ...reference, ld: grey(0.8 + ld), hd: grey(1.6 + ld) },
    ...change,
  };
}

/** A morning in August 2026, day 1 to 31. */
export const morning = (day: number, time = "07:10") =>
  `2026-08-${String(day).padStart(2, "0")}T${time}`;

/** The same object, frozen through and through. */
export function frozen<T>(value: T): T {
  if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const inner of Object.values(value)) frozen(inner);
  }
  return value;
}
