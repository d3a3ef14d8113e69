import { onTheLineSigma } from "../charts/on-the-line.ts";
import type { Readings } from "../charts/readings.ts";
import type { RunRuleSettings } from "./run-rule-options.ts";
import { nelsonRules, type RunRuleId, westernElectricRules } from "./run-rule-signal.ts";

/** The bit of each rule in a mask: Nelson 1–8 are bits 0–7, Western Electric 1–4 bits 8–11. */
export const runRuleBits: ReadonlyMap<RunRuleId, number> = new Map(
  [...nelsonRules, ...westernElectricRules].map((rule, i) => [rule, 1 << i]),
);

const pairs = [0, 0, 0, 1, 0, 1, 1, 1];
const fours = Array.from({ length: 32 }, (_, bits) =>
  [1, 2, 4, 8, 16].filter((bit) => (bits & bit) !== 0).length >= 4 ? 1 : 0,
);

/**
 * One pass over the readings: for each, the bits of the rules whose pattern it completes. A reading
 * on a line is beyond neither side; equal neighbours are neither a rise nor a fall.
 */
export function markRunRules(
  values: Readings,
  scale: { readonly centre: number; readonly sigma: number },
  settings: RunRuleSettings,
  restart: Uint8Array | undefined,
): Uint16Array {
  const n = values.length;
  const masks = new Uint16Array(n);
  const { centre, sigma } = scale;
  const { oneSideNelson, oneSideWesternElectric, trend, alternating, inside, outside } = settings;
  const everyWindow = settings.everyWindow;
  const anySide = settings.outsideAnySide;
  let enabled = 0;
  for (const rule of settings.rules) enabled |= runRuleBits.get(rule) ?? 0;

  let side = 0;
  let onSide = 0;
  let step = 0;
  let sameSteps = 0;
  let otherSteps = 0;
  let insideRun = 0;
  let outsideRun = 0;
  let above2 = 0;
  let below2 = 0;
  let above1 = 0;
  let below1 = 0;
  let previous = 0;
  for (let i = 0; i < n; i++) {
    const x = values[i] ?? 0;
    const z = (x - centre) / sigma;
    const afresh = i === 0 || (restart !== undefined && restart[i] === 1);
    if (afresh) {
      onSide = side = step = sameSteps = otherSteps = insideRun = outsideRun = 0;
      above2 = below2 = above1 = below1 = 0;
    }
    const newSide = z > onTheLineSigma ? 1 : z < -onTheLineSigma ? -1 : 0;
    onSide = newSide === 0 ? 0 : newSide === side ? onSide + 1 : 1;
    side = newSide;

    const newStep = afresh ? 0 : x > previous ? 1 : x < previous ? -1 : 0;
    sameSteps = newStep === 0 ? 0 : newStep === step ? sameSteps + 1 : 1;
    otherSteps = newStep === 0 ? 0 : newStep === -step ? otherSteps + 1 : 1;
    step = newStep;
    previous = x;

    const size = z < 0 ? -z : z;
    insideRun = size < 1 - onTheLineSigma ? insideRun + 1 : 0;
    const is1 = size > 1 + onTheLineSigma ? 1 : 0;
    const is2 = size > 2 + onTheLineSigma ? 1 : 0;
    outsideRun = is1 === 1 ? outsideRun + 1 : 0;
    const up = newSide > 0 ? 1 : 0;
    above2 = ((above2 << 1) | (is2 & up)) & 7;
    below2 = ((below2 << 1) | (is2 & (1 - up))) & 7;
    above1 = ((above1 << 1) | (is1 & up)) & 31;
    below1 = ((below1 << 1) | (is1 & (1 - up))) & 31;

    let mask = 0;
    if (size > 3 + onTheLineSigma) mask |= 1 | 256;
    if (onSide >= oneSideNelson) mask |= 2;
    if (onSide >= oneSideWesternElectric) mask |= 2048;
    if (sameSteps >= trend - 1) mask |= 4;
    if (otherSteps >= alternating - 1) mask |= 8;
    if (completes(pairs, above2, everyWindow) || completes(pairs, below2, everyWindow)) {
      mask |= 16 | 512;
    }
    if (completes(fours, above1, everyWindow) || completes(fours, below1, everyWindow)) {
      mask |= 32 | 1024;
    }
    if (insideRun >= inside) mask |= 64;
    // All the run's readings are off the centre line, so a shorter run on one side means both.
    if (outsideRun >= outside && (anySide || onSide < outside)) mask |= 128;
    masks[i] = mask & enabled;
  }
  return masks;
}

/** Whether a side's window qualifies, on a reading that is itself beyond on that side unless told. */
function completes(table: readonly number[], bits: number, everyWindow: boolean): boolean {
  return table[bits] === 1 && (everyWindow || (bits & 1) === 1);
}
