import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { coldWashFactor } from "./wash-factors.ts";
import { washRules } from "./wash-rules.ts";

/** What is washed and in what; everything but the area and the volume has a visible default. */
export interface FilmWash {
  /** Film in the tank, m², greater than 0. */
  readonly areaM2: number;
  /** Water of one fill, or the tank's volume for a flow, mL. */
  readonly waterMl: number;
  /** Thiosulfate ion in the fixer, g/L; default 120, illustrative. */
  readonly thiosulfateGPerL?: number;
  /** Fixer a drained film carries, mL/m²; default 70. */
  readonly carriedMlPerM2?: number;
  /** What an emptied tank keeps, mL; default 6. */
  readonly tankKeepsMl?: number;
  /** Wash water, °C; default 20. */
  readonly temperatureC?: number;
  /** A wash aid was used first. */
  readonly washAid?: boolean;
}

/** What a wash leaves, against the published limit. */
export interface FilmWashResult {
  /** Thiosulfate left, g/m², before the wash and after each change or at the end of the flow. */
  readonly residualGPerM2: readonly number[];
  /** Published limit, g/m². */
  readonly limitGPerM2: number;
  readonly withinLimit: boolean;
  readonly waterMl: number;
  readonly assumptions: readonly string[];
}

/**
 * Thiosulfate left in film after filling and emptying a tank several times.
 *
 * In each change the film approaches balance with the water, its excess halving every t½:
 * `m = m_eq + (m − m_eq)·2^(−t/t½)`, `m_eq = v_film·(total)/(v_film + v_tank + V)`.
 * With long changes that is the fill-and-dump law (c/(c + V))^n.
 *
 * @param wash film, water and fixer
 * @param changesMin minutes each change stands, in order, each greater than 0
 * @returns g/m² before the wash and after each change; the water used; whether the limit is kept
 * @throws InputError for values out of range or no change at all
 *
 * @example
 * washByChanges({ areaM2: 0.1134, waterMl: 600 }, [3, 3, 3, 3, 3]).withinLimit // => true
 *
 * Source: halving per minute US Navy NAVEDTRA 14209 ch. 10; cold water US Army TM 11-2323 para.
 * 33c; kept volumes M. Torzynski 2004; limit ISO 18917:1999; joining them is ours.
 */
export function washByChanges(wash: FilmWash, changesMin: readonly number[]): FilmWashResult {
  const where = "washByChanges";
  requireObject(where, "wash", wash, "an object with areaM2 and waterMl");
  const { filmMl, tankMl, water, halfTimeMin, area, strength } = readWash(where, wash);
  if (!Array.isArray(changesMin) || changesMin.length === 0) {
    const advice = "write the minutes of each change, such as [3, 3, 3, 3]";
    throw new InputError(where, "changesMin", changesMin, advice);
  }
  let inFilm = (strength * filmMl) / 1000;
  let inTank = (strength * tankMl) / 1000;
  const residual = [inFilm / area];
  changesMin.forEach((minutes, i) => {
    requireNumber(where, `changesMin[${i}]`, minutes, { above: 0, unit: "min" });
    const total = inFilm + inTank;
    const balanced = (total * filmMl) / (filmMl + tankMl + water);
    inFilm = balanced + (inFilm - balanced) * 2 ** (-minutes / halfTimeMin);
    inTank = ((total - inFilm) * tankMl) / (tankMl + water);
    residual.push(inFilm / area);
  });
  return washResult(residual, water * changesMin.length, wash);
}

/**
 * Thiosulfate left in film after a time in a tank through which water flows.
 *
 * dm/dt = −k(m − v_film·c), V·dc/dt = k(m − v_film·c) − Q·c, k = ln 2/t½; solved exactly. With
 * much flow that is halving every t½.
 *
 * @param wash film, tank and fixer
 * @param flow.mlPerMin water through the tank, mL/min, greater than 0
 * @param flow.minutes length of the wash, min, greater than 0
 * @returns g/m² before and after the wash; the water used; whether the limit is kept
 * @throws InputError for values out of range
 *
 * @example
 * washByFlow({ areaM2: 0.1134, waterMl: 600 }, { mlPerMin: 1500, minutes: 20 }).withinLimit // => true
 *
 * Source: as washByChanges; two well-mixed compartments.
 */
