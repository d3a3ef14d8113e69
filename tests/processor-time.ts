const SIZE = 100;
const filled = Float64Array.from({ length: SIZE * SIZE }, (_, i) => Math.sin(i));
const out = new Float64Array(SIZE * SIZE);

/** The yardstick: the product of two full matrices of a hundred rows, some 1.4 ms where this was written. */
function matrixProduct(): void {
  for (let i = 0; i < SIZE; i++) {
    for (let j = 0; j < SIZE; j++) {
      let sum = 0;
      for (let k = 0; k < SIZE; k++) {
        sum += (filled[i * SIZE + k] ?? 0) * (filled[k * SIZE + j] ?? 0);
      }
      out[i * SIZE + j] = sum;
    }
  }
}

/** Processor time of one call in microseconds, the mean of a few. */
function processorUs(work: () => unknown, calls: number): number {
  const begin = process.cpuUsage();
  for (let i = 0; i < calls; i++) work();
  const { user, system } = process.cpuUsage(begin);
  return (user + system) / calls;
}

/**
 * How many matrix products of a hundred rows a piece of work costs. Processor time, not the clock's,
 * the least of several rounds, each measured beside its yardstick: neither a slow machine nor a busy
 * one changes the number much, a method that got slower does.
 */
export function costInMatrixProducts(work: () => unknown, rounds = 15, calls = 4): number {
  const costs = { work: Number.POSITIVE_INFINITY, yardstick: Number.POSITIVE_INFINITY };
  for (let round = 0; round < rounds; round++) {
    costs.work = Math.min(costs.work, processorUs(work, calls));
    costs.yardstick = Math.min(costs.yardstick, processorUs(matrixProduct, 4));
  }
  return costs.work / costs.yardstick;
}
