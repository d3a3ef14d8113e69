import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { type MachineWash, machineWash, waterForLimit } from "../../replenishment/index.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

const POINTS = 60;

/**
 * What a machine wash leaves against the water it takes, one curve for each number of tanks, with the
 * published limit; both axes logarithmic.
 *
 * @param wash load, carry-over, what is carried in, flow and exchange (see `MachineWash`)
 * @param options.title what the figure shows
 * @param options.stages numbers of tanks, one to six of them; default 1, 2, 3, 4
 * @param options.waterLPerM2 least and most water, L/m², above 0; default 0.1 to 100
 * @returns Vega-Lite figure; its text alternative gives the water at which each curve meets the limit
 * @throws InputError for no stages or a number out of range
 *
 * @example
 * washStagesFigure({ areaM2PerHour: 4, carryOverMlPerM2: 40, carriedInGPerL: 120, flow: "counter-current" }, { title: "Wash" }).description.includes("2 tanks: 0.72 L/m²") // => true
 */
export function washStagesFigure(
  wash: Omit<MachineWash, "stages" | "waterLPerHour">,
  options: {
    readonly title: string;
    readonly stages?: readonly number[];
    readonly waterLPerM2?: readonly [number, number];
  },
): VegaLiteFigure {
  const where = "washStagesFigure";
  requireObject(
    where,
    "wash",
    wash,
    "an object with areaM2PerHour, carryOverMlPerM2, carriedInGPerL, …",
  );
  requireObject(where, "options", options, "an object with title");
  const stages = options.stages ?? [1, 2, 3, 4];
  if (!(stages?.length > 0) || stages.length > 6) {
    throw new InputError(where, "stages", stages, "write one to six numbers of tanks");
  }
  const [least, most] = options.waterLPerM2 ?? [0.1, 100];
  requireNumber(where, "waterLPerM2[0]", least, { above: 0, unit: "L/m²" });
  requireNumber(where, "waterLPerM2[1]", most, { above: least, unit: "L/m²" });
  const values = stages.flatMap((count) =>
    Array.from({ length: POINTS + 1 }, (_, i) => {
      const water = least * (most / least) ** (i / POINTS);
      const waterLPerHour = water * wash.areaM2PerHour;
      const { residualGPerM2: left } = machineWash({ ...wash, stages: count, waterLPerHour });
      return { water, left, tanks: named(count), order: count };
    }),
  );
  const limitGPerM2 = machineWash({ ...wash, stages: 1, waterLPerHour: most }).limitGPerM2;
  const meets = stages.map(
    (count) => `${named(count)}: ${waterToMeet({ ...wash, stages: count })}`,
  );
  const y = {
    field: "left",
    type: "quantitative",
    title: "Left in the material (g/m²)",
    // Below a hundredth of the limit nobody asks.
    scale: {
      type: "log",
      domain: [limitGPerM2 / 100, (wash.carryOverMlPerM2 / 1000) * wash.carriedInGPerL],
    },
    axis: { format: "~g", tickCount: 6 },
  };
  const limit = { values: [{ left: limitGPerM2, text: `limit ${limitGPerM2} g/m²` }] };
  const key = { field: "tanks", type: "nominal", sort: stages.map(named), title: null };
  return vegaLiteFigure({
    title: options.title,
    description: `Residual against water, ${wash.flow}. The limit of ${limitGPerM2} g/m² is met from: ${meets.join("; ")}.`,
    specification: {
      width: 420,
      height: 260,
      layer: [
        {
          data: limit,
          mark: { type: "rule", color: palette.control, strokeDash: [6, 3], strokeWidth: 1.5 },
          encoding: { y },
        },
        {
          data: limit,
          mark: { type: "text", align: "left", x: 426, color: palette.control },
          encoding: { y, text: { field: "text" } },
        },
        {
          data: { values },
          mark: { type: "line", clip: true },
          encoding: {
            x: {
              field: "water",
              type: "quantitative",
              title: "Fresh water (L/m²)",
              scale: { type: "log", nice: false },
              axis: { format: "~g", values: [0.1, 0.3, 1, 3, 10, 30, 100] },
            },
            y,
            color: key,
            strokeDash: key,
          },
        },
      ],
    },
  });
}

function waterToMeet(wash: Omit<MachineWash, "waterLPerHour">): string {
  try {
    const { waterLPerM2 } = waterForLimit(wash).wash;
    return `${Number(waterLPerM2.toPrecision(2))} L/m²`;
  } catch (error) {
    if (error instanceof InputError) return "by no amount of water";
    throw error;
  }
}

function named(count: number): string {
  return count === 1 ? "1 tank" : `${count} tanks`;
}
