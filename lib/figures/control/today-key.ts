import type { KeyItem } from "../parts/chart-key.ts";
import { lineStyles } from "../parts/theme.ts";
import { emphasised } from "./chart-points.ts";
import { beyondProcess } from "./control-chart-panel.ts";
import type { TodayRow } from "./today-figure.ts";

/** The key: the two strips and the limits. */
export function todayKey(
  rows: readonly TodayRow[],
  now: string,
  before: string | undefined,
): KeyItem[] {
  const grey = "#555555";
  const hollow = { shape: "circle", filled: true, fill: "white", stroke: grey, size: 42 };
  const out = rows.some((row) => row.now !== undefined && beyondProcess(row.series, row.now));
  return [
    { label: `strip of ${now}`, marker: { shape: "circle", filled: true, color: grey, size: 60 } },
    ...(before === undefined ? [] : [{ label: `strip of ${before}`, marker: hollow }]),
    { label: "process action limit", line: lineStyles.action, upright: true, newRow: true },
    { label: "process control limit", line: lineStyles.control, upright: true },
    ...(out
      ? [{ label: "beyond a limit", marker: { shape: "circle", ...emphasised("control", grey) } }]
      : []),
  ];
}
