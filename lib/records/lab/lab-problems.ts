import { closestWord } from "../../input/index.ts";
import { typedVolumeAdvice } from "../../units/index.ts";
import { isDay } from "../cells/calendar.ts";

/** A JSON object, not yet known. */
type Fields = Readonly<Record<string, unknown>>;

/** Everything that is wrong with what should be a lab description, each with its place. */
export function labProblems(json: unknown): readonly string[] {
  const problems: string[] = [];
  const lab = fieldsOf(json, "the description", problems);
  if (lab === undefined) return problems;
  needText(lab, "", ["name"], problems);
  if (lab.today !== undefined && !(typeof lab.today === "string" && isDay(lab.today))) {
    problems.push(`today is ${shown(lab.today)}; write a day: "2026-08-14", or leave it out`);
  }
  const lines = listOf(lab, "", "lines", problems);
  const pumps = listOf(lab, "", "pumps", problems);
  const baths = lines.flatMap((line, i) => lineProblems(line, `lines[${i}]`, problems));
  for (const [i, pump] of pumps.entries()) {
    const at = `pumps[${i}]`;
    const fields = fieldsOf(pump, at, problems);
    if (fields === undefined) continue;
    needText(fields, at, ["id", "bath"], problems);
    needNumber(fields, at, ["settingMlPerStroke", "rateMlPerM2"], 0, problems);
    if (typeof fields.bath === "string" && !baths.includes(fields.bath)) {
      problems.push(`${at}.bath is ${shown(fields.bath)}; write one of ${baths.join(", ")}`);
    }
  }
  const files = fieldsOf(lab.files, "files", problems);
  if (files !== undefined) needText(files, "files", ["stripBatches"], problems);
  twice(baths, "bath", problems);
  twice(idsOf(lines), "line", problems);
  twice(idsOf(pumps), "pump", problems);
  return problems;
}

/** Checks one line; gives the ids of its baths. */
function lineProblems(json: unknown, at: string, problems: string[]): readonly string[] {
  const line = fieldsOf(json, at, problems);
  if (line === undefined) return [];
  needText(line, at, ["id", "name", "process", "strips"], problems);
  for (const name of ["patches", "formats"]) {
    const list = listOf(line, at, name, problems);
    if (!list.every((each) => typeof each === "string" && each !== "")) {
      problems.push(`${at}.${name} must be a list of words`);
    }
  }
  const places = listOf(line, at, "baths", problems).map((bath, i) => {
    const where = `${at}.baths[${i}]`;
    const fields = placeProblems(bath, where, problems);
    if (fields === undefined) return "";
    needText(fields, where, ["role"], problems);
    needNumber(fields, where, ["volumeL"], 0, problems);
    return String(fields.id);
  });
  if (line.dryer !== undefined) placeProblems(line.dryer, `${at}.dryer`, problems);
  return places;
}

function placeProblems(json: unknown, at: string, problems: string[]): Fields | undefined {
  const place = fieldsOf(json, at, problems);
  if (place === undefined) return undefined;
  needText(place, at, ["id"], problems);
  needNumber(place, at, ["setTemperatureC"], -Number.MAX_VALUE, problems);
  needNumber(place, at, ["timeMin"], 0, problems);
  return place;
}

function fieldsOf(json: unknown, at: string, problems: string[]): Fields | undefined {
  if (typeof json === "object" && json !== null && !Array.isArray(json)) return json as Fields;
  problems.push(`${at} is ${shown(json)}; write an object {…}`);
  return undefined;
}

function listOf(fields: Fields, at: string, name: string, problems: string[]): readonly unknown[] {
  const list = fields[name];
  if (Array.isArray(list)) return list;
  problems.push(`${path(at, name)} is ${shown(list)}; write a list […]`);
  return [];
}

function needText(fields: Fields, at: string, names: readonly string[], problems: string[]): void {
  for (const name of names) {
    const text = fields[name];
    if (typeof text === "string" && text.trim() !== "") continue;
    problems.push(`${path(at, name)} is ${shown(text)}; write a text${misspelt(fields, name)}`);
  }
}

function needNumber(
  fields: Fields,
  at: string,
  names: readonly string[],
  above: number,
  problems: string[],
): void {
  for (const name of names) {
    const value = fields[name];
    if (typeof value === "number" && Number.isFinite(value) && value > above) continue;
    const allowed = above === 0 ? "a number greater than 0" : "a number";
    const unit = name.endsWith("L") ? "L" : name === "settingMlPerStroke" ? "mL" : undefined;
    const volume = unit === undefined ? undefined : typedVolumeAdvice(value, unit);
    const advice = volume ?? `write ${allowed}${digitsMeant(value)}`;
    problems.push(`${path(at, name)} is ${shown(value)}; ${advice}`);
  }
}

/** The number in a text, as JSON writes it: without quotation marks, with a point. */
function digitsMeant(value: unknown): string {
  if (typeof value !== "string" || !/^-?\d+([.,]\d+)?$/.test(value.trim())) return "";
  return `: ${value.trim().replace(",", ".")}`;
}

/** Names the field that was probably meant, if one is missing. */
function misspelt(fields: Fields, name: string): string {
  if (fields[name] !== undefined) return "";
  const near = closestWord(name, Object.keys(fields));
  return near === undefined ? "" : ` (is it what ${shown(near)} holds?)`;
}

function idsOf(list: readonly unknown[]): readonly string[] {
  return list.map((each) => String((each as Fields | null)?.id ?? ""));
}

function twice(ids: readonly string[], what: string, problems: string[]): void {
  const doubled = new Set(ids.filter((id, i) => id !== "" && ids.indexOf(id) !== i));
  for (const id of doubled) problems.push(`the ${what} ${id} occurs twice; give each its own id`);
}

function path(at: string, name: string): string {
  return at === "" ? name : `${at}.${name}`;
}

function shown(value: unknown): string {
  return value === undefined ? "missing" : (JSON.stringify(value) ?? String(value)).slice(0, 60);
}
