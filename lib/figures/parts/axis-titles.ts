import { InputError } from "../../input/index.ts";
import type { JsonObject } from "./figure.ts";

const ADVICE =
  'write an axis title that names the unit in brackets: "Time (min)" or "pH (no unit)"';

/** True if an axis title names a unit in brackets or says "no unit". */
export function namesUnit(title: string): boolean {
  return /\([^()]+\)/.test(title) || /\bno unit\b/.test(title);
}

/** Refuses a Vega-Lite specification in which a drawn axis has no title with a unit. */
export function requireAxisTitles(where: string, specification: JsonObject): void {
  checkView(where, specification, { x: undefined, y: undefined }, "specification");
}

const PARTS = ["layer", "hconcat", "vconcat", "concat"] as const;
type Titles = { readonly x: string | undefined; readonly y: string | undefined };

function checkView(where: string, view: JsonObject, inherited: Titles, path: string): void {
  let titles = own(view, inherited);
  if (Array.isArray(view.layer)) {
    for (const layer of view.layer) if (isObject(layer)) titles = own(layer, titles);
  }
  checkEncoding(where, view.encoding, titles, path);
  for (const part of PARTS) {
    const views = view[part];
    if (!Array.isArray(views)) continue;
    views.forEach((each, i) => {
      if (isObject(each)) checkView(where, each, titles, `${path}.${part}[${i}]`);
    });
  }
  if (isObject(view.spec)) checkView(where, view.spec, titles, `${path}.spec`);
}

function own(view: JsonObject, otherwise: Titles): Titles {
  const encoding = isObject(view.encoding) ? view.encoding : {};
  return {
    x: otherwise.x ?? channelTitle(encoding.x),
    y: otherwise.y ?? channelTitle(encoding.y),
  };
}

function checkEncoding(where: string, encoding: unknown, titles: Titles, path: string): void {
  if (!isObject(encoding)) return;
  for (const name of ["x", "y"] as const) {
    const channel = encoding[name];
    if (!isObject(channel) || "value" in channel || !labelled(channel.axis)) continue;
    const title = channelTitle(channel) ?? titles[name];
    if (title !== undefined && namesUnit(title)) continue;
    throw new InputError(where, `${path}.encoding.${name}.title`, title, ADVICE);
  }
}

/** An axis that is left out, or drawn without numbers, needs no title. */
function labelled(axis: unknown): boolean {
  return axis !== null && !(isObject(axis) && axis.labels === false);
}

function channelTitle(channel: unknown): string | undefined {
  if (!isObject(channel)) return undefined;
  const axis = isObject(channel.axis) ? channel.axis.title : undefined;
  return asText(axis) ?? asText(channel.title);
}

/** Refuses a Plotly layout in which an axis has no title with a unit. */
export function requirePlotlyAxisTitles(
  where: string,
  data: readonly JsonObject[],
  layout: JsonObject,
): void {
  const axes = new Map<string, unknown>();
  for (const trace of data) {
    const scene = typeof trace.scene === "string" ? trace.scene : "scene";
    if ("z" in trace && /3d$|^surface$/.test(String(trace.type))) {
      const axesOfScene = layout[scene];
      for (const name of ["xaxis", "yaxis", "zaxis"]) {
        axes.set(`${scene}.${name}`, isObject(axesOfScene) ? axesOfScene[name] : undefined);
      }
    } else if (trace.type !== "table" && trace.type !== "pie") {
      for (const letter of ["x", "y"]) {
        const ref = trace[`${letter}axis`];
        const name = `${letter}axis${typeof ref === "string" ? ref.slice(1) : ""}`;
        axes.set(name, layout[name]);
      }
    }
  }
  for (const [name, axis] of axes) {
    if (isObject(axis) && axis.visible === false) continue;
    const title = isObject(axis)
      ? (asText(axis.title) ?? (isObject(axis.title) ? asText(axis.title.text) : undefined))
      : undefined;
    if (title === undefined || !namesUnit(title)) {
      throw new InputError(where, `layout.${name}.title`, title, ADVICE);
    }
  }
}

function asText(value: unknown): string | undefined {
  if (typeof value === "string") return value;
  return Array.isArray(value) ? value.join(" ") : undefined;
}

function isObject(value: unknown): value is JsonObject {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
