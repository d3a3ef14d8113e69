import { InputError } from "../input/index.ts";

const PLAIN = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;

/**
 * A number from text that a person typed. Strict: what could be read two ways is refused with what
 * to write instead.
 *
 * @param text digits with a decimal point; a sign, an exponent and blanks around it are allowed
 * @returns the number
 * @throws InputError for a decimal comma, a thousands mark, a fraction, a unit, or no number at all
 *
 * @example
 * parseNumber(" 12.5 ") // => 12.5
 * parseNumber("−0.02") // => -0.02
 */
export function parseNumber(text: string): number {
  return parseNumberFor("parseNumber", "text", text);
}

/** The same for another function, whose name then stands in the message. */
export function parseNumberFor(where: string, argument: string, text: unknown): number {
  if (typeof text !== "string") {
    throw new InputError(where, argument, text, 'write the number as text, like "12.5"');
  }
  const plain = text.trim().replace(/^[−–]/, "-");
  if (PLAIN.test(plain)) {
    const value = Number(plain);
    if (Number.isFinite(value)) return value;
    throw new InputError(where, argument, text, "write a number below 1.8e308");
  }
  throw new InputError(where, argument, text, adviceFor(plain));
}

function adviceFor(text: string): string {
  if (/^[+-]?\d{1,3},\d{3}$/.test(text)) {
    const whole = text.replace(",", "");
    return `write ${whole} or ${text.replace(",", ".")}, whichever is meant (no comma)`;
  }
  if (/^[+-]?\d*,\d+$/.test(text)) return `write ${text.replace(",", ".")}, with a decimal point`;
  if (/^[+-]?\d{1,3}([ ,'\u00a0\u2009\u202f]\d{3})+(\.\d+)?$/.test(text)) {
    return `write ${text.replace(/[^\d.+-]/g, "")}, without marks between thousands`;
  }
  const fraction = /^(\d+)\s*\/\s*(\d+)$/.exec(text);
  if (fraction && Number(fraction[2]) !== 0) {
    return `write ${Number(fraction[1]) / Number(fraction[2])}`;
  }
  const withUnit = /^([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*[^\d\s.,/].*$/.exec(text);
  if (withUnit) return `write the number alone, ${withUnit[1]}; the unit stands in the name`;
  return 'write digits with a decimal point, like "12.5"';
}
