import { signed } from "../parts/chart-time.ts";
import type { JsonObject } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

/** A crossing of a limit as it is drawn: times in ms, the limit's value. */
export interface DrawnCrossing {
  readonly v: number;
  readonly t: number;
  readonly from: number;
  readonly to: number;
  readonly label: string;
}

/** How a crossing is marked; also the key's sample. */
export const crossingMarker: JsonObject = {
  type: "point",
  shape: "diamond",
  size: 90,
  color: palette.control,
};

/** Limits across the panel, each with its value. */
export function limitLayers(limits: readonly number[], y: JsonObject): JsonObject[] {
  const values = limits.map((v) => ({ v, label: `limit ${signed(v, 2)}` }));
  return [
    {
      data: { values },
      mark: { type: "rule", color: palette.control, strokeDash: [6, 3], strokeWidth: 1.5 },
      encoding: { x: null, y: { ...y, field: "v" } },
    },
    {
      data: { values },
      mark: { type: "text", align: "left", dx: 4, dy: -7, color: palette.control },
      encoding: {
        x: { value: 0 },
        y: { ...y, field: "v" },
        text: { field: "label", type: "nominal" },
      },
    },
  ];
}

/** On each limit the interval of the crossing, the crossing and its day. */
export function crossingLayers(
  crossings: readonly DrawnCrossing[],
  x: JsonObject,
  y: JsonObject,
  falls: boolean,
): JsonObject[] {
  const data = { values: crossings };
  const height = { ...y, field: "v" };
  // The name of the day stands on the side of the limit that the line has left.
  const beside = { align: "left", dx: 7, dy: falls ? -12 : 13 };
  return [
    {
      data,
      mark: { type: "rule", color: palette.control, strokeWidth: 4, opacity: 0.55 },
      encoding: { x: { ...x, field: "from" }, x2: { field: "to" }, y: height },
    },
    { data, mark: crossingMarker, encoding: { y: height } },
    {
      data,
      mark: { type: "text", ...beside, fontWeight: 600, color: palette.control },
      encoding: { y: height, text: { field: "label", type: "nominal" } },
    },
  ];
}
