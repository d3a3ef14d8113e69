import type { DisplayBundle } from "../figures/index.ts";
import { inspectValue } from "./inspect-value.ts";
import { isFrame, isSeries, showFrame, showSeries } from "./show-frame.ts";

/** The method by which a value shows itself; it may return its bundle later. */
export const DISPLAY: symbol = Symbol.for("Jupyter.display");

/**
 * The bundle that shows any value: by its own `Symbol.for("Jupyter.display")` method; a figure
 * that lost it on the way (through JSON, or by a spread) by what it is; a data frame as a table;
 * anything else as text.
 *
 * @returns the bundle, a promise of it if the value's own method gives one, or `undefined` for a
 *   value that shows nothing
 * @throws TypeError if the value's own method gives no object
 *
 * @example
 * displayBundle([1, 2]) // => { "text/plain": "[1, 2]" }
 *
 * Source: display protocol of Jupyter messaging 5.4 (MIME bundles); the symbol is that of the Deno kernel
 */
export function displayBundle(
  value: unknown,
): DisplayBundle | Promise<DisplayBundle | undefined> | undefined {
  if (value === undefined) return undefined;
  const own = ownDisplay(value);
  if (own !== undefined) {
    const bundle: unknown = own();
    return bundle instanceof Promise ? bundle.then(checkedBundle) : checkedBundle(bundle);
  }
  if (isFrame(value)) return showFrame(value);
  if (isSeries(value)) return showSeries(value);
  return figureBundle(value) ?? { "text/plain": inspectValue(value) };
}

function ownDisplay(value: unknown): (() => unknown) | undefined {
  if ((typeof value !== "object" || value === null) && typeof value !== "function") {
    return undefined;
  }
  const method = (value as { [key: symbol]: unknown })[DISPLAY];
  return typeof method === "function" ? () => method.call(value) : undefined;
}

function checkedBundle(bundle: unknown): DisplayBundle | undefined {
  if (typeof bundle === "object" && bundle !== null && !Array.isArray(bundle)) {
    return Object.keys(bundle).length === 0 ? undefined : (bundle as DisplayBundle);
  }
  throw new TypeError(
    'a value\'s Symbol.for("Jupyter.display") method must return an object of media types',
  );
}

function figureBundle(value: unknown): DisplayBundle | undefined {
  if (typeof value !== "object" || value === null || !("kind" in value)) return undefined;
  const { kind, title, description, specification, data, layout } = value as Record<
    string,
    unknown
  >;
  if (typeof title !== "string" || typeof description !== "string") return undefined;
  const text = `${title}\n${description}`;
  if (kind === "vega-lite" && typeof specification === "object") {
    return { "application/vnd.vegalite.v5+json": specification, "text/plain": text };
  }
  if (kind === "plotly" && Array.isArray(data) && typeof layout === "object") {
    return { "application/vnd.plotly.v1+json": { data, layout }, "text/plain": text };
  }
  return undefined;
}
