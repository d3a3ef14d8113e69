import { Matrix } from "ml-matrix";
import type { FaultComponent } from "./fault-component.ts";
import type { CourseShape } from "./fault-courses.ts";
import type { FaultGroup, RankedFault } from "./fault-ranking.ts";
import type { FaultCourse, FaultTable } from "./fault-table.ts";
import {
  type CourseEvidence,
  evidenceByCourse,
  faultLogEvidence,
  logSum,
  type Window,
} from "./hypothesis-evidence.ts";
import type { WeighedLog } from "./log-words.ts";
import { patternSignature, type Signature } from "./pattern-signature.ts";
import type { CheckedOptions } from "./rank-faults-options.ts";
import type { FittedPattern } from "./reading-evidence.ts";

/** What the posterior is computed from. */
export interface PosteriorInput {
  readonly table: FaultTable;
  readonly components: readonly FaultComponent[];
  readonly window: Window;
  readonly takenAt: readonly string[];
  readonly options: CheckedOptions;
  readonly logs: readonly WeighedLog[];
}

const courseWords = { step: "step", gradual: "gradual", singleStrip: "single strip" } as const;
/** How a fault that nobody listed may come. */
const anyCourse = { step: 0.5, gradual: 0.25, singleStrip: 0.25 };

/** Posterior probabilities of all faults, of none of these, and of nothing wrong. */
export function rankedFaults(input: PosteriorInput) {
  const { table, components, window, takenAt, options, logs } = input;
  const logsOf = (id: string) => (course: CourseShape) =>
    logs.reduce((sum, { term }) => sum + term(id, course), 0);
  const patterns = new Map<string, { signature: Signature; by: readonly CourseEvidence[] }>();
  for (const [id, pattern] of Object.entries(table.patterns)) {
    const signature = patternSignature(pattern, table, components);
    const courses = table.faults.filter((each) => each.pattern === id).map(({ course }) => course);
    const kinds = kindsOf(courses);
    if (kinds.size === 0) continue;
    patterns.set(id, { signature, by: evidenceByCourse(window, signature, kinds) });
  }
  const scored = table.faults.flatMap((entry) => {
    const pattern = patterns.get(entry.pattern);
    if (pattern === undefined) return [];
    const { logEvidence, best } = faultLogEvidence(pattern.by, entry.course, logsOf(entry.id));
    if (best === undefined) return [];
    const prior = options.priorOf[entry.id] ?? 0;
    return [{ entry, logEvidence, best, log: logEvidence + Math.log(prior) }];
  });
  const anything = diffuseSignature(components, options.diffuseScale);
  const diffuse = evidenceByCourse(window, anything, kindsOf([anyCourse]));
  const none = faultLogEvidence(diffuse, anyCourse, logsOf("none-of-these"));
  const noneLog = none.logEvidence + Math.log(options.noneOfThese);
  const nothingLog = Math.log(options.nothingWrong) + quietLogs(window, logsOf("nothing-wrong"));
  const top = Math.max(noneLog, nothingLog, ...scored.map(({ log }) => log));
  const share = (log: number) => Math.exp(log - top);
  const total = scored.reduce((s, { log }) => s + share(log), share(noneLog) + share(nothingLog));
  const faults: RankedFault[] = scored
    .map(({ entry, logEvidence, best, log }) => ({
      id: entry.id,
      name: entry.name,
      group: entry.pattern,
      probability: share(log) / total,
      logEvidence,
      size: best.size,
      sizeSd: best.sizeSd,
      course: courseWords[best.course.shape.kind],
      since: takenAt[best.course.shape.from] ?? "",
      place: entry.place,
      confirm: entry.confirm,
      remedy: entry.remedy,
    }))
    .sort((a, b) => b.probability - a.probability);
  const fitted = (fault: string | undefined, noise: Matrix): FittedPattern => {
    const found = scored.find(({ entry }) => entry.id === fault) ?? scored[0];
    const signature = patterns.get(found?.entry.pattern ?? "")?.signature;
    const best = found?.best;
    if (signature === undefined || best === undefined) throw new Error("a table without faults");
    return { components, noise, signature, best, sizeScale: options.sizeScale };
  };
  return {
    faults,
    noneOfThese: share(noneLog) / total,
    nothingWrong: share(nothingLog) / total,
    fitted,
  };
}

/** What the logs say if nothing is wrong: an instrument may have drifted at any moment. */
function quietLogs({ courses }: Window, logs: (course: CourseShape) => number): number {
  const steps = courses.filter(({ shape }) => shape.kind === "step");
  return logSum(steps.map(({ shape }) => ({ log: logs(shape), weight: shape.share })));
}

function kindsOf(courses: readonly FaultCourse[]): ReadonlySet<string> {
  const used = courses.flatMap((course) =>
    Object.entries(course)
      .filter(([, share]) => share > 0)
      .map(([kind]) => kind),
  );
  return new Set(used);
}

/** Faults by pattern, most likely group first. */
export function groupsOf(table: FaultTable, faults: readonly RankedFault[]): readonly FaultGroup[] {
  return Object.entries(table.patterns)
    .map(([id, { words }]) => {
      const members = faults.filter(({ group }) => group === id);
      const probability = members.reduce((sum, each) => sum + each.probability, 0);
      return { id, words, probability, faults: members.map((each) => each.id) };
    })
    .filter((group) => group.faults.length > 0)
    .sort((a, b) => b.probability - a.probability);
}

/** Any pattern: each reading about its limit, the colours of a parameter half together. */
function diffuseSignature(components: readonly FaultComponent[], scale: number): Signature {
  const p = components.length;
  const covariance = new Matrix(p, p);
  components.forEach((one, i) => {
    components.forEach((other, j) => {
      if (one.parameter !== other.parameter) return;
      const together = i === j ? 1 : 0.5;
      covariance.set(i, j, together * scale * scale * one.limit * other.limit);
    });
  });
  return { mean: components.map(() => 0), covariance };
}
