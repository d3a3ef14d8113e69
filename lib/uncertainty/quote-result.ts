import { requireNumber, requireObject } from "../input/index.ts";

/**
 * A result as it should be written: the uncertainty rounded to its digits, the value to match.
 *
 * @param value finite
 * @param uncertainty expanded or standard, above 0, in the same unit
 * @param options.significantDigits of the uncertainty; 2 if left out
 * @param options.unit written after the numbers
 * @returns text such as "(1002.7 ± 1.7) mg/L"
 * @throws InputError if a number is not finite or the uncertainty not above 0
 *
 * @example
 * quoteResult(1002.69972, 1.6704, { unit: "mg/L" }) // => "(1002.7 ± 1.7) mg/L"
 *
 * Source: JCGM 100:2008, 7.2.6.
 */
export function quoteResult(
  value: number,
  uncertainty: number,
  options: { readonly significantDigits?: number; readonly unit?: string } = {},
): string {
  const where = "quoteResult";
  requireObject(where, "options", options, "an object of options, or leave it out");
  const y = requireNumber(where, "value", value);
  const u = requireNumber(where, "uncertainty", uncertainty, { above: 0 });
  const bounds = { min: 1, max: 15, whole: true };
  const digits = requireNumber(where, "significantDigits", options.significantDigits ?? 2, bounds);
  const exponent = Number(u.toExponential(digits - 1).split("e")[1]) - (digits - 1);
  const places = Math.min(100, Math.max(0, -exponent));
  const step = 10 ** Math.max(0, exponent);
  const text = (x: number) => (Math.round(x / step) * step).toString();
  const [a, b] = exponent > 0 ? [text(y), text(u)] : [y.toFixed(places), u.toFixed(places)];
  const signed = a.replace("-", "−");
  return options.unit ? `(${signed} ± ${b}) ${options.unit}` : `${signed} ± ${b}`;
}
