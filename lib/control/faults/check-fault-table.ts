import { limitOrigins } from "../process/check-limits.ts";
import { type Fields, isFields, isText, shown, wordIn } from "../process/json-words.ts";

const colours = ["red", "green", "blue"] as const;
const scatterNames = ["printed", "implied", "unprinted", "colours", "open", "floor"] as const;
const courseNames = ["step", "gradual", "singleStrip"] as const;

/** Everything that is wrong with a table of faults, one sentence each; empty if it is sound. */
export function faultTableProblems(json: unknown): readonly string[] {
  if (!isFields(json))
    return [`the file holds ${shown(json)}; write an object { "process": …, … }`];
  const problems: string[] = [];
  for (const field of ["process", "name", "note"]) {
    if (!isText(json[field])) problems.push(`${field} is ${shown(json[field])}; write some text`);
  }
  for (const [id, limit] of Object.entries(isFields(json.limits) ? json.limits : { limits: 0 })) {
    if (!(typeof limit === "number" && limit > 0 && limit < 6)) {
      problems.push(`limits.${id} is ${shown(limit)}; write a density greater than 0`);
    }
  }
  const scatter = isFields(json.scatter) ? json.scatter : {};
  for (const name of scatterNames) {
    if (!isShare(scatter[name], 2)) {
      problems.push(`scatter.${name} is ${shown(scatter[name])}; write a share from 0 to 2`);
    }
  }
  const patterns = isFields(json.patterns) ? json.patterns : {};
  const ids = Object.keys(patterns);
  if (ids.length === 0) problems.push("patterns is empty or missing; write at least one");
  for (const id of ids) patternProblems(problems, `patterns.${id}`, patterns[id]);
  const faults = Array.isArray(json.faults) ? (json.faults as readonly unknown[]) : [];
  if (faults.length === 0) problems.push("faults is empty or missing; write at least one");
  const seen = new Set<unknown>();
  faults.forEach((fault, i) => {
    faultProblems(problems, `faults[${i}]`, fault, ids);
    const id = isFields(fault) ? fault.id : undefined;
    if (seen.has(id)) problems.push(`faults[${i}].id ${shown(id)} stands twice`);
    seen.add(id);
  });
  return problems;
}

function patternProblems(problems: string[], at: string, pattern: unknown): void {
  if (!isFields(pattern)) {
    problems.push(`${at} is ${shown(pattern)}; write an object`);
    return;
  }
  if (!isText(pattern.words)) problems.push(`${at}.words is missing; say what it looks like`);
  wordIn(problems, `${at}.howObtained`, pattern.howObtained, limitOrigins);
  const shape = shapeProblems(problems, `${at}.shape`, pattern.shape);
  const factors = Array.isArray(pattern.factors) ? (pattern.factors as readonly unknown[]) : [];
  factors.forEach((factor, i) => {
    const here = `${at}.factors[${i}]`;
    const fields: Fields = isFields(factor) ? factor : {};
    shapeProblems(problems, `${here}.shape`, fields.shape);
    wordIn(problems, `${here}.colours`, fields.colours, ["together", "each"]);
    if (!(isShare(fields.sd, 6) && fields.sd !== 0)) {
      problems.push(`${here}.sd is ${shown(fields.sd)}; write a density greater than 0`);
    }
  });
  if (!shape && factors.length === 0 && pattern.whole === undefined) {
    problems.push(
      `${at} has no density anywhere; write a shape, or factors if it may go either way`,
    );
  }
  for (const [name, share] of Object.entries(isFields(pattern.scatter) ? pattern.scatter : {})) {
    wordIn(problems, `${at}.scatter, the field`, name, scatterNames);
    if (!isShare(share, 2)) {
      problems.push(`${at}.scatter.${name} is ${shown(share)}; write a share from 0 to 2`);
    }
  }
  const published = Array.isArray(pattern.published) ? pattern.published : [];
  (published as readonly unknown[]).forEach((sign, i) => {
    const here = `${at}.published[${i}]`;
    const fields: Fields = isFields(sign) ? sign : {};
    wordIn(problems, `${here}.sign`, fields.sign, ["+", "-"]);
    wordIn(problems, `${here}.as`, fields.as, ["printed", "implied"]);
    wordIn(problems, `${here}.howObtained`, fields.howObtained, limitOrigins);
    if (!isText(fields.source)) problems.push(`${here}.source is missing; say where it is from`);
    const values = isFields(pattern.shape) ? pattern.shape[String(fields.parameter)] : undefined;
    const against = isFields(values)
      ? Object.values(values).some((v) => Number(v) * (fields.sign === "-" ? -1 : 1) < 0)
      : true;
    if (against && pattern.whole === undefined) {
      problems.push(
        `${here}: the shape of ${shown(fields.parameter)} does not go the published way`,
      );
    }
  });
}

function shapeProblems(problems: string[], at: string, shape: unknown): boolean {
  if (!isFields(shape)) {
    problems.push(`${at} is ${shown(shape)}; write { "ld": { "red": …, "green": …, "blue": … } }`);
    return false;
  }
  let any = false;
  for (const [parameter, values] of Object.entries(shape)) {
    if (!isFields(values)) {
      problems.push(`${at}.${parameter} is ${shown(values)}; write { "red": …, … }`);
      continue;
    }
    for (const [colour, value] of Object.entries(values)) {
      wordIn(problems, `${at}.${parameter}, the colour`, colour, colours);
      if (typeof value !== "number" || !Number.isFinite(value) || Math.abs(value) > 6) {
        problems.push(`${at}.${parameter}.${colour} is ${shown(value)}; write a density`);
      } else if (value !== 0) any = true;
    }
  }
  return any;
}

function faultProblems(
  problems: string[],
  at: string,
  fault: unknown,
  patterns: readonly string[],
): void {
  if (!isFields(fault)) {
    problems.push(`${at} is ${shown(fault)}; write an object`);
    return;
  }
  for (const field of ["id", "name", "place", "confirm", "remedy"]) {
    if (!isText(fault[field])) problems.push(`${at}.${field} is missing; write some text`);
  }
  wordIn(problems, `${at}.pattern`, fault.pattern, patterns);
  const course: Fields = isFields(fault.course) ? fault.course : {};
  const shares = courseNames.map((name) => course[name]);
  const sum = shares.reduce<number>((total, share) => total + Number(share), 0);
  if (!shares.every((share) => isShare(share, 1)) || Math.abs(sum - 1) > 1e-9) {
    problems.push(`${at}.course does not sum to 1; write step, gradual and singleStrip`);
  }
}

function isShare(value: unknown, most: number): value is number {
  return typeof value === "number" && value >= 0 && value <= most;
}
