import { colourPaperProcess } from "../../lib/control/index.ts";

const grey = (density: number) => ({ red: density, green: density, blue: density });

/** A paper line with one strip a day from 1 March 2026 whose LD stands off its aim as given. */
export function paperLab(offAim: readonly number[]) {
  const reference = { dMin: grey(0.1), ld: grey(0.8), hd: grey(1.6), dMax: grey(2.4) };
  const batches = [{ id: "P-1", process: "colour-paper", reference, correction: {} }];
  const strips = offAim.map((off, i) => ({
    takenAt: `2026-03-${String(i + 1).padStart(2, "0")}T08:00`,
    process: "colour-paper",
    stripBatch: "P-1",
    operator: "A",
    patches: { ...reference, ld: grey(0.8 + off), hd: grey(1.6 + off) },
  }));
  return { strips, batches, specification: colourPaperProcess };
}
