/** A number as it stands in a sentence: at most four significant digits, no trailing zeros. */
export function shown(value: number): string {
  const rounded = Number(value.toPrecision(4));
  return String(Object.is(rounded, -0) ? 0 : rounded).replace("-", "−");
}
