/** Node 20 makes the outputs of record. Later ones round powers otherwise in the last digit. */
export const ofRecord = process.versions.node.startsWith("20.");

/** Below this a number that should be 0 is what rounding left of it. */
const NOTHING = 1e-12;

/** A text with every number cut to ten digits, so that the last ones of double precision do not count. */
export function withoutLastDigits(text: string): string {
  return text.replace(/-?\d+\.\d+(?:e[-+]?\d+)?/gi, (number) => {
    const value = Number(number);
    return Math.abs(value) < NOTHING ? "0" : `${Number(value.toPrecision(10))}`;
  });
}
