import { escapeHtml } from "./escape-html.ts";
import type { Bundle, Output } from "./notebook-file.ts";

/** Gathers what outputs need of the page around them. */
export interface PageParts {
  /** Specifications and data of figures, by id, to be put into the page as JSON. */
  readonly data: Map<string, unknown>;
  readonly renderMarkdown: (text: string) => string;
  readonly uses: { vega: boolean; plotly: boolean };
}

const VEGA_LITE = "application/vnd.vegalite.v5+json";
const PLOTLY = "application/vnd.plotly.v1+json";

/** A text alternative longer than this, in characters, is folded. */
const LONG_TEXT = 260;

/** One output of a cell as HTML. */
export function outputHtml(output: Output, parts: PageParts): string {
  switch (output.output_type) {
    case "stream":
      return textBlock(output.text, output.name === "stderr" ? "text warning" : "text");
    case "error":
      return textBlock(output.traceback.join("\n"), "text wrong");
    default:
      return bundleHtml(output.data, parts);
  }
}

function bundleHtml(data: Bundle, parts: PageParts): string {
  if (VEGA_LITE in data) return chartHtml(data, parts);
  if (PLOTLY in data) return plotHtml(data, parts);
  const html = data["text/html"];
  if (typeof html === "string") return tableBlock(html);
  const markdown = data["text/markdown"];
  if (typeof markdown === "string")
    return `<div class="prose">${parts.renderMarkdown(markdown)}</div>`;
  const svg = data["image/svg+xml"];
  if (typeof svg === "string")
    return `<div class="scroll" tabindex="0">${withOwnIds(svg, nextId(parts))}</div>`;
  for (const type of ["image/png", "image/jpeg", "image/gif"]) {
    const picture = data[type];
    if (typeof picture !== "string") continue;
    const text = escapeHtml(plainText(data) || "picture");
    return `<img alt="${text}" src="data:${type};base64,${picture.replace(/\s/g, "")}">`;
  }
  const json = data["application/json"];
  return textBlock(plainText(data) || JSON.stringify(json ?? null, null, 2), "text");
}

function textBlock(text: string, kind: string): string {
  return `<pre class="${kind}" tabindex="0">${escapeHtml(text.replace(/\n$/, ""))}</pre>`;
}

function tableBlock(html: string): string {
  const caption = /<caption>(.*?)<\/caption>/s.exec(html)?.[1]?.trim();
  const label = caption ? ` role="region" aria-label="${escapeHtml(textOf(caption))}"` : "";
  const roomy = html.replace(LONG_CELL, '<$1 class="long"$2>$3<');
  return `<div class="scroll"${label} tabindex="0">${roomy}</div>`;
}

/** A cell with so much text that a narrow column would make it a tower. */
const LONG_CELL = /<(td|th)((?: (?!class=)[^>]*)?)>([^<]{40,})</g;

function textOf(html: string): string {
  const plain = html.replace(/<[^>]*>/g, "");
  return plain
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&");
}

/** A Vega-Lite figure: drawn at once, drawn anew to fit the window where scripts run. */
function chartHtml(data: Bundle, parts: PageParts): string {
  const id = nextId(parts);
  parts.data.set(id, data[VEGA_LITE]);
  parts.uses.vega = true;
  const svg = data["image/svg+xml"];
  const drawn = typeof svg === "string" ? withOwnIds(svg, id) : "";
  return figure(
    id,
    "chart",
    plainText(data),
    `<div class="drawn" role="img" aria-labelledby="${id}-text">${drawn}</div>`,
  );
}

/** A Plotly figure: only a script can draw it; without one its text stands alone. */
function plotHtml(data: Bundle, parts: PageParts): string {
  const id = nextId(parts);
  parts.data.set(id, data[PLOTLY]);
  parts.uses.plotly = true;
  return figure(id, "plot", plainText(data), "");
}

function figure(id: string, kind: "chart" | "plot", text: string, drawn: string): string {
  const [title = "", ...rest] = text.split("\n");
  const words = escapeHtml(rest.join(" "));
  const heading =
    kind === "chart"
      ? `<span class="unseen">${escapeHtml(title)}. </span>`
      : `<strong>${escapeHtml(title)}.</strong> `;
  return [
    `<figure class="${kind}" id="${id}">`,
    drawn,
    `<div class="live" role="img" aria-labelledby="${id}-text"></div>`,
    `<figcaption>${captionHtml(id, heading, words)}</figcaption>`,
    "</figure>",
  ].join("\n");
}

function captionHtml(id: string, heading: string, words: string): string {
  if (words.length <= LONG_TEXT) return `<p id="${id}-text">${heading}${words}</p>`;
  const folded = `<p id="${id}-text"><span class="unseen">${heading}</span>${words}</p>`;
  const seen = heading.startsWith("<strong>") ? heading : "";
  return `${seen}<details><summary>The figure in words</summary>${folded}</details>`;
}

function plainText(data: Bundle): string {
  const text = data["text/plain"];
  return typeof text === "string" ? text : "";
}

function nextId(parts: PageParts): string {
  const id = `figure-${parts.data.size + 1}`;
  parts.data.set(id, null);
  return id;
}

/** The SVG with ids of its own, so that the figures of a page do not borrow each other's parts. */
function withOwnIds(svg: string, prefix: string): string {
  return svg
    .replace(/\bid="([^"]+)"/g, `id="${prefix}-$1"`)
    .replace(/url\(#([^)]+)\)/g, `url(#${prefix}-$1)`)
    .replace(/(xlink:href|href)="#([^"]+)"/g, `$1="#${prefix}-$2"`);
}
