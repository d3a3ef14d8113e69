import { displayedAs } from "../figures/index.ts";
import { InputError, requireNumber } from "../input/index.ts";
import { type Answer, answerCode } from "./answer-code.ts";

/** What became of an answer to an exercise; shows its message in a notebook. */
export interface CheckedAnswer {
  readonly state: "right" | "not yet" | "not answered";
  readonly message: string;
}

/** How an answer is compared. */
export interface AnswerOptions {
  /** The right answer's code, from `answerCode`. */
  readonly code: string;
  /** A number is rounded to this; the same as for the code. Default 1. */
  readonly step?: number;
  /** How many steps a number may lie off, 0 (default) to 50. */
  readonly within?: number;
  /** Told to whoever is not there yet. */
  readonly hint?: string;
}

/**
 * Compares an answer to an exercise with the code of the right one.
 *
 * @param exercise name of the exercise, as given to `answerCode`
 * @param answer `NaN`, an empty word or an empty list is "not answered"
 * @param options the right answer's `code`, `step`, `within`, `hint`
 * @returns state and message; a wrong answer is no error
 * @throws InputError if the code is not one, or a number is out of range
 *
 * @example
 * checkAnswer("false alarms", 371, { code: answerCode("false alarms", 370), within: 1 }).state // => "right"
 */
export function checkAnswer(
  exercise: string,
  answer: Answer,
  options: AnswerOptions,
): CheckedAnswer {
  const where = "checkAnswer";
  const { code, step = 1, hint } = options;
  if (!/^[0-9a-f]{16}$/.test(code)) {
    const advice = "write the 16 digits that answerCode gives for the right answer";
    throw new InputError(where, "code", code, advice);
  }
  requireNumber(where, "step", step, { above: 0 });
  const within = requireNumber(where, "within", options.within ?? 0, {
    min: 0,
    max: 50,
    whole: true,
  });
  if (isOpen(answer)) return shown("not answered", "Not answered yet.");
  const tries = typeof answer === "number" ? around(answer, within, step) : [answer];
  if (allFinite(answer) && tries.some((each) => answerCode(exercise, each, { step }) === code)) {
    return shown("right", "Right.");
  }
  return shown("not yet", hint === undefined ? "Not yet." : `Not yet. ${hint}`);
}

/** False for a number divided by nothing: a wrong answer, and no error. */
function allFinite(answer: Answer): boolean {
  return partsOf(answer).every((part) => typeof part !== "number" || Number.isFinite(part));
}

function partsOf(answer: Answer): readonly (number | string)[] {
  return typeof answer === "object" ? answer : [answer];
}

function isOpen(answer: Answer): boolean {
  const parts = partsOf(answer);
  return (
    parts.length === 0 ||
    parts.some((part) => (typeof part === "number" ? Number.isNaN(part) : part.trim() === ""))
  );
}

/** The answer and its neighbours, step by step. */
function around(answer: number, within: number, step: number): number[] {
  return Array.from({ length: 2 * within + 1 }, (_, i) => answer + (i - within) * step);
}

function shown(state: CheckedAnswer["state"], message: string): CheckedAnswer {
  return displayedAs({ state, message }, { "text/plain": message });
}
