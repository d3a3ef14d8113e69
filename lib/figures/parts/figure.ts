import { InputError, requireObject } from "../../input/index.ts";
import { requireAxisTitles, requirePlotlyAxisTitles } from "./axis-titles.ts";
import { requireFiniteValues } from "./finite-values.ts";
import { vegaLiteTheme, withPlotlyTheme } from "./theme.ts";

/** A plain object as JSON has it: what a drawing specification is made of. */
export type JsonObject = { readonly [key: string]: unknown };

/** A figure as a Vega-Lite v5 specification, to be filed and printed. */
export interface VegaLiteFigure {
  readonly kind: "vega-lite";
  readonly title: string;
  /** Text alternative: what a reader who cannot see the figure must know from it. */
  readonly description: string;
  readonly specification: JsonObject;
}

/** A figure as Plotly data and layout, to be explored on a page. */
export interface PlotlyFigure {
  readonly kind: "plotly";
  readonly title: string;
  /** Text alternative: what a reader who cannot see the figure must know from it. */
  readonly description: string;
  readonly data: readonly JsonObject[];
  readonly layout: JsonObject;
}

/** What a notebook shows: media type → content. */
export type DisplayBundle = { readonly [mediaType: string]: unknown };

const DISPLAY: unique symbol = Symbol.for("Jupyter.display") as never;

/**
 * A figure from a Vega-Lite specification: adds title, text alternative, theme and white
 * background, and refuses a figure that leaves out what a reader needs.
 *
 * @param options.title what the figure shows, in words
 * @param options.description text alternative: the facts a reader must take from the figure
 * @param options.specification Vega-Lite v5 specification without title and description; every
 *   axis that is drawn has a title that names its unit in brackets or says "no unit"
 * @returns plain JSON-safe object; shows itself in a notebook
 * @throws InputError for a missing title or text alternative, an axis without a unit, or a number
 *   that is not finite
 *
 * @example
 * vegaLiteFigure({ title: "One point", description: "A point at 1 min.", specification: { data: { values: [{ t: 1 }] }, mark: "point", encoding: { x: { field: "t", type: "quantitative", title: "Time (min)" } } } }).kind // => "vega-lite"
 *
 * Source: Vega-Lite v5 specification, https://vega.github.io/schema/vega-lite/v5.json
 */
export function vegaLiteFigure(options: {
  readonly title: string;
  readonly description: string;
  readonly specification: JsonObject;
}): VegaLiteFigure {
  const where = "vegaLiteFigure";
  const { title, description } = requireTexts(where, options);
  if (typeof options.specification !== "object" || options.specification === null) {
    const advice = "write a Vega-Lite specification as an object";
    throw new InputError(where, "specification", options.specification, advice);
  }
  requireAxisTitles(where, options.specification);
  requireFiniteValues(where, "specification", options.specification);
  const { config, ...rest } = options.specification;
  const specification: JsonObject = {
    $schema: "https://vega.github.io/schema/vega-lite/v5.json",
    title: titleLines(title),
    description,
    background: "white",
    ...rest,
    config: { ...vegaLiteTheme, ...(typeof config === "object" ? config : {}) },
  };
  const figure: VegaLiteFigure = { kind: "vega-lite", title, description, specification };
  return displayedAs(figure, {
    "application/vnd.vegalite.v5+json": specification,
    "text/plain": textAlternative(title, description),
  });
}

/**
 * A figure from Plotly data and layout: adds title, theme and text alternative.
 *
 * @param options.title what the figure shows, in words
 * @param options.description text alternative: the facts a reader must take from the figure
 * @param options.data Plotly traces as plain JSON
 * @param options.layout Plotly layout; every axis has a title that names its unit in brackets or
 *   says "no unit" (also the axes of a three-dimensional scene)
 * @returns plain JSON-safe object; shows itself in a notebook
 * @throws InputError for a missing title or text alternative, or an axis without a unit
 *
 * @example
 * plotlyFigure({ title: "One point", description: "A point.", data: [{ x: [1], y: [2] }], layout: { xaxis: { title: { text: "Time (min)" } }, yaxis: { title: { text: "Density (no unit)" } } } }).kind // => "plotly"
 */
export function plotlyFigure(options: {
  readonly title: string;
  readonly description: string;
  readonly data: readonly JsonObject[];
  readonly layout: JsonObject;
}): PlotlyFigure {
  const where = "plotlyFigure";
  const { title, description } = requireTexts(where, options);
  if (!Array.isArray(options.data) || options.data.length === 0) {
    throw new InputError(where, "data", options.data, "write at least one Plotly trace");
  }
  requirePlotlyAxisTitles(where, options.data, options.layout);
  requireFiniteValues(where, "data", options.data);
  const layout = withPlotlyTheme(title, options.layout);
  const figure: PlotlyFigure = { kind: "plotly", title, description, data: options.data, layout };
  return displayedAs(figure, {
    "application/vnd.plotly.v1+json": { data: options.data, layout },
    "text/plain": textAlternative(title, description),
  });
}

/**
 * Gives an object the hidden method by which a notebook shows it: `Symbol.for("Jupyter.display")`,
 * not enumerable, so that the object stays plain data for JSON and for comparison.
 *
 * @param value any object that is not frozen
 * @param bundle what is shown, by media type; always with `text/plain`
 * @returns the same object
 *
 * @example
 * JSON.stringify(displayedAs({ litres: 2 }, { "text/plain": "2 L" })) // => "{\"litres\":2}"
 */
export function displayedAs<T extends object>(value: T, bundle: DisplayBundle): T {
  return Object.defineProperty(value, DISPLAY, { value: () => bundle, configurable: true });
}

const LONGEST_TITLE_LINE = 56;

/** A long title in lines, as Vega-Lite takes it. */
function titleLines(title: string): string | readonly string[] {
  if (title.length <= LONGEST_TITLE_LINE) return title;
  const lines: string[] = [];
  for (const word of title.split(" ")) {
    const longer = `${lines.at(-1) ?? ""} ${word}`;
    if (lines.length > 0 && longer.length <= LONGEST_TITLE_LINE) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function textAlternative(title: string, description: string): string {
  return `${title}\n${description}`;
}

function requireTexts(
  where: string,
  texts: { readonly title: unknown; readonly description: unknown },
): { readonly title: string; readonly description: string } {
  const { title, description } = requireObject(where, "options", texts);
  if (typeof title !== "string" || title.trim() === "") {
    throw new InputError(where, "title", title, "write in words what the figure shows");
  }
  if (typeof description !== "string" || description.trim() === "") {
    const advice = "write a text alternative: the facts a reader must take from the figure";
    throw new InputError(where, "description", description, advice);
  }
  return { title, description };
}
