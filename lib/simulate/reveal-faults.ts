import { faultKindOf } from "./check-fault.ts";
import { consecutiveDays } from "./days.ts";
import { unseal } from "./seal.ts";
import type { CheckedFault } from "./simulated-fault.ts";
import type { RevealedFault, SimulatedLab } from "./simulated-lab.ts";

/**
 * Opens the sealed answer of a simulated lab: what was wrong, since when, and how much.
 *
 * @param lab the lab, or one read back from JSON; only its `sealedAnswer` is used
 * @returns the faults, none if the lab was in order
 * @throws InputError if the answer is missing or was changed
 *
 * @example
 * const faults = [{ kind: "under-replenished", line: "film", fromDay: 40, size: 0.15 }];
 * const lab = simulateLab({ seed: 1, days: 60, faults });
 * JSON.stringify(lab).includes("under-replenished") // => false
 * revealFaults(lab).map((fault) => `${fault.fromDate}: ${fault.words}`) // => ["2026-06-26: the developer's pump delivers less than it is set to"]
 */
export function revealFaults(lab: Pick<SimulatedLab, "sealedAnswer">): readonly RevealedFault[] {
  const where = "revealFaults";
  const { from, faults } = unseal(where, lab?.sealedAnswer) as {
    readonly from: string;
    readonly faults: readonly CheckedFault[];
  };
  return faults.map((fault) => {
    const { words, sizeMeans, unit, showsIn } = faultKindOf(where, fault.kind);
    const fromDate = consecutiveDays(where, from, fault.fromDay + 1).at(-1) ?? from;
    const sizeWords =
      unit === "1"
        ? `${Number((100 * fault.size).toPrecision(3))} % (${sizeMeans})`
        : `${fault.size} ${unit} (${sizeMeans})`;
    return { ...fault, words, fromDate, sizeWords, showsIn };
  });
}
