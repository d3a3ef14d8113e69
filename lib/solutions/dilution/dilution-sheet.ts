import { requireNumber, requireObject } from "../../input/index.ts";
import type { Ratio, RatioReading } from "../../units/index.ts";
import { cautionsFor } from "../cautions/cautions-for.ts";
import type { MixingSheet, MixingStep } from "../mixing-sheet.ts";
import { dilute } from "./dilute.ts";
import { diluteWithGraduates } from "./dilute-with-graduates.ts";
import type { Graduate } from "./graduate.ts";

/**
 * The mixing sheet of a liquid concentrate or a kit of several: part of the water, the concentrates
 * in order, the rest of the water.
 *
 * @param wanted.title heading of the sheet
 * @param wanted.ratio the dilution
 * @param wanted.totalMl volume wanted, mL, above 0
 * @param wanted.names names of the concentrates, as on the bottles
 * @param wanted.vessels vessels at hand; without them the exact volumes stand on the sheet
 * @param wanted.substances what the concentrates contain, for the cautions; names are used too
 * @param wanted.temperatureC temperature of the water, °C, 0 to 100, for the note
 * @returns a mixing sheet, not yet priced
 * @throws InputError as `dilute`, and for a temperature that water does not have
 *
 * @example
 * dilutionSheet({ title: "Film developer", ratio: "1+9", totalMl: 500 }).steps.map((step) => step.amount) // => [400, 50, 50]
 *
 * Source: order of mixing is common practice, no source.
 */
export function dilutionSheet(
  wanted: {
    readonly title: string;
    readonly ratio: string | Ratio;
    readonly totalMl: number;
    readonly names?: readonly string[];
    readonly vessels?: readonly (string | Graduate)[];
    readonly substances?: readonly string[];
    readonly temperatureC?: number;
  } & RatioReading,
): MixingSheet {
  requireObject("dilutionSheet", "wanted", wanted, "an object with title, ratio and totalMl");
  if (wanted.temperatureC !== undefined) {
    const liquid = { min: 0, max: 100, unit: "°C" };
    requireNumber("dilutionSheet", "temperatureC", wanted.temperatureC, liquid);
  }
  const plan = dilute(wanted);
  const measured =
    wanted.vessels === undefined
      ? undefined
      : diluteWithGraduates({ ...wanted, vessels: wanted.vessels });
  const volumes = measured
    ? measured.parts.map((part) => ({
        what: part.what,
        volumeMl: part.measuredMl,
        note: `${part.graduate}${errorNote(part.strengthError)}`,
      }))
    : [...plan.concentrates, { what: "water", volumeMl: plan.waterMl }].map((part) => ({
        ...part,
        note: "",
      }));
  const concentrates = volumes.filter(({ what }) => what !== "water");
  const water = volumes.find(({ what }) => what === "water");
  return {
    title: wanted.title,
    volumeMl: measured?.totalMl ?? plan.totalMl,
    steps: inOrder(concentrates, water, wanted.temperatureC),
    cost: null,
    assumptions: measured?.assumptions ?? plan.assumptions,
    warnings: measured?.warnings ?? [],
    cautions: cautionsFor([...concentrates.map(({ what }) => what), ...(wanted.substances ?? [])]),
  };
}

interface NotedVolume {
  readonly what: string;
  readonly volumeMl: number;
  readonly note: string;
}

function inOrder(
  concentrates: readonly NotedVolume[],
  water: NotedVolume | undefined,
  temperatureC: number | undefined,
): readonly MixingStep[] {
  const waterMl = water?.volumeMl ?? 0;
  const concentrateMl = concentrates.reduce((sum, part) => sum + part.volumeMl, 0);
  // Up to four fifths of the mix as water first; the rest rinses the measure and fills up.
  const first = Math.min(waterMl, Math.max(0, 0.8 * (waterMl + concentrateMl)));
  const rest = waterMl - first;
  const at = temperatureC === undefined ? "" : ` at ${temperatureC} °C`;
  const lines = [
    { what: `water${at}`, volumeMl: first, note: water?.note ?? "" },
    ...concentrates.map((part) => ({ ...part, note: join("stir", part.note) })),
    { what: `water${at}`, volumeMl: rest, note: "rinse the measure with it" },
  ].filter(({ volumeMl }) => volumeMl > 0);
  return lines.map((line, i) => ({
    order: i + 1,
    what: line.what,
    amount: line.volumeMl,
    unit: "mL",
    note: line.note,
  }));
}

function join(first: string, second: string): string {
  return second === "" ? first : `${second}; ${first}`;
}

function errorNote(strengthError: number): string {
  const percent = Number((strengthError * 100).toPrecision(2));
  if (percent === 0) return "";
  return `, rounding makes it ${Math.abs(percent)} % ${percent > 0 ? "strong" : "weak"}`;
}
