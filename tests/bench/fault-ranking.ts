import {
  afterCheck,
  colourNegativeFaults,
  colourNegativeProcess,
  colourPaperFaults,
  colourPaperProcess,
  type FaultCheck,
  type FaultEvidence,
  faultChecks,
  faultEvidence,
  rankFaults,
  type Strip,
} from "wetside/control";
import { seededRandom } from "wetside/numerics";
import { simulatedFaultKinds, simulateLab } from "wetside/simulate";

// How often the true fault is ranked first in simulated labs. Run: npm run fault-ranking -- [labs]
//
// The simulator's answers of density to cause and the ranking's signatures are two different tables.
// Here every lab moreover gets sensitivities of its own: what the fault does to D-min, to LD, from LD to
// HD and from HD to D-max is each multiplied by a lognormal factor (sd PART_SD), each colour by another
// (sd COLOUR_SD). Then the fault's course is scaled so that its largest reading at the last strip
// stands at the asked multiple of its action limit.

const PART_SD = 0.2;
const COLOUR_SD = 0.1;
const WINDOW = 30;
const DAYS = 70;
const START = 45;
const BASE = { from: "2026-05-17", to: "2026-06-27" };
const labs = Number(process.argv[2] ?? 20);

const lines = [
  { line: "film", specification: colourNegativeProcess, table: colourNegativeFaults },
  { line: "paper", specification: colourPaperProcess, table: colourPaperFaults },
] as const;

/** The simulator's name of a fault → the table's. */
function tableId(kind: string, line: string): string {
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

/** The outcome of a check under a fault, drawn by its table with a uniform number. */
function drawnOutcome(check: FaultCheck, truth: string, u: number): string {
  const likely = check.expects[truth] ?? check.otherwise;
  let below = 0;
  for (const [o, outcome] of check.outcomes.entries()) {
    below += likely[o] ?? 0;
    if (u < below) return outcome;
  }
  return check.outcomes.at(-1) ?? "";
}

function percent(hits: number, of: number): string {
  return of === 0 ? "–" : `${Math.round((100 * hits) / of)} %`;
}

const total = new Map<string, number[]>();
for (const { line, specification, table } of lines) {
  console.log(
    `\n| ${line}: true fault | group first, 2× | fault first, 2× | after the check, 2× | group first, 1× | fault first, 1× | otherwise first, 2× |`,
  );
  console.log("|---|---|---|---|---|---|---|");
  for (const { id: kind } of simulatedFaultKinds) {
    if (line === "film" && kind === "printer-at-fault") continue;
    const truth = tableId(kind, line);
    const entry = table.faults.find((each) => each.id === truth);
    const wrong = new Map<string, number>();
    const score = { group2: 0, fault2: 0, check2: 0, group1: 0, fault1: 0 };
    for (let seed = 1; seed <= labs; seed++) {
      const { normal, uniform } = seededRandom(7919 * seed + kind.length);
      const factor = (sd: number) => Math.exp(sd * normal());
      // What moves every patch alike moves it alike in every lab: an instrument or a stain.
      const even = kind === "densitometer-at-fault" || kind === "wash-poor";
      const names = even ? [] : ["dMin", "ld", "hd", "dMax", "silver"];
      const sensitivities: Sensitivities = {
        parts: Object.fromEntries(names.map((name) => [name, factor(PART_SD)])),
        colours: colours.map(() => factor(COLOUR_SD)),
      };
      const faults = [{ kind, line, fromDay: START }];
      const cleanLab = simulateLab({ seed, days: DAYS, faults: [] });
      const faultyLab = simulateLab({ seed, days: DAYS, faults });
      const at = new Date(Date.UTC(2026, 4, 17 + lookDay(kind))).toISOString().slice(0, 10);
      const own = ({ process }: Strip) => process === specification.id;
      const clean = cleanLab.strips.filter(own);
      const faulty = faultyLab.strips.filter(own);
      const evidenceOf = (strips: readonly Strip[]) =>
        faultEvidence({
          strips,
          batches: cleanLab.batches,
          specification,
          basePeriod: BASE,
          asOf: `${at}T23:00`,
          lastStrips: WINDOW,
        });
      const asMade = evidenceOf(scaledStrips(clean, faulty, sensitivities, 1));
      const reach = largest(asMade, evidenceOf(clean), kind === "strip-mishandled");
      for (const times of [2, 1] as const) {
        const size = reach > 0 ? times / reach : 1;
        const evidence = evidenceOf(scaledStrips(clean, faulty, sensitivities, size));
        const ranking = rankFaults(evidence);
        const group = entry?.pattern ?? truth;
        const groupHit = ranking.leading === group;
        const best = ranking.faults[0]?.probability ?? 0;
        const tied = ranking.faults.filter(({ probability }) => probability > best * (1 - 1e-9));
        const isTied = tied.some(({ id }) => id === truth);
        const faultHit =
          entry === undefined ? (groupHit ? 1 : 0) : groupHit && isTied ? 1 / tied.length : 0;
        score[`group${times}`] += groupHit ? 1 : 0;
        score[`fault${times}`] += faultHit;
        if (times === 2) {
          if (!groupHit) wrong.set(ranking.leading, (wrong.get(ranking.leading) ?? 0) + 1);
          // The outcome of the check is drawn as the table of checks says for the true fault.
          const check = faultChecks.find(({ id }) => id === ranking.check?.id);
          if (check === undefined) score.check2 += faultHit;
          else {
            const outcome = drawnOutcome(check, truth, uniform());
            const after = afterCheck(ranking, [{ check: check.id, outcome }]);
            const first = after.hypotheses[0]?.probability ?? 0;
            const level = after.hypotheses.filter((h) => h.probability > first * (1 - 1e-9));
            if (level.some(({ id }) => id === truth)) score.check2 += 1 / level.length;
          }
        }
      }
    }
    const others = [...wrong].sort((a, b) => b[1] - a[1]).map(([id, n]) => `${id} ${n}`);
    const { group2, fault2, check2, group1, fault1 } = score;
    const shown = [group2, fault2, check2, group1, fault1];
    console.log(
      `| ${kind} | ${shown.map((hits) => percent(hits, labs)).join(" | ")} | ${others.join(", ") || "–"} |`,
    );
    if (kind === "printer-at-fault") continue;
    for (const key of [line, "all"]) {
      const sums = total.get(key) ?? [0, 0, 0, 0, 0, 0];
      total.set(
        key,
        [...shown, labs].map((v, i) => v + (sums[i] ?? 0)),
      );
    }
  }
}
console.log(
  "\n| | group first, 2× | fault first, 2× | after the check, 2× | group first, 1× | fault first, 1× |",
);
console.log("|---|---|---|---|---|---|");
for (const [key, sums] of total) {
  const of = sums[5] ?? 0;
  console.log(
    `| ${key} (${of} labs) | ${sums
      .slice(0, 5)
      .map((hits) => percent(hits, of))
      .join(" | ")} |`,
  );
}
