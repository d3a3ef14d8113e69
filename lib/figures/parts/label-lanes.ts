/** Width in pixels that a text takes, on the safe side for a sans-serif face. */
export function textWidth(text: string, fontSize = 11): number {
  return text.length * fontSize * 0.56;
}

/** A label's place along one direction: where it would stand, and how much room it takes. */
export interface Placed {
  readonly at: number;
  readonly size: number;
}

/**
 * Moves labels along one direction until none touch, each as near its own place as can be
 * (pool adjacent violators on the gaps), inside the bounds where they fit.
 */
export function spread(labels: readonly Placed[], bounds: readonly [number, number]): number[] {
  const order = labels
    .map((_, i) => i)
    .sort((a, b) => place(labels, a) - place(labels, b) || a - b);
  const offsets: number[] = [];
  let offset = 0;
  order.forEach((index, k) => {
    const previous = k === 0 ? undefined : labels[order[k - 1] ?? 0];
    offset += previous ? (previous.size + (labels[index]?.size ?? 0)) / 2 : 0;
    offsets.push(offset);
  });
  const blocks: { sum: number; count: number }[] = [];
  order.forEach((index, k) => {
    blocks.push({ sum: place(labels, index) - (offsets[k] ?? 0), count: 1 });
    for (;;) {
      const last = blocks.at(-1);
      const before = blocks.at(-2);
      if (!last || !before || before.sum / before.count <= last.sum / last.count) break;
      blocks.splice(-2, 2, { sum: before.sum + last.sum, count: before.count + last.count });
    }
  });
  const fitted = blocks.flatMap(({ sum, count }) => Array<number>(count).fill(sum / count));
  const low = bounds[0];
  const high = bounds[1] - offset;
  const result: number[] = [];
  order.forEach((index, k) => {
    const start = Math.max(low, Math.min(high, fitted[k] ?? 0));
    result[index] = start + (offsets[k] ?? 0);
  });
  return result;
}

function place(labels: readonly Placed[], index: number): number {
  return labels[index]?.at ?? 0;
}

/**
 * Lane of each label (0 is the lowest), so that no two touch and no label's upright rule, which
 * comes down from its left end, passes through another label: the farther left, the higher.
 */
export function lanes(labels: readonly { readonly from: number; readonly to: number }[]): number[] {
  const order = labels.map((_, i) => i);
  order.sort((a, b) => (labels[b]?.from ?? 0) - (labels[a]?.from ?? 0) || b - a);
  const result: number[] = [];
  order.forEach((index, k) => {
    const to = labels[index]?.to ?? 0;
    const inTheWay = order.slice(0, k).filter((other) => (labels[other]?.from ?? 0) < to);
    result[index] = Math.max(-1, ...inTheWay.map((other) => result[other] ?? 0)) + 1;
  });
  return result;
}
