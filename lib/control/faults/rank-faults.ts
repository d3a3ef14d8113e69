import { Matrix } from "ml-matrix";
import { requireEntries, requireObject } from "../../input/index.ts";
import { faultChecks } from "./fault-check.ts";
import { courseShapes } from "./fault-courses.ts";
import type { FaultEvidence } from "./fault-evidence.ts";
import { groupsOf, rankedFaults } from "./fault-posterior.ts";
import type { FaultRanking } from "./fault-ranking.ts";
import { faultTableOf } from "./fault-tables.ts";
import { rankingCautions, rankingSentence } from "./fault-words.ts";
import { courseMeans } from "./hypothesis-evidence.ts";
import { logStatements } from "./log-words.ts";
import { checkedOptions, type RankFaultsOptions } from "./rank-faults-options.ts";
import { faultResidual, readingEvidence } from "./reading-evidence.ts";
import { requireFaultEvidence } from "./require-fault-evidence.ts";
import { requireLabLogs } from "./require-lab-logs.ts";
import { separatingCheck } from "./separating-check.ts";

/**
 * Ranks the faults of a process by how well they explain the deviations of the last strips.
 *
 * A fault of size a ≥ 0 with signature s (largest reading on its limit at a = 1), scatter C of the
 * signature and course g (step, gradual, single strip) gives `y_i = a·g_i·(s + ε) + n_i`,
 * ε ~ N(0, C), n ~ N(0, Σ). Its evidence is integrated over all sizes,
 * `∫₀^∞ N(ȳ; a·s, a²·C + Σ/N) p(a) da` with ȳ = gᵀK⁻¹y/N, N = gᵀK⁻¹g, K_ij = ρ^|i−j| + w, and p(a)
 * a Rayleigh density, and averaged over the courses; so a signature that could fit anything is held against itself. With prior
 * probabilities this gives posterior ones, beside "none of these" (deviations of any pattern, of
 * stated scale) and "nothing wrong" (noise alone). The lab's own logs (`options.logs`, from `labLogs`)
 * multiply each fault's evidence, course by course, by what they say of it since that course began.
 *
 * @param evidence deviations of the last 1 to 60 strips and noise covariance, from `faultEvidence` or
 * written by hand; in density
 * @param options table, frequencies, priors, scales, checks, logs
 * @returns faults and groups with probabilities that sum to 1 with the two others, sizes in multiples
 * of the limit, what each reading says, what stays unexplained, and the check to make first
 * @throws InputError for a process without table, an unknown fault, a singular covariance, shapes
 * that do not agree, numbers that are not finite
 *
 * @example
 * const components = (["red", "green", "blue"] as const).flatMap((colour) => [
 *   { parameter: "ld", name: "LD", colour, limit: 0.06 },
 *   { parameter: "hdLessLd", name: "HD − LD", colour, limit: 0.07 },
 * ]);
 * const noise = components.map((_, i) => components.map((_, j) => (i === j ? 0.01 ** 2 : 0)));
 * const low = components.map(({ parameter }) => (parameter === "ld" ? -0.12 : -0.08));
 * const takenAt = ["2026-08-13T07:10", "2026-08-14T07:10"];
 * const window = { process: "colour-negative", components, noise, takenAt, deviations: [low, low] };
 * rankFaults({ ...window, lagOne: 0, wander: 0.1, assumptions: [], warnings: [] }).leading // => "under-active"
 *
 * Source: model comparison by marginal likelihood, R. E. Kass and A. E. Raftery, Journal of the
 * American Statistical Association 90 (1995) 773–795; directions: see the tables.
 */
