import {
  colourNegativeFaults,
  colourNegativeProcess,
  colourPaperFaults,
  colourPaperProcess,
  type FaultEvidence,
  type FaultRanking,
  faultEvidence,
  type LabLogsInput,
  labLogs,
  rankFaults,
  type Strip,
} from "wetside/control";
import { seededRandom } from "wetside/numerics";
import {
  type SimulatedLab,
  simulatedFaultKinds,
  simulatedLines,
  simulateLab,
} from "wetside/simulate";

// Simulated labs with one fault of a stated size, ranked by their densities alone and with their logs.
//
// The simulator's answers of density to cause and the ranking's signatures are two different tables.
// Here every lab moreover gets sensitivities of its own: what the fault does to D-min, to LD, from LD to
// HD and from HD to D-max is each multiplied by a lognormal factor (sd PART_SD), each colour by another
// (sd COLOUR_SD). Then the fault is scaled so that its largest reading at the last strip stands at the
// asked multiple of its action limit; the logs are those of a lab with the fault of that size.

const PART_SD = 0.2;
const COLOUR_SD = 0.1;
const WINDOW = 30;
const DAYS = 70;
const START = 45;
const BASE = { from: "2026-05-17", to: "2026-06-27" };

export const rankedLines = [
  { line: "film", specification: colourNegativeProcess, table: colourNegativeFaults },
  { line: "paper", specification: colourPaperProcess, table: colourPaperFaults },
] as const;
export type RankedLine = (typeof rankedLines)[number];

/** The faults that a line of the simulated lab may have. */
export const kindsOf = ({ line }: RankedLine): readonly string[] =>
  simulatedFaultKinds
    .map(({ id }) => id)
    .filter((id) => !(line === "film" && id === "printer-at-fault"));

/** The simulator's name of a fault → the table's. */
export function tableId(kind: string, line: string): string {
  if (kind === "densitometer-at-fault") return "densitometer-zero";
  if (kind === "strip-mishandled") return line === "film" ? "strip-fogged" : "strip-read-wet";
  return kind === "printer-at-fault" ? "nothing-wrong" : kind;
}

/** What is seen of a fault that grows needs days; the rest show at once. */
function lookDay(kind: string): number {
  if (kind.endsWith("replenished") || kind === "developer-oxidised") return START + 15;
  return kind === "strip-mishandled" ? START : START + 5;
}

type Three = { readonly red: number; readonly green: number; readonly blue: number };
const colours = ["red", "green", "blue"] as const;

/** One lab's own sensitivities, as factors on the simulator's. */
interface Sensitivities {
  readonly parts: Readonly<Record<string, number>>;
  readonly colours: readonly number[];
}

/** An effect on the patches with each part of it multiplied by its factor. */
function ownEffect(
  effect: (patch: string) => number,
  { parts }: Sensitivities,
  colour: number,
): Readonly<Record<string, number>> {
  const dMin = effect("dMin") * (parts.dMin ?? 1);
  const ld = effect("ld") * (parts.ld ?? 1);
  const hd = ld + (effect("hd") - effect("ld")) * (parts.hd ?? 1);
  const dMax = hd + (effect("dMax") - effect("hd")) * (parts.dMax ?? 1);
  const retainedSilver = dMax - (effect("dMax") - effect("retainedSilver")) * (parts.silver ?? 1);
  const all = { dMin, ld, hd, dMax, retainedSilver };
  return Object.fromEntries(Object.entries(all).map(([patch, v]) => [patch, v * colour]));
}

/** The clean lab's strips plus the fault's effect, with this lab's own sensitivities and size. */
function scaledStrips(
  clean: readonly Strip[],
  faulty: readonly Strip[],
  own: Sensitivities,
  size: number,
): readonly Strip[] {
  return clean.map((strip, i) => {
    const moved = faulty[i]?.patches ?? strip.patches;
    const effects = colours.map((colour, c) => {
      const effect = (patch: string) =>
        (moved[patch]?.[colour] ?? 0) - (strip.patches[patch]?.[colour] ?? 0);
      return ownEffect(effect, own, own.colours[c] ?? 1);
    });
    const patches = Object.entries(strip.patches).map(([patch, read]) => {
      const three = colours.map((colour, c) => {
        const density = read[colour] + size * (effects[c]?.[patch] ?? 0);
        return [colour, Math.max(0, Number(density.toFixed(3)))];
      });
      return [patch, Object.fromEntries(three) as Three];
    });
    return { ...strip, patches: Object.fromEntries(patches) };
  });
}

/** The largest deviation of the difference of two evidences at the last strips, in limits. */
function largest(evidence: FaultEvidence, clean: FaultEvidence, single: boolean): number {
  const strips = evidence.deviations.map((row, i) =>
    row.map((v, j) => (v - (clean.deviations[i]?.[j] ?? 0)) / (evidence.components[j]?.limit ?? 1)),
  );
  const chosen = single ? strips : strips.slice(-1);
  return Math.max(...chosen.flat().map(Math.abs));
}

