import { typedVolumeAdvice } from "../../units/index.ts";
import type { ReadContext } from "../reading/log-shape.ts";

/** What one column of numbers holds. */
export interface NumberKind {
  /** What it is, for messages: `"density"`, `"temperature in °C"`. */
  readonly what: string;
  /** Smallest and largest value allowed. */
  readonly min: number;
  readonly max: number;
  /** Only whole numbers. */
  readonly whole?: boolean;
  /** What was probably meant by a number out of range. */
  readonly hint?: (value: number) => string | undefined;
}

/** What is wrong with a cell and what to write instead. */
export interface CellFault {
  readonly problem: string;
  readonly advice: string;
}

/** What is wrong with a well-formed number, if anything. */
export function rangeFault(value: number, kind: NumberKind): CellFault | undefined {
  const { what, min, max, whole = false, hint } = kind;
  if (value < min || value > max) {
    const meant = hint?.(value);
    const range = max === Number.MAX_SAFE_INTEGER ? `${min} or more` : `from ${min} to ${max}`;
    const problem =
      value < 0 && min >= 0 ? `a ${what} is not negative` : `outside the range of a ${what}`;
    return { problem, advice: `write a number ${range}${meant === undefined ? "" : `; ${meant}`}` };
  }
  if (whole && !Number.isInteger(value)) {
    return { problem: `a ${what} is a whole number`, advice: "write it without a fraction" };
  }
  return undefined;
}

/** What is wrong with a text that is not a number. */
export function numberFault(text: string, kind: NumberKind, context: ReadContext): CellFault {
  if (text === "") {
    return { problem: "the cell is empty", advice: `write the ${kind.what}, or leave out the row` };
  }
  return commaFault(text, kind, context) ?? pointFault(text, context) ?? wordFault(text, kind);
}

function commaFault(
  text: string,
  { max }: NumberKind,
  { decimalComma }: ReadContext,
): CellFault | undefined {
  const apart = /^[+-]?\d{1,3}([,'\u2019\u00a0\u202f ]\d{3})+(\.\d+)?$/.test(text);
  const plain = text.replace(/[,'\u2019\u00a0\u202f ]/g, "");
  const comma = /^[+-]?\d{1,3},\d{3}$/.test(text);
  // 0,800 and a density of 2,119 can only be decimals.
  const decimals = comma && (/^[+-]?0/.test(text) || Math.abs(Number(plain)) > max);
  if (apart && !decimals && !(decimalComma && text.includes(","))) {
    const other = comma ? `, or ${text.replace(",", ".")} if the comma marks the decimals` : "";
    return { problem: "a number with its thousands set apart", advice: `write ${plain}${other}` };
  }
  if (!decimalComma && /^[+-]?\d*,\d+$/.test(text)) {
    const point = text.replace(",", ".").replace(/^([+-]?)\./, "$10.");
    const whole = "pass decimalComma: true if the whole file is written so";
    return { problem: "a decimal comma", advice: `write ${point}, or ${whole}` };
  }
  return undefined;
}

function pointFault(text: string, { decimalComma }: ReadContext): CellFault | undefined {
  if (decimalComma && /^[+-]?\d*\.\d+$/.test(text)) {
    const advice = `write ${text.replace(".", ",")}, or leave out decimalComma: true`;
    return { problem: "a decimal point in a file said to use decimal commas", advice };
  }
  if (/^[+-]?\d*(\.\d*){2,}$/.test(text)) {
    return { problem: "more than one decimal point", advice: "write one decimal point" };
  }
  return undefined;
}

function wordFault(text: string, { what }: NumberKind): CellFault {
  if (/^[\u2212\u2013\u2014]\s*[\d.]/.test(text)) {
    return { problem: "a typographic minus", advice: `write -${text.slice(1).trim()}` };
  }
  if (/^#(REF|DIV\/0|N\/A|NAME|NUM|NULL|VALUE)[!?]?/i.test(text) || /^#+$/.test(text)) {
    const advice = "mend the formula or widen the column in the spreadsheet and export again";
    return { problem: "a spreadsheet's error, not a number", advice };
  }
  if (/^[+-]?\d*\.?\d+e[+-]?\d+$/i.test(text)) {
    return { problem: "a number in powers of ten", advice: `write ${Number(text)} in full` };
  }
  const fahrenheit = /^([+-]?\d+(?:\.\d+)?)\s*°?\s*F$/i.exec(text)?.[1];
  if (fahrenheit !== undefined) {
    const celsius = (((Number(fahrenheit) - 32) * 5) / 9).toFixed(1);
    return { problem: "a temperature in Fahrenheit", advice: `write degrees Celsius: ${celsius}` };
  }
  const volume = what.endsWith("in mL") ? typedVolumeAdvice(text, "mL") : undefined;
  if (volume !== undefined) return { problem: "a volume with a unit of its own", advice: volume };
  const zeros = text.replace(/o/gi, "0");
  if (zeros !== text && /^[+-]?\d*\.?\d+$/.test(zeros)) return lettersFault(zeros);
  const bare = /^([+-]?\d+(?:\.\d+)?)\s*(°?\s*C|[a-zµ%°/²]+)$/i.exec(text)?.[1];
  if (bare !== undefined) {
    return { problem: "a number with a unit", advice: `write the number alone: ${bare}` };
  }
  const digits = zeros.replace(/[lI]/g, "1");
  if (digits !== text && /^[+-]?\d*\.?\d+$/.test(digits)) return lettersFault(digits);
  return {
    problem: "text where a number belongs",
    advice: `write the ${what}, or leave out the row`,
  };
}

function lettersFault(digits: string): CellFault {
  return { problem: "letters among the digits", advice: `write ${digits}` };
}
