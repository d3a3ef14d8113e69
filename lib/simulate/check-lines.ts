import { InputError, requireNumber, requireOneOf } from "../input/index.ts";
import { formatAreaM2 } from "../units/index.ts";
import { densityResponses } from "./density-response.ts";
import type { SimulatedBath, SimulatedLine } from "./simulated-line.ts";
import { HIGHEST_READING } from "./strip-densities.ts";
import { LAST_START_UP } from "./strip-schedule.ts";

/** Lets lines in whose numbers can be computed with and whose logs can be told apart. */
export function checkedLines(where: string, lines: unknown): readonly SimulatedLine[] {
  if (!Array.isArray(lines) || lines.length === 0) {
    throw new InputError(where, "lines", lines, "write a list of lines, such as simulatedLines");
  }
  lines.forEach((line, i) => {
    requireLine(where, `lines[${i}]`, line);
  });
  const checked = lines as readonly SimulatedLine[];
  const baths = checked.flatMap((line) => line.baths.map(({ id }) => id));
  requireOnce(where, "lines.id", checked, ({ id }) => id, "write each line once");
  requireOnce(
    where,
    "lines.process",
    checked,
    ({ process }) => process,
    "write one line a process: strips and work are told apart by their process",
  );
  requireOnce(where, "baths.id", baths, (id) => id, "give every bath of the lab an id of its own");
  return checked;
}

function requireLine(where: string, at: string, line: SimulatedLine): void {
  if (typeof line !== "object" || line === null) {
    throw new InputError(where, at, line, "write a line like those of simulatedLines");
  }
  requireWord(where, `${at}.id`, line.id);
  requireOneOf(where, `${at}.process`, line.process, Object.keys(densityResponses));
  requireList(where, `${at}.baths`, line.baths, "write its baths, the developer first");
  line.baths.forEach((bath, i) => {
    requireBath(where, `${at}.baths[${i}]`, bath, i === 0);
  });
  requireNumber(where, `${at}.areaM2PerDay`, line.areaM2PerDay, { min: 0, max: 1e5, unit: "m²" });
  requireList(where, `${at}.formats`, line.formats, 'write [{ format: "120", share: 1 }]');
  line.formats.forEach(({ format, share }, i) => {
    formatAreaM2(format);
    requireNumber(where, `${at}.formats[${i}].share`, share, { above: 0, max: 1 });
  });
  if (typeof line.reference !== "object" || line.reference === null) {
    const advice = "write the densities of its reference strip by patch";
    throw new InputError(where, `${at}.reference`, line.reference, advice);
  }
  for (const [patch, three] of Object.entries(line.reference)) {
    for (const colour of ["red", "green", "blue"] as const) {
      const argument = `${at}.reference.${patch}.${colour}`;
      requireNumber(where, argument, three?.[colour], { min: 0, max: HIGHEST_READING });
    }
  }
  const { startUp } = line;
  if (!/^([01]\d|2[0-3]):[0-5]\d$/.test(startUp) || startUp > LAST_START_UP) {
    const advice = `write the time of the first strip as HH:MM, no later than ${LAST_START_UP}`;
    throw new InputError(where, `${at}.startUp`, startUp, advice);
  }
}

function requireBath(where: string, at: string, bath: SimulatedBath, developer: boolean): void {
  requireWord(where, `${at}.id`, bath?.id);
  requireWord(where, `${at}.role`, bath.role);
  requireNumber(where, `${at}.volumeL`, bath.volumeL, { above: 0, unit: "L" });
  requireNumber(where, `${at}.setTemperatureC`, bath.setTemperatureC, {
    min: 5,
    max: 60,
    unit: "°C",
  });
  if (bath.rateMlPerM2 !== undefined || developer) {
    requireNumber(where, `${at}.rateMlPerM2`, bath.rateMlPerM2, {
      above: 0,
      unit: "mL/m²",
      hint: developer ? "the first bath is the developer, which is replenished" : "or leave it out",
    });
  }
  if (bath.settingMlPerStroke === undefined) return;
  requireNumber(where, `${at}.settingMlPerStroke`, bath.settingMlPerStroke, {
    above: 0,
    unit: "mL",
  });
}

function requireWord(where: string, argument: string, value: unknown): void {
  if (typeof value === "string" && value.trim() !== "") return;
  throw new InputError(where, argument, value, "write a word");
}

function requireList(where: string, argument: string, value: unknown, advice: string): void {
  if (Array.isArray(value) && value.length > 0) return;
  throw new InputError(where, argument, value, advice);
}

function requireOnce<T>(
  where: string,
  argument: string,
  all: readonly T[],
  of: (each: T) => string,
  advice: string,
): void {
  const twice = all.find((each, i) => all.findIndex((other) => of(other) === of(each)) < i);
  if (twice !== undefined) throw new InputError(where, argument, of(twice), advice);
}