/** The logs of a line as its lab keeps them, up to a moment. */
export function logsUntil(lab: SimulatedLab, line: string, asOf: string): LabLogsInput {
  const developer = `${line}-developer`;
  return {
    basePeriod: BASE,
    asOf,
    temperatures: { bath: developer, readings: lab.temperatures },
    pumps: { pump: developer, readings: lab.pumps },
    checks: { line, readings: lab.checks },
    work: { line, entries: lab.work },
  };
}

/** One lab with one fault, ranked twice. */
export interface RankedLab {
  /** The table's id of what is wrong, or `"nothing-wrong"`. */
  readonly truth: string;
  /** The group of the true fault. */
  readonly group: string;
  readonly evidence: FaultEvidence;
  readonly logs: LabLogsInput;
  readonly alone: FaultRanking;
  readonly withLogs: FaultRanking;
  readonly uniform: () => number;
}

/** A seed of its own for each line, fault and count: no two labs share their noise. */
function seedOf(line: string, kind: string, count: number): number {
  const lineAt = rankedLines.findIndex((each) => each.line === line);
  const kindAt = simulatedFaultKinds.findIndex(({ id }) => id === kind);
  return 100 * count + 2 * kindAt + lineAt;
}

/** Simulates a lab with a fault that reaches so many action limits, and ranks it. */
export function rankedLabs(
  { line, specification, table }: RankedLine,
  kind: string,
  count: number,
  multiples: readonly number[],
): readonly RankedLab[] {
  const seed = seedOf(line, kind, count);
  const { normal, uniform } = seededRandom(7919 * seed);
  const factor = (sd: number) => Math.exp(sd * normal());
  // What moves every patch alike moves it alike in every lab: an instrument or a stain.
  const even = kind === "densitometer-at-fault" || kind === "wash-poor";
  const names = even ? [] : ["dMin", "ld", "hd", "dMax", "silver"];
  const sensitivities: Sensitivities = {
    parts: Object.fromEntries(names.map((name) => [name, factor(PART_SD)])),
    colours: colours.map(() => factor(COLOUR_SD)),
  };
  const lines = simulatedLines.filter(({ id }) => id === line);
  const { typicalSize = 1, largestSize = 1 } =
    simulatedFaultKinds.find(({ id }) => id === kind) ?? {};
  const labWith = (size?: number) => {
    const fault = { kind, line, fromDay: START, ...(size === undefined ? {} : { size }) };
    return simulateLab({ seed, days: DAYS, lines, faults: [fault] });
  };
  const cleanLab = simulateLab({ seed, days: DAYS, lines, faults: [] });
  const faulty = labWith();
  const at = new Date(Date.UTC(2026, 4, 17 + lookDay(kind))).toISOString().slice(0, 10);
  const asOf = `${at}T23:00`;
  const evidenceOf = (strips: readonly Strip[]) =>
    faultEvidence({
      strips,
      batches: cleanLab.batches,
      specification,
      basePeriod: BASE,
      asOf,
      lastStrips: WINDOW,
    });
  const asMade = evidenceOf(scaledStrips(cleanLab.strips, faulty.strips, sensitivities, 1));
  const reach = largest(asMade, evidenceOf(cleanLab.strips), kind === "strip-mishandled");
  const truth = tableId(kind, line);
  const group = table.faults.find(({ id }) => id === truth)?.pattern ?? truth;
  return multiples.map((times) => {
    const scale = reach > 0 ? times / reach : 1;
    const evidence = evidenceOf(scaledStrips(cleanLab.strips, faulty.strips, sensitivities, scale));
    const lab = labWith(Math.min(largestSize, typicalSize * scale));
    const logs = logsUntil(lab, line, asOf);
    const alone = rankFaults(evidence);
    const withLogs = rankFaults(evidence, { logs: labLogs(logs) });
    return { truth, group, evidence, logs, alone, withLogs, uniform };
  });
}

/**
 * Whether a ranking is right: by group, and strictly: the true cause is likelier than every other fault,
 * "none of these" and "nothing wrong"; among k that are exactly equal it counts 1/k. Also what is first.
 */
export function rightBy(ranking: FaultRanking, truth: string, group: string) {
  const all = [
    ...ranking.faults.map(({ id, probability }) => [id, probability] as const),
    ["none-of-these", ranking.noneOfThese] as const,
    ["nothing-wrong", ranking.nothingWrong] as const,
  ];
  const best = Math.max(...all.map(([, probability]) => probability));
  const first = all.filter(([, probability]) => probability > best * (1 - 1e-9));
  const ids = first.map(([id]) => id);
  const fault = ids.includes(truth) ? 1 / ids.length : 0;
  return { group: ranking.leading === group ? 1 : 0, fault, first: ids };
}
