import {
  afterCheck,
  type FaultCheck,
  type FaultRanking,
  faultChecks,
  rankFaults,
} from "wetside/control";
import { logsKept } from "./fewer-logs.ts";
import { kindsOf, rankedLabs, rankedLines, rightBy } from "./ranking-labs.ts";

// How often the true fault is ranked first in simulated labs. Run: npm run fault-ranking -- [labs] [line]

const labs = Number(process.argv[2] ?? 20);
const chosen = rankedLines.filter(({ line }) => line === (process.argv[3] ?? line));
const columns = [
  "group first, 2×",
  "fault first, 2×",
  "after the check, 2×",
  "fault first with logs, 2×",
  "group first, 1×",
  "fault first, 1×",
  "fault first with logs, 1×",
] as const;

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

/** The strict count after the proposed check, its outcome drawn as the table says of the true fault. */
function afterOneCheck(ranking: FaultRanking, truth: string, group: string, u: number): number {
  const check = faultChecks.find(({ id }) => id === ranking.check?.id);
  if (check === undefined) return rightBy(ranking, truth, group).fault;
  const outcome = drawnOutcome(check, truth, u);
  const after = afterCheck(ranking, [{ check: check.id, outcome }]);
  const first = after.hypotheses[0]?.probability ?? 0;
  const level = after.hypotheses.filter((h) => h.probability > first * (1 - 1e-9));
  return level.some(({ id }) => id === truth) ? 1 / level.length : 0;
}

function percent(hits: number, of: number): string {
  return of === 0 ? "–" : `${Math.round((100 * hits) / of)} %`;
}

const total = new Map<string, number[]>();
const kept = new Map<string, Map<string, number>>();
/** Counts a strict hit of a line by what logs it had. */
function count(line: string, what: string, hit: number): void {
  const byLine = kept.get(what) ?? new Map<string, number>();
  byLine.set(line, (byLine.get(line) ?? 0) + hit);
  kept.set(what, byLine);
}

for (const each of chosen) {
  const { line } = each;
  console.log(`\n| ${line}: true fault | ${columns.join(" | ")} | otherwise first with logs, 2× |`);
  console.log(`|---${columns.map(() => "|---").join("")}|---|`);
  for (const kind of kindsOf(each)) {
    const wrong = new Map<string, number>();
    const sums = columns.map(() => 0);
    for (let seed = 1; seed <= labs; seed++) {
      const shown = rankedLabs(each, kind, seed, [2, 1]).flatMap((lab, i) => {
        const { truth, group, alone, withLogs, uniform } = lab;
        const strips = rightBy(alone, truth, group);
        const { fault: logs, first } = rightBy(withLogs, truth, group);
        if (i > 0) return [strips.group, strips.fault, logs];
        const instead = first.length > 1 ? `even: ${first.join(" and ")}` : (first[0] ?? "");
        if (logs < 1) wrong.set(instead, (wrong.get(instead) ?? 0) + 1);
        const check = afterOneCheck(alone, truth, group, uniform());
        if (kind !== "printer-at-fault") {
          count(line, "strips alone", strips.fault);
          for (const [what, make] of Object.entries(logsKept)) {
            const ranking =
              what === "all logs"
                ? withLogs
                : rankFaults(lab.evidence, { logs: make(lab.logs, uniform) });
            count(line, what, rightBy(ranking, truth, group).fault);
          }
        }
        return [strips.group, strips.fault, check, logs];
      });
      for (const [i, value] of shown.entries()) sums[i] = (sums[i] ?? 0) + value;
    }
    const others = [...wrong].sort((a, b) => b[1] - a[1]).map(([id, n]) => `${id} ${n}`);
    const cells = sums.map((hits) => percent(hits, labs));
    console.log(`| ${kind} | ${cells.join(" | ")} | ${others.join(", ") || "–"} |`);
    if (kind === "printer-at-fault") continue;
    for (const key of [line, "all"]) {
      const before = total.get(key) ?? [...columns.map(() => 0), 0];
      total.set(
        key,
        [...sums, labs].map((value, i) => value + (before[i] ?? 0)),
      );
    }
  }
}
console.log(`\n| labs | ${columns.join(" | ")} |`);
console.log(`|---${columns.map(() => "|---").join("")}|`);
for (const [key, sums] of total) {
  const of = sums.at(-1) ?? 0;
  const cells = columns.map((_, i) => percent(sums[i] ?? 0, of));
  console.log(`| ${key} (${of} labs) | ${cells.join(" | ")} |`);
}

console.log(`\n| fault first, 2× | ${chosen.map(({ line }) => line).join(" | ")} |`);
console.log(`|---${chosen.map(() => "|---").join("")}|`);
for (const [what, byLine] of kept) {
  const cells = chosen.map(({ line }) => {
    return percent(byLine.get(line) ?? 0, total.get(line)?.at(-1) ?? 0);
  });
  console.log(`| ${what} | ${cells.join(" | ")} |`);
}
