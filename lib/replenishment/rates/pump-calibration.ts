import { mean, sampleStandardDeviation } from "simple-statistics";
import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { studentTQuantile } from "../../numerics/index.ts";
import { requireVolume } from "../require-volume.ts";

/** So many strokes into a measuring cylinder. */
export interface CylinderReading {
  readonly strokes: number;
  readonly volumeMl: number;
}

/** What a pump truly gives with a stroke. */
export interface PumpCalibration {
  readonly mlPerStroke: number;
  readonly standardUncertaintyMl: number;
  readonly intervalMl: readonly [number, number];
  readonly confidence: number;
  /** mL/stroke over the setting, minus 1; null without a setting. */
  readonly error: number | null;
  readonly errorInterval: readonly [number, number] | null;
  readonly finding: "agrees with its setting" | "delivers too little" | "delivers too much" | null;
  /** The setting at which the pump would deliver what its setting says now; null without one. */
  readonly newSettingMlPerStroke: number | null;
  readonly readings: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * Volume per stroke of a pump from measuring-cylinder readings, with its uncertainty, against its
 * setting.
 *
 * v = mean(V_i / n_i); u² = s²/m (from m ≥ 2 readings) + (d / (√12 · n̄ · √m))² (cylinder read to
 * d); interval v ± t_p(ν_eff)·u
 *
 * @param check.readings strokes (whole, above 0) and volumes (mL, at least 0); three or more are better
 * @param check.settingMlPerStroke what the pump is set to, mL, above 0
 * @param check.divisionMl what the cylinder is read to, mL, above 0; default 1
 * @param check.confidence above 0.5 and below 1; default 0.95
 * @returns mL/stroke with interval, its error against the setting, and the setting that mends it
 * @throws InputError for no reading, or a number out of range
 *
 * @example
 * const readings = [{ strokes: 20, volumeMl: 84 }, { strokes: 20, volumeMl: 85 }, { strokes: 20, volumeMl: 83 }];
 * pumpCalibration({ readings, settingMlPerStroke: 5 }).error // => -0.16
 *
 * Source: JCGM 100:2008, 4.2, 4.3.7 (reading to a division) and G.4.1 (effective degrees of freedom).
 */
export function pumpCalibration(check: {
  readonly readings: readonly CylinderReading[];
  readonly settingMlPerStroke?: number;
  readonly divisionMl?: number;
  readonly confidence?: number;
}): PumpCalibration {
  const where = "pumpCalibration";
  requireObject(where, "check", check, "an object with readings");
  const { readings, settingMlPerStroke: setting } = check;
  const confidence = requireNumber(where, "confidence", check.confidence ?? 0.95, {
    above: 0.5,
    below: 1,
  });
  const division = requireNumber(where, "divisionMl", check.divisionMl ?? 1, {
    above: 0,
    unit: "mL",
  });
  if (!Array.isArray(readings) || readings.length === 0) {
    const advice = "write at least one { strokes, volumeMl } from a measuring cylinder";
    throw new InputError(where, "readings", readings, advice);
  }
  if (setting !== undefined) {
    requireVolume(where, "settingMlPerStroke", setting, { above: 0, max: 1e6, unit: "mL" });
  }
  const each = readings.map(({ strokes, volumeMl }, i) => {
    const n = requireNumber(where, `readings[${i}].strokes`, strokes, {
      min: 1,
      max: 1e9,
      whole: true,
    });
    return (
      requireVolume(where, `readings[${i}].volumeMl`, volumeMl, { min: 0, max: 1e9, unit: "mL" }) /
      n
    );
  });
  const count = readings.length;
  const value = mean(each);
  const scatter = count > 1 ? sampleStandardDeviation(each) ** 2 / count : 0;
  const strokes = mean(readings.map((reading) => reading.strokes));
  const reading = (division / strokes) ** 2 / 12 / count;
  const u = Math.sqrt(scatter + reading);
  const degrees = scatter > 0 ? (count - 1) * (u ** 2 / scatter) ** 2 : 1e6;
  const half = u * studentTQuantile((1 + confidence) / 2, Math.min(1e6, degrees));
  const interval = [value - half, value + half] as const;
  return {
    mlPerStroke: value,
    standardUncertaintyMl: u,
    intervalMl: interval,
    confidence,
    ...againstSetting(value, interval, setting),
    readings: count,
    assumptions: [
      `the cylinder is read to ${division} mL`,
      "the strokes were counted without fault",
    ],
    warnings:
      count < 3
        ? [
            `${count === 1 ? "one reading does" : "two readings hardly"} show how a pump scatters; take three or more`,
          ]
        : [],
  };
}

function againstSetting(
  value: number,
  [low, high]: readonly [number, number],
  setting: number | undefined,
): Pick<PumpCalibration, "error" | "errorInterval" | "finding" | "newSettingMlPerStroke"> {
  if (setting === undefined) {
    return { error: null, errorInterval: null, finding: null, newSettingMlPerStroke: null };
  }
  return {
    error: value / setting - 1,
    errorInterval: [low / setting - 1, high / setting - 1],
    finding:
      high < setting
        ? "delivers too little"
        : low > setting
          ? "delivers too much"
          : "agrees with its setting",
    newSettingMlPerStroke: value > 0 ? setting ** 2 / value : null,
  };
}
