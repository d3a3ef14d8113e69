import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import type { LoggedBath } from "../logs/temperature-log.ts";
import type { LabDescription } from "./lab-description.ts";
import { labProblems } from "./lab-problems.ts";

/**
 * Reads a lab's description of itself (`lab.json`): its lines with their baths, its pumps, the
 * formats it takes and the files of its logs. Volumes in L, temperatures in °C, times in min,
 * settings in mL per stroke, rates in mL/m².
 *
 * @param json the text of a JSON file, or the object it holds
 * @param options.file the file's name, for what is said of it
 * @returns the description
 * @throws InputError that lists everything that is wrong at once
 *
 * @example
 * parseLabDescription({ name: "Shed", lines: [], pumps: [], files: { stripBatches: "batches.csv" } }).name // => "Shed"
 */
export function parseLabDescription(
  json: unknown,
  options: { readonly file?: string } = {},
): LabDescription {
  const where = "parseLabDescription";
  const name = options.file ?? "description";
  const value = typeof json === "string" ? parsed(where, name, json) : json;
  const problems = labProblems(value);
  if (problems.length === 0) return value as LabDescription;
  throw new InputError(where, name, "unsound", `mend this: ${problems.join("; ")}`);
}

/**
 * The baths and dryers of a lab with their set temperatures, as `parseTemperatureLog` takes them.
 *
 * @param lab a lab's description
 * @returns one entry for each bath and dryer, in the order of the lines
 *
 * @example
 * loggedBaths({ name: "Shed", lines: [], pumps: [], files: { stripBatches: "batches.csv" } }) // => []
 */
export function loggedBaths(lab: LabDescription): readonly LoggedBath[] {
  requireObject("loggedBaths", "lab", lab, "an object with name, lines, pumps, …");
  requireEntries("loggedBaths", "lines", lab.lines);
  return lab.lines
    .flatMap(({ baths, dryer }) => (dryer === undefined ? [...baths] : [...baths, dryer]))
    .map(({ id, setTemperatureC }) => ({ id, setTemperatureC }));
}

function parsed(where: string, name: string, text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\ufeff/, ""));
  } catch (cause) {
    const why = cause instanceof Error ? cause.message : String(cause);
    throw new InputError(where, name, text.slice(0, 40), `write a JSON object (${why})`);
  }
}
