import * as vega from "vega";
import { compile } from "vega-lite";
import type { VegaLiteFigure } from "../../lib/figures/index.ts";

/** What a figure's specification compiles and draws to, with every warning on the way. */
export async function drawn(figure: VegaLiteFigure) {
  const warnings: string[] = [];
  const note = (...words: unknown[]) => {
    warnings.push(words.join(" "));
    return logger;
  };
  const quiet = () => logger;
  const logger = { level: quiet, info: quiet, debug: quiet, warn: note, error: note };
  // A copy, for drawing marks the data of what it draws.
  const asked = structuredClone(figure.specification) as unknown as Parameters<typeof compile>[0];
  const { spec } = compile(asked, { logger: logger as never });
  const view = new vega.View(vega.parse(spec), { renderer: "none", logger: logger as never });
  const svg = await view.toSVG();
  view.finalize();
  const [, width = "0", height = "0"] = /width="(\d+)" height="(\d+)"/.exec(svg) ?? [];
  return { warnings, svg, width: Number(width), height: Number(height) };
}

/** Every mark definition of a specification, however deep. */
export function marksOf(value: unknown): Record<string, unknown>[] {
  if (Array.isArray(value)) return value.flatMap(marksOf);
  if (typeof value !== "object" || value === null) return [];
  const mark = (value as { mark?: unknown }).mark;
  const own = typeof mark === "object" && mark !== null ? [mark as Record<string, unknown>] : [];
  return [...own, ...Object.values(value).flatMap(marksOf)];
}