export function rankFaults(evidence: FaultEvidence, options: RankFaultsOptions = {}): FaultRanking {
  const where = "rankFaults";
  requireObject(where, "evidence", evidence, "an object with process, components, takenAt, …");
  for (const list of ["takenAt", "assumptions", "warnings"] as const) {
    requireEntries(where, `evidence.${list}`, evidence[list], "a list of texts");
  }
  const table = options.table ?? faultTableOf(where, evidence.process);
  const checked = checkedOptions(where, table, options);
  const ready = requireFaultEvidence(where, evidence, table);
  const { components, deviations, lagOne, wander, takenAt, noise } = ready.evidence;
  const courses = courseMeans(deviations, courseShapes(deviations.length), { lagOne, wander });
  const window = { noiseRoot: ready.noiseRoot, courses, sizeScale: checked.sizeScale };
  const checks = options.checks ?? faultChecks;
  const logs = requireLabLogs(where, options.logs, checks, takenAt);
  const posterior = rankedFaults({ table, components, window, takenAt, options: checked, logs });
  const { faults, noneOfThese, nothingWrong } = posterior;
  const groups = groupsOf(table, faults);
  const [first, second] = groups;
  const top = first?.probability ?? 0;
  const [leading, probability] =
    top >= noneOfThese && top >= nothingWrong && first !== undefined
      ? [first, top]
      : noneOfThese >= nothingWrong
        ? (["none-of-these", noneOfThese] as const)
        : (["nothing-wrong", nothingWrong] as const);
  const fittedOf = (fault: string | undefined) =>
    posterior.fitted(fault, new Matrix(noise.map((row) => [...row])));
  const best = fittedOf(first?.faults[0]);
  const next = fittedOf(second?.faults[0]);
  const residual = faultResidual(best);
  const hypotheses = [
    ...faults.map(({ id, name, probability: p }) => ({ id, name, probability: p })),
    { id: "none-of-these", name: "none of these", probability: noneOfThese },
    { id: "nothing-wrong", name: "nothing wrong", probability: nothingWrong },
  ];
  const fitted = fittedOf(faults[0]?.id);
  const course = { fault: faults[0]?.id ?? "", course: fitted.best.course.shape };
  const statements = logStatements(logs, table, takenAt, course);
  // What a log has told since is no new check.
  const told = new Set(statements.map((each) => each.check));
  const check = separatingCheck(
    hypotheses,
    checks.filter(({ id }) => !told.has(id)),
  );
  const isFault = typeof leading !== "string";
  const likely = faults.filter((fault) => fault.probability > 0.05);
  return {
    process: evidence.process,
    faults,
    groups,
    noneOfThese,
    nothingWrong,
    leading: isFault ? leading.id : leading,
    evidenceFor: first?.faults[0] ?? "",
    evidence: readingEvidence(best),
    next: second?.faults[0] ?? null,
    evidenceOfNext: second === undefined ? [] : readingEvidence(next),
    residual,
    logs: statements,
    check,
    sentence: rankingSentence(leading, probability, faults, check, statements.length > 0),
    assumptions: [
      ...evidence.assumptions,
      `one fault at a time; sizes by a Rayleigh density with mode ${checked.sizeScale}, in multiples of the limit`,
      `beforehand: nothing wrong ${checked.nothingWrong}, a fault the table lacks ${checked.noneOfThese}, the rest shared among ${table.faults.length} faults${options.frequencies ? " by their frequencies" : " evenly"}`,
      ...(logs.length > 0
        ? [
            "each log is a check already made, independent of the others given the fault; how far a log can be wrong was judged (common practice, no source)",
          ]
        : []),
      `a fault the table lacks moves each reading by about ${checked.diffuseScale} times its limit at size 1`,
      ...(illustrative(table)
        ? [
            "sizes of the signatures are illustrative; directions are published where a source is named",
          ]
        : []),
    ],
    warnings: [
      ...evidence.warnings,
      ...(options.logs?.warnings ?? []),
      ...(ready.leftOut.length > 0
        ? [`no signature speaks of ${ready.leftOut.join("; ")}; left out`]
        : []),
      ...(deviations.length === 1
        ? [
            "one strip alone does not tell a mishandled strip from a fault of the process; run another",
          ]
        : []),
      ...(isFault && residual.probability < 0.01
        ? [
            `the leading fault does not explain all of it (chi-square ${residual.chiSquare.toFixed(1)} with ${residual.degreesOfFreedom} degrees of freedom); perhaps there are two faults at once`,
          ]
        : []),
    ],
    cautions: rankingCautions(new Set(likely.map(({ place }) => place))),
  };
}

function illustrative(table: {
  readonly patterns: Readonly<Record<string, { readonly howObtained: string }>>;
}): boolean {
  return Object.values(table.patterns).some(({ howObtained }) => howObtained === "illustrative");
}
