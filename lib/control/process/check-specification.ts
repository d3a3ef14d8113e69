import { stripColours } from "../strip.ts";
import { limitOrigins, limitsProblems } from "./check-limits.ts";
import { type Fields, isFields, isText, shown, wordIn } from "./json-words.ts";

/** Everything that is wrong with a process specification, one sentence each; empty if it is sound. */
export function specificationProblems(json: unknown): readonly string[] {
  if (!isFields(json)) return [`the file holds ${shown(json)}; write an object { "id": …, … }`];
  const problems: string[] = [];
  for (const field of ["id", "name", "densityStatus", "source"]) {
    if (!isText(json[field])) problems.push(`${field} is ${shown(json[field])}; write some text`);
  }
  wordIn(problems, "geometry", json.geometry, ["transmission", "reflection"]);
  wordIn(problems, "howObtained", json.howObtained, limitOrigins);
  const patches = isFields(json.patches) ? Object.keys(json.patches) : [];
  if (patches.length === 0) {
    problems.push('patches is empty or missing; write { "dMin": "unexposed", … }');
  }
  const parameters = Array.isArray(json.parameters) ? (json.parameters as readonly unknown[]) : [];
  if (parameters.length === 0) {
    problems.push("parameters is empty or missing; write a list of at least one parameter");
  }
  const ids = parameters.map((each) => (isFields(each) ? each.id : undefined));
  parameters.forEach((parameter, i) => {
    const id = ids[i];
    const at = `parameters[${i}]${isText(id) ? ` (${id})` : ""}`;
    if (!isFields(parameter)) {
      problems.push(`${at} is ${shown(parameter)}; write an object`);
      return;
    }
    for (const field of ["id", "name"]) {
      if (!isText(parameter[field])) {
        problems.push(`${at}.${field} is ${shown(parameter[field])}; write some text`);
      }
    }
    if (isText(id) && ids.indexOf(id) !== i) {
      problems.push(`${at}.id is used twice; give each parameter its own`);
    }
    parameterProblems(problems, at, parameter, patches, parameters);
    limitsProblems(problems, `${at}.limits`, parameter.limits, parameter.kind === "spread");
  });
  return problems;
}

function parameterProblems(
  problems: string[],
  at: string,
  parameter: Fields,
  patches: readonly string[],
  parameters: readonly unknown[],
): void {
  if (!wordIn(problems, `${at}.kind`, parameter.kind, ["patch", "difference", "spread"])) return;
  if (parameter.kind === "spread") {
    const measured = parameters.filter(isFields).filter((each) => each.kind !== "spread");
    const names = measured.map((each) => each.id).filter(isText);
    if (!wordIn(problems, `${at}.of`, parameter.of, names)) return;
    const of = measured.find((each) => each.id === parameter.of);
    if (Array.isArray(of?.colours) && of.colours.length < 2) {
      problems.push(`${at}.of has one colour only; a spread needs a parameter of two or three`);
    }
    return;
  }
  wordIn(problems, `${at}.patch`, parameter.patch, patches);
  if (parameter.kind === "difference") {
    wordIn(problems, `${at}.minus`, parameter.minus, patches);
    if (parameter.minus === parameter.patch) {
      problems.push(`${at}.minus is the same patch as ${at}.patch; write another`);
    }
  }
  const colours = Array.isArray(parameter.colours) ? (parameter.colours as unknown[]) : [];
  if (colours.length === 0) problems.push(`${at}.colours is empty; write ["red", "green", "blue"]`);
  colours.forEach((colour, j) => {
    wordIn(problems, `${at}.colours[${j}]`, colour, stripColours);
    if (colours.indexOf(colour) !== j) problems.push(`${at}.colours names ${shown(colour)} twice`);
  });
}
