import { InputError, requireNumber } from "../input/index.ts";

/** Two thousand years; a longer time is a slip of the pen. */
const LONGEST_MIN = 1e9;
const BOUNDS = { min: 0, max: LONGEST_MIN, unit: "min" };

const CLOCK = /^(?:(\d+):)?(\d+):(\d{2})$/;
const WORDS =
  /^(?:(\d+(?:\.\d+)?)\s*(?:h|hr|hours?))?\s*(?:(\d+(?:\.\d+)?)\s*(?:min|mins|minutes?|m|′|'))?\s*(?:(\d+(?:\.\d+)?)\s*(?:s|sec|secs|seconds?|″|"))?$/;

/**
 * Minutes from a time as a person writes it.
 *
 * @param time `"9:30"` (minutes:seconds), `"1:05:00"` (hours:minutes:seconds), `"9 min 30 s"`,
 *   `"570 s"`, `"9.5 min"`, `"9"`, or a number of minutes; from 0 to 1e9
 * @returns minutes as a decimal number
 * @throws InputError for text that can be read two ways, as `"9.30"` (refused with both), for 60 or
 *   more seconds after a colon, and for anything else that is not a time
 *
 * @example
 * parseMinutes("9:30") // => 9.5
 * parseMinutes("9 min 30 s") // => 9.5
 * parseMinutes("570 s") // => 9.5
 */
export function parseMinutes(time: string | number): number {
  const where = "parseMinutes";
  if (typeof time === "number") return requireNumber(where, "time", time, BOUNDS);
  if (typeof time !== "string") {
    throw new InputError(where, "time", time, 'write "9:30", "9 min 30 s" or 9.5');
  }
  const text = time.trim().toLowerCase();
  const minutes = minutesIn(time, text);
  if (minutes === undefined) throw new InputError(where, "time", time, adviceFor(text));
  if (minutes <= LONGEST_MIN) return minutes;
  throw new InputError(where, "time", time, `write at most ${LONGEST_MIN} min`);
}

function minutesIn(time: string, text: string): number | undefined {
  const clock = CLOCK.exec(text);
  if (clock) return fromClock(time, clock);
  const words = WORDS.exec(text);
  if (words && text !== "") {
    const [hours, minutes, seconds] = [words[1], words[2], words[3]].map((part) =>
      Number(part ?? 0),
    );
    return (hours ?? 0) * 60 + (minutes ?? 0) + (seconds ?? 0) / 60;
  }
  return /^\d+$/.test(text) ? Number(text) : undefined;
}

function fromClock(time: string, parts: RegExpExecArray): number {
  const [hours, minutes, seconds] = [parts[1], parts[2], parts[3]].map((part) => Number(part ?? 0));
  const tooMany = (seconds ?? 0) >= 60 || (parts[1] !== undefined && (minutes ?? 0) >= 60);
  if (tooMany) {
    throw new InputError("parseMinutes", "time", time, "write less than 60 after each colon");
  }
  return (hours ?? 0) * 60 + (minutes ?? 0) + (seconds ?? 0) / 60;
}

function adviceFor(text: string): string {
  const decimal = /^(\d+)[.,](\d+)$/.exec(text);
  if (decimal) {
    const [, whole = "", part = ""] = decimal;
    const asSeconds = Number(part.length === 1 ? `${part}0` : part);
    const decimalReading = `"${whole}.${part} min" (${formatMinutes(Number(`${whole}.${part}`))})`;
    return asSeconds < 60 && part.length <= 2
      ? `write "${whole}:${String(asSeconds).padStart(2, "0")}" (minutes and seconds) or ${decimalReading}`
      : `write ${decimalReading}`;
  }
  const shortSeconds = /^(\d+):(\d)$/.exec(text);
  if (shortSeconds) {
    return `write "${shortSeconds[1]}:0${shortSeconds[2]}" or "${shortSeconds[1]}:${shortSeconds[2]}0"`;
  }
  if (text.startsWith("-")) return "write a time of at least 0";
  return 'write "9:30", "9 min 30 s", "570 s" or a number of minutes';
}

/**
 * Minutes as a clock shows them: `m:ss`, or `h:mm:ss` from one hour on, to the nearest second.
 *
 * @param minutes from 0 to 1e9
 * @returns text; `parseMinutes` reads it back
 * @throws InputError for a negative number or one that is not finite
 *
 * @example
 * formatMinutes(9.5) // => "9:30"
 * formatMinutes(65) // => "1:05:00"
 */
export function formatMinutes(minutes: number): string {
  const total = Math.round(requireNumber("formatMinutes", "minutes", minutes, BOUNDS) * 60);
  const two = (value: number) => String(value).padStart(2, "0");
  const hours = Math.floor(total / 3600);
  const rest = total - hours * 3600;
  const [m, s] = [Math.floor(rest / 60), rest % 60];
  return hours > 0 ? `${hours}:${two(m)}:${two(s)}` : `${m}:${two(s)}`;
}
