// The inner loops of the run lengths, over flat arrays and nothing else: this is where the time goes.

/** into ← into + factor·(`count` entries of `table` from `offset` on). */
export function addScaled(
  into: Float64Array,
  factor: number,
  table: Float64Array,
  offset: number,
  count: number,
): void {
  for (let j = 0; j < count; j++) into[j] = (into[j] ?? 0) + factor * (table[offset + j] ?? 0);
}

/** The first `rows` rows of a table times a vector. */
export function tableTimes(table: Float64Array, vector: Float64Array, rows: number): Float64Array {
  const result = new Float64Array(rows);
  const count = vector.length;
  for (let k = 0; k < rows; k++) {
    let total = 0;
    for (let i = 0, at = k * count; i < count; i++, at++) {
      total += (table[at] ?? 0) * (vector[i] ?? 0);
    }
    result[k] = total;
  }
  return result;
}

/** A vector times a square table. */
export function vectorTimes(vector: Float64Array, table: Float64Array): Float64Array {
  const count = vector.length;
  const result = new Float64Array(count);
  for (let i = 0; i < count; i++) addScaled(result, vector[i] ?? 0, table, i * count, count);
  return result;
}

/** Σ aᵢ·bᵢ. */
export function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let total = 0;
  for (let i = 0; i < a.length; i++) total += (a[i] ?? 0) * (b[i] ?? 0);
  return total;
}

/** Σ aᵢ. */
export function sumOf(a: Float64Array): number {
  let total = 0;
  for (let i = 0; i < a.length; i++) total += a[i] ?? 0;
  return total;
}
