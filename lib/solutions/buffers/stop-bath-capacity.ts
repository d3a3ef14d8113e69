import { requireObject } from "../../input/index.ts";
import { cautionsFor } from "../cautions/cautions-for.ts";
import { type AreaToPhLimit, areaToPhLimit } from "./area-to-ph-limit.ts";
import { type BathPhOptions, bathPhAgainstArea } from "./bath-ph-against-area.ts";
import { bathAfterCarryIn } from "./carry-in.ts";
import type { SolutionSource } from "./solution-composition.ts";
import { solutionPh } from "./solution-ph.ts";

/** What an acid stop bath takes before it no longer stops. */
export interface StopBathCapacity extends AreaToPhLimit {
  /** The way there: pH at eleven areas from 0 to the limit; empty where there is none. */
  readonly curve: readonly { readonly areaM2: number; readonly pH: number }[];
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
}

/**
 * Area of film or paper that an acid stop bath takes until its pH reaches a limit.
 *
 * @param options.bath the stop bath: formula, ingredients per litre, or composition
 * @param options.bathVolumeMl of it, above 0
 * @param options.carriedIn the developer, as it is used (diluted)
 * @param options.carryInMlPerM2 carry-over, above 0; from 19 (squeegeed) to 390 (not drained): measure
 *   your own by weighing
 * @param options.temperatureC of the bath; 25 if left out
 * @param pHLimit at which it is thrown away; indicator stop baths turn between 5 and 6
 * @returns area in m², area per litre, the curve, and what may hurt
 * @throws InputError as `areaToPhLimit`
 *
 * @example
 * stopBathCapacity({ bath: bathFormula("citric-stop-bath"), bathVolumeMl: 1000, carriedIn: bathFormula("metol-sulfite-developer"), carryInMlPerM2: 70 }, 5.5).curve.length // => 11
 *
 * Source: mass balance of a stirred tank, then charge balance with Davies activities; carry-over from
 * published spreads.
 */
export function stopBathCapacity(options: BathPhOptions, pHLimit: number): StopBathCapacity {
  requireObject(
    "stopBathCapacity",
    "options",
    options,
    "an object with bath, bathVolumeMl, carriedIn, …",
  );
  const found = areaToPhLimit(options, pHLimit);
  const areas = Array.from({ length: 11 }, (_, i) => ((found.areaM2 ?? 0) * i) / 10);
  const curve = found.areaM2 === null ? [] : bathPhAgainstArea(options, areas);
  const temperatureC = options.temperatureC ?? 25;
  const alongTheWay = areas.flatMap((area) => [
    ...solutionPh(bathAfterCarryIn(options, area).composition, { temperatureC }).warnings,
  ]);
  return {
    ...found,
    curve: curve.map(({ areaM2, pH }) => ({ areaM2, pH })),
    warnings: [...found.warnings, ...new Set(alongTheWay.map(withoutFigures))],
    assumptions: [
      "the bath is stirred, and carbon dioxide and sulfur dioxide stay in it",
      "the film carries the developer in unchanged and takes as much of the bath out, unless told",
      "capacity by pH only: silver, colour and age may end a bath sooner",
    ],
    cautions: cautionsFor([...namesIn(options.bath), ...namesIn(options.carriedIn), "stop bath"]),
  };
}

/** The same warning at eleven areas differs only in its figures; say it once. */
function withoutFigures(warning: string): string {
  return warning.replace(/, [\d.]+ mol\/L,/, "");
}

function namesIn(source: SolutionSource): readonly string[] {
  if ("ions" in source) return [];
  const list = "ingredients" in source ? source.ingredients : source;
  return list.map(({ chemical, form }) => `${chemical} ${form ?? ""}`.trim());
}
