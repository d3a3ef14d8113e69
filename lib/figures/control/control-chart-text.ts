import type { ParameterSeries, ProcessLimit } from "../../control/index.ts";
import { dayText, signed } from "../parts/chart-time.ts";
import type { Panel, PanelBand } from "./chart-panel.ts";

const MOST_NAMED = 12;

/** The text alternative of a control chart: span, limits, readings beyond them, events. */
export function controlChartText(
  series: readonly ParameterSeries[],
  panels: readonly Panel[],
  changes: readonly { readonly t: number; readonly label: string }[],
  bands: readonly PanelBand[],
): string {
  const points = panels.flatMap((panel) => panel.points);
  const times = [...new Set(points.map(({ t }) => t))].sort((a, b) => a - b);
  const span = `${dayText(times[0] ?? 0)} to ${dayText(times.at(-1) ?? 0)}`;
  const strips = `${times.length} ${times.length === 1 ? "strip" : "strips"}`;
  const parameters = new Map(series.map((one) => [one.parameter, one]));
  const limits = [...parameters.values()].map((one) => `${one.name} (${limitWords(one)})`);
  const control = points.filter((p) => p.emphasis === "control").sort((a, b) => a.t - b.t);
  const action = points.filter((p) => p.emphasis === "action").length;
  const named = control.slice(-MOST_NAMED).map(({ text }) => text.replace(/, beyond.*$/, ""));
  const listed = control.length > MOST_NAMED ? `; the last ${MOST_NAMED}` : "";
  return [
    `Control chart, ${span}, ${strips}, deviation from aim in density.`,
    `Panels, with the process's limits: ${limits.join("; ")}.`,
    control.length === 0
      ? "No reading is beyond a control limit of the process."
      : `${readings(control.length)} beyond a control limit of the process${listed}: ${named.join("; ")}.`,
    `${readings(action)} beyond an action limit of the process but within its control limit.`,
    ...changes.map(({ t, label }) => `${dayText(t)}: ${label}.`),
    ...bands.map(({ from, label }) => `${dayText(from)}, marked: ${label ?? ""}.`),
  ].join(" ");
}

function readings(count: number): string {
  return count === 1 ? "1 reading is" : `${count} readings are`;
}

function limitWords({ limits }: ParameterSeries): string {
  const words = (["action", "control"] as const).flatMap((kind) => {
    const limit = limits[kind];
    return limit === null ? [] : [`${kind} limit ${both(limit)}`];
  });
  return words.length === 0 ? "no process limits" : words.join(", ");
}

function both({ lower, upper }: ProcessLimit): string {
  if (lower !== null && upper !== null) {
    return lower === -upper ? `±${upper.toFixed(2)}` : `${signed(lower)} and ${signed(upper)}`;
  }
  const one = upper ?? lower;
  return one === null ? "none" : signed(one);
}
