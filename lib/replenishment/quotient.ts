/** a ÷ b; null where b is 0, or so small that no number holds the quotient. */
export function quotient(a: number, b: number): number | null {
  const value = a / b;
  return Number.isFinite(value) ? value : null;
}
