import { InputError, requireNumber } from "../../input/index.ts";

/** Lets a series in: times that rise (or, where allowed, stand still) and as many values. */
export function requireSeries(
  where: string,
  times: readonly number[],
  values: readonly number[],
  fewest: number,
): void {
  requireNumber(where, "number of readings", values.length, { min: fewest });
  if (times.length !== values.length) {
    throw new InputError(where, "times", `${times.length} values`, `write ${values.length}`);
  }
  times.forEach((t, i) => {
    const before = times[i - 1];
    const hint = "readings in order of time; put repeats at the same time together first";
    requireNumber(where, `times[${i}]`, t, before === undefined ? {} : { above: before, hint });
  });
  values.forEach((v, i) => {
    requireNumber(where, `values[${i}]`, v);
  });
}
