import type { JsonObject } from "./figure.ts";

/**
 * The x channel of a figure over days: the dates of the rows, as the lab writes them. Without a
 * title it is the upper one of several panels, whose labels stand below the lowest.
 */
export function dateAxis(title: string | null): JsonObject {
  const axis = { format: "%d %b", tickCount: 8 };
  return {
    field: "date",
    type: "temporal",
    title,
    scale: { type: "utc" },
    axis: title === null ? { ...axis, labels: false } : axis,
  };
}
