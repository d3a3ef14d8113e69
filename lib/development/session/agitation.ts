import agitationData from "../../../data/session/agitation.json" with { type: "json" };
import { InputError, requireNumber, requireOneOf } from "../../input/index.ts";

/** How a closed tank is agitated; times count from the moment the tank is full. */
export interface AgitationScheme {
  readonly id: string;
  /** First bout, s; null means all the time. */
  readonly initialS: number | null;
  /** A bout begins every so many seconds; null means none after the first. */
  readonly everyS: number | null;
  /** Length of each later bout, s. */
  readonly forS: number | null;
  readonly how: string;
  readonly warning: string | null;
  readonly source: string;
  readonly howObtained: string;
}

/** A day; a longer step is a slip of the pen. */
const LONGEST_STEP_S = 86_400;

/** One bout of agitation, seconds after the tank was full. */
export interface AgitationMark {
  readonly fromS: number;
  readonly toS: number;
}

/**
 * The schemes that can be named, each with its source. A scheme of one's own is written as an
 * object of the same shape.
 *
 * @example
 * agitationSchemes[0]?.id // => "30 s, then 5 s a minute"
 *
 * Source: data/session/agitation.json, by record.
 */
export const agitationSchemes: readonly AgitationScheme[] = agitationData.schemes;

/** A scheme by name, or one's own, checked. */
export function requireAgitation(
  where: string,
  argument: string,
  given: string | AgitationScheme,
): AgitationScheme {
  if (typeof given === "string") {
    const ids = agitationSchemes.map((scheme) => scheme.id);
    const id = requireOneOf(where, argument, given, ids);
    const found = agitationSchemes.find((scheme) => scheme.id === id);
    if (found !== undefined) return found;
  }
  if (typeof given !== "object" || given === null) {
    throw new InputError(where, argument, given, "write a scheme's name or a scheme");
  }
  const bounds = { above: 0, unit: "s" };
  if (given.initialS !== null) requireNumber(where, `${argument}.initialS`, given.initialS, bounds);
  if (given.everyS === null) return given;
  requireNumber(where, `${argument}.everyS`, given.everyS, bounds);
  requireNumber(where, `${argument}.forS`, given.forS, { above: 0, max: given.everyS, unit: "s" });
  return given;
}

/**
 * When to agitate during a step: the first bout, then one every so many seconds, none while the
 * tank is being poured out.
 *
 * @param scheme name of one of `agitationSchemes`, or a scheme of one's own
 * @param timeS length of the step from tank full to tank empty, s, greater than 0, at most a day
 * @param pourOutS seconds at the end that go into pouring out, 0 up to `timeS`, default 10
 * @returns bouts in order, seconds after the tank was full; none overlaps the next
 * @throws InputError for an unknown scheme or times out of range
 *
 * @example
 * agitationMarks("30 s, then 5 s a minute", 180) // => [{ fromS: 0, toS: 30 }, { fromS: 60, toS: 65 }, { fromS: 120, toS: 125 }]
 *
 * Source: US Navy, Photography (Basic), NAVEDTRA 14209, ch. 10, roll film in small tanks.
 */
export function agitationMarks(
  scheme: string | AgitationScheme,
  timeS: number,
  pourOutS = 10,
): readonly AgitationMark[] {
  const where = "agitationMarks";
  const { initialS, everyS, forS } = requireAgitation(where, "scheme", scheme);
  requireNumber(where, "timeS", timeS, { above: 0, max: LONGEST_STEP_S, unit: "s" });
  requireNumber(where, "pourOutS", pourOutS, { min: 0, max: timeS, unit: "s" });
  const end = timeS - pourOutS;
  if (initialS === null) return end > 0 ? [{ fromS: 0, toS: end }] : [];
  const marks: AgitationMark[] = [];
  const add = (fromS: number, forSeconds: number) => {
    if (fromS < end) marks.push({ fromS, toS: Math.min(fromS + forSeconds, end) });
  };
  add(0, initialS);
  if (everyS === null || forS === null) return marks;
  const first = Math.max(1, Math.ceil(initialS / everyS));
  // A bout that would begin as the first one ends is part of it, so the next one counts.
  for (let k = first * everyS === initialS ? first + 1 : first; k * everyS < end; k++) {
    add(k * everyS, forS);
  }
  return marks;
}
