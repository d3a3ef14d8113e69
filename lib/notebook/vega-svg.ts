import { optionalPackage } from "./optional-package.ts";

/**
 * A Vega-Lite specification drawn as SVG text: without a canvas, with the same ids and the same
 * estimate of text widths on every machine, so that the same figure gives the same bytes.
 */
export async function vegaLiteSvg(specification: unknown): Promise<string> {
  // Dates without a time zone are drawn as they are written, wherever this runs.
  process.env.TZ = "UTC";
  const vega = await optionalPackage("vega", () => import("vega"));
  const { compile } = await optionalPackage("vega-lite", () => import("vega-lite"));
  const metrics = (vega as unknown as { textMetrics: { canvas(use: boolean): void } }).textMetrics;
  metrics.canvas(false);
  (vega as unknown as { resetSVGDefIds(): void }).resetSVGDefIds();
  const { spec } = compile(specification as Parameters<typeof compile>[0], { logger: quiet(vega) });
  const view = new vega.View(vega.parse(spec), { renderer: "none", logLevel: vega.Error });
  try {
    return await view.toSVG();
  } finally {
    view.finalize();
  }
}

function quiet(vega: typeof import("vega")): ReturnType<typeof vega.logger> {
  return vega.logger(vega.Error);
}