export function washByFlow(
  wash: FilmWash,
  flow: { readonly mlPerMin: number; readonly minutes: number },
): FilmWashResult {
  const where = "washByFlow";
  requireObject(where, "wash", wash, "an object with areaM2 and waterMl");
  requireObject(where, "flow", flow, "an object with mlPerMin and minutes");
  const { filmMl, tankMl, water, halfTimeMin, area, strength } = readWash(where, wash);
  const rate = requireNumber(where, "mlPerMin", flow.mlPerMin, { above: 0, unit: "mL/min" });
  const minutes = requireNumber(where, "minutes", flow.minutes, { above: 0, unit: "min" });
  const k = Math.LN2 / halfTimeMin;
  const volume = water + tankMl;
  const m0 = (strength * filmMl) / 1000;
  const c0 = (strength * tankMl) / 1000 / volume;
  // 2 × 2 linear system; the product of its off-diagonal terms is positive, so both rates are real.
  const outOfWater = (k * filmMl + rate) / volume;
  const mean = (k + outOfWater) / 2;
  const spread = Math.sqrt(((k - outOfWater) / 2) ** 2 + (k * k * filmMl) / volume);
  const slow = (k * rate) / volume / (mean + spread);
  const fast = mean + spread;
  const slope0 = -k * (m0 - filmMl * c0);
  const ofFast = (slope0 + slow * m0) / (slow - fast);
  const left = (m0 - ofFast) * Math.exp(-slow * minutes) + ofFast * Math.exp(-fast * minutes);
  return washResult([m0 / area, Math.max(0, left) / area], rate * minutes, wash);
}

/** Checks a wash and fills in its defaults. */
export function readWash(where: string, wash: FilmWash) {
  const { fillAndDump, fixerThiosulfate, halving, washAid } = washRules;
  const area = requireNumber(where, "areaM2", wash.areaM2, { above: 0, unit: "m²" });
  const water = requireNumber(where, "waterMl", wash.waterMl, { above: 0, unit: "mL" });
  const strength = wash.thiosulfateGPerL ?? fixerThiosulfate.gPerL;
  requireNumber(where, "thiosulfateGPerL", strength, { above: 0, max: 600, unit: "g/L" });
  const carried = wash.carriedMlPerM2 ?? fillAndDump.carriedMlPerM2;
  requireNumber(where, "carriedMlPerM2", carried, { above: 0, max: 1000, unit: "mL/m²" });
  const tankMl = wash.tankKeepsMl ?? fillAndDump.tankKeepsMl;
  requireNumber(where, "tankKeepsMl", tankMl, { min: 0, max: water, unit: "mL" });
  const faster = wash.washAid ? washAid.washWithoutAidMin / washAid.washMin : 1;
  const halfTimeMin = (halving.halfTimeMin * coldWashFactor(wash.temperatureC ?? 20)) / faster;
  return { area, water, strength, filmMl: carried * area, tankMl, halfTimeMin };
}

function washResult(residual: readonly number[], waterMl: number, wash: FilmWash): FilmWashResult {
  const limitGPerM2 = washRules.thiosulfateLimit.gPerM2;
  const { fixerThiosulfate, halving } = washRules;
  return {
    residualGPerM2: residual,
    limitGPerM2,
    withinLimit: (residual.at(-1) ?? Number.POSITIVE_INFINITY) <= limitGPerM2,
    waterMl,
    assumptions: [
      `fixer of ${wash.thiosulfateGPerL ?? fixerThiosulfate.gPerL} g/L thiosulfate, drained film carrying ${wash.carriedMlPerM2 ?? washRules.fillAndDump.carriedMlPerM2} mL/m²`,
      `thiosulfate in the film halves every ${halving.halfTimeMin} min in clean water at 20 °C, slower in the cold${wash.washAid ? ", six times faster after a wash aid (30 minutes become 5)" : ""}`,
      "film only: fibre-based paper holds thiosulfate far longer",
    ],
  };
}
