import { requireEntries, requireNumber } from "../../input/index.ts";
import { chartConstants } from "../charts/chart-constants.ts";
import { type GaugeReadings, gaugeDesign, mean } from "./gauge-readings.ts";
import { type GaugeStudy, gaugeStudy } from "./gauge-result.ts";

/**
 * Gauge study of a densitometer by the average and range method.
 *
 * EV = R̿/d2, AV² = (X̄diff/d2*)² − EV²/(patches·repeats), PV = Rp/d2*, with d2* = √(d2² + d3²) for a
 * single range. The factors are computed, not read from a table.
 *
 * @param readings `readings[operator][patch]` is the list of repeats, in density; at least 2 of each
 * @returns repeatability, reproducibility and patches as standard deviations, and their shares
 * @throws InputError if the study is not complete or all readings are equal
 *
 * @example
 * gaugeStudyByRange([[[0.20, 0.22], [1.00, 1.01]], [[0.21, 0.21], [1.02, 1.00]]]).repeatabilitySd // => 0.01108
 *
 * Source: AIAG, Measurement Systems Analysis, 4th ed. 2010, ch. III.B.
 */
export function gaugeStudyByRange(readings: GaugeReadings): GaugeStudy {
  requireEntries("gaugeStudyByRange", "readings", readings);
  const { operators, patches, repeats } = gaugeDesign("gaugeStudyByRange", readings);
  const meanRange = mean(readings.flatMap((byPatch) => byPatch.map(range)));
  const operatorMeans = readings.map((byPatch) => mean(byPatch.flat()));
  const patchMeans = Array.from({ length: patches }, (_, p) =>
    mean(readings.flatMap((byPatch) => byPatch[p] ?? [])),
  );
  const repeatability = meanRange / chartConstants(repeats).d2;
  const between = (range(operatorMeans) / singleRangeFactor(operators)) ** 2;
  const reproducibility = Math.sqrt(
    Math.max(0, between - repeatability ** 2 / (patches * repeats)),
  );
  const patchSd = range(patchMeans) / singleRangeFactor(patches);
  requireNumber("gaugeStudyByRange", "scatter of the readings", meanRange + between + patchSd, {
    above: 0,
    hint: "all readings are equal: choose patches that differ, or read to more decimals",
  });
  return gaugeStudy("average and range", repeatability, reproducibility, patchSd);
}

function range(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}

/** d2* for one range of n: √(d2² + d3²), so that the squared estimate is unbiased. */
function singleRangeFactor(n: number): number {
  const { d2, d3 } = chartConstants(n);
  return Math.hypot(d2, d3);
}
