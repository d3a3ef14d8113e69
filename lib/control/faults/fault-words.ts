import type { FaultGroup, RankedFault } from "./fault-ranking.ts";
import type { SeparatingCheck } from "./separating-check.ts";

/** A probability as a reader takes it in. */
export function percentWords(probability: number): string {
  if (probability > 0.995) return "over 99 %";
  if (probability < 0.005) return "under 1 %";
  return `${Math.round(100 * probability)} %`;
}

/** From this probability on the next step is to confirm the fault, not to part it from the second. */
const PLAIN = 0.9;

/** The ranking in a few sentences. */
export function rankingSentence(
  leading: FaultGroup | "none-of-these" | "nothing-wrong",
  probability: number,
  faults: readonly RankedFault[],
  check: SeparatingCheck | null,
  withLogs = false,
): string {
  const next = check === null ? "" : ` First ${check.name} (${check.tool}).`;
  const share = percentWords(probability);
  if (leading === "nothing-wrong") {
    return `Most likely nothing is wrong with what these strips show (${share}). If prints are off while strips are not, look at the printer.${next}`;
  }
  if (leading === "none-of-these") {
    return `Something is off, and no fault of the table fits it (${share}).${next}`;
  }
  const members = faults.filter(({ id }) => leading.faults.includes(id));
  const list = members.map(({ name, probability: p }) => `${name} (${percentWords(p)})`).join(", ");
  const [first] = members;
  if (first !== undefined && (members.length === 1 || first.probability > PLAIN)) {
    const others =
      members.length === 1 ? "" : " What looks alike on strips has course and logs against it.";
    const then = first.probability > PLAIN ? ` ${first.confirm}` : next;
    return `Most likely ${first.name} (${percentWords(first.probability)}): ${leading.words}.${others}${then}`;
  }
  const alike = withLogs
    ? " What parts these is the course and the logs."
    : " Densities alone hardly tell these apart.";
  return `Most likely ${leading.words} (${share}): ${list}.${alike}${next}`;
}

/** What goes with every ranking, whatever leads. */
export function rankingCautions(places: ReadonlySet<string>): readonly string[] {
  const cautions = [
    "A ranking is a reason to look, not to dose: correct no bath before the check has confirmed the fault, and then by the process manual.",
  ];
  if (["developer", "bleach", "fixer", "bleach-fix", "wash"].some((bath) => places.has(bath))) {
    cautions.push(
      "Samples and baths: read the safety data sheets, wear gloves and goggles, ventilate; never let developer and bleach or bleach-fix run together; what may go down the drain is for local codes and licensed practice to say.",
    );
  }
  return cautions;
}
