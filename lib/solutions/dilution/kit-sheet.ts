import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { cautionsFor } from "../cautions/cautions-for.ts";
import type { MixingSheet, MixingStep } from "../mixing-sheet.ts";
import { requireVolumeMl } from "./require-volume.ts";

/** Rounding beyond this part of a volume is worth a warning. */
const ROUNDING_PERCENT = 2;

/** One part of a kit: its volume in a litre of working solution. */
export interface KitPart {
  readonly what: string;
  readonly mlPerL: number;
}

/**
 * The mixing sheet of a kit whose parts are given per litre, for any volume: starting water, parts in
 * order, water to the final volume.
 *
 * V_i = mlPerL_i · V / 1000, rounded half up to `roundToMl`
 *
 * @param kit.title heading of the sheet
 * @param kit.parts parts in the order of mixing, each above 0 mL per litre
 * @param kit.volumeMl final volume, mL, above 0
 * @param kit.startWaterFraction share of the final volume that is put in first; default 0.6
 * @param kit.roundToMl what the parts are rounded to; default 0.1 mL
 * @param kit.substances what the parts contain, for the cautions
 * @returns a mixing sheet whose amounts sum to the final volume, not yet priced
 * @throws InputError if the parts and the starting water exceed the final volume, or a part would be
 *   rounded to nothing
 *
 * @example
 * kitSheet({ title: "Reversal bath", parts: [{ what: "reversal concentrate", mlPerL: 25 }], volumeMl: 350 }).steps[1]?.amount // => 8.8
 *
 * Source: Kodak publication TI2443 (January 2000), single-use reversal kit: parts per final volume, 60 % starting water.
 */
export function kitSheet(kit: {
  readonly title: string;
  readonly parts: readonly KitPart[];
  readonly volumeMl: number;
  readonly startWaterFraction?: number;
  readonly roundToMl?: number;
  readonly substances?: readonly string[];
}): MixingSheet {
  const where = "kitSheet";
  requireObject(where, "kit", kit, "an object with title, parts and volumeMl");
  const volume = requireVolumeMl(where, "volumeMl", kit.volumeMl);
  const grain = requireNumber(where, "roundToMl", kit.roundToMl ?? 0.1, {
    min: 1e-6,
    max: volume,
    unit: "mL",
  });
  const share = { min: 0, max: 1 };
  const start = requireNumber(where, "startWaterFraction", kit.startWaterFraction ?? 0.6, share);
  if (!Array.isArray(kit.parts) || kit.parts.length === 0) {
    throw new InputError(
      where,
      "parts",
      kit.parts,
      'write at least one, { what: "A", mlPerL: 200 }',
    );
  }
  const parts = kit.parts.map(({ what, mlPerL }) => {
    requireNumber(where, `mlPerL of ${what}`, mlPerL, { above: 0, max: 1000, unit: "mL" });
    const wantedMl = (mlPerL * volume) / 1000;
    const volumeMl = roundHalfUp(wantedMl, grain);
    if (volumeMl > 0) return { what, wantedMl, volumeMl };
    const advice = `${tidy(wantedMl)} mL of ${what} would be rounded to nothing; write a finer step, or a larger volume`;
    throw new InputError(where, "roundToMl", grain, advice);
  });
  const startMl = roundHalfUp(start * volume, grain);
  const restMl = volume - startMl - parts.reduce((sum, part) => sum + part.volumeMl, 0);
  if (restMl < -1e-9 * volume) {
    const most = Math.max(0, Math.floor((start + restMl / volume) * 100) / 100);
    if (most > 0) {
      const advice = `write at most ${most}; the parts need the rest`;
      throw new InputError(where, "startWaterFraction", start, advice);
    }
    const perLitre = kit.parts.reduce((sum, { mlPerL }) => sum + mlPerL, 0);
    const advice = `together they are ${perLitre} mL in a litre; write parts that sum to less than 1000`;
    throw new InputError(where, "parts", kit.parts, advice);
  }
  const lines = [
    { what: "water", amount: startMl, note: "to start with" },
    ...parts.map(({ what, volumeMl }) => ({ what, amount: volumeMl, note: "stir until even" })),
    { what: "water to make the final volume", amount: Math.max(0, restMl), note: "" },
  ].filter(({ amount }) => amount > 0);
  const steps = lines.map((line, i): MixingStep => ({ order: i + 1, unit: "mL", ...line }));
  return {
    title: kit.title,
    volumeMl: volume,
    steps,
    cost: null,
    assumptions: ["volumes add; the last water goes to the mark"],
    warnings: parts.flatMap(({ what, wantedMl, volumeMl }) => {
      const percent = 100 * (volumeMl / wantedMl - 1);
      return Math.abs(percent) > ROUNDING_PERCENT
        ? [`${what}: ${tidy(wantedMl)} mL rounded by ${percent.toFixed(0)} %; mix a larger volume`]
        : [];
    }),
    cautions: cautionsFor([...parts.map(({ what }) => what), ...(kit.substances ?? [])]),
  };
}

function tidy(value: number): string {
  return String(Number(value.toPrecision(4)));
}

/** Half a grain goes up, and a product a hair below half in binary counts as half. */
function roundHalfUp(value: number, grain: number): number {
  return Number((Math.floor(value / grain + 0.5 + 1e-9) * grain).toPrecision(12));
}
