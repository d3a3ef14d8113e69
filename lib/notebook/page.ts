import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { dirname, resolve } from "node:path";
import { escapeHtml } from "./escape-html.ts";
import { packageFile } from "./installation.ts";
import { type Cell, type Notebook, tagsOf } from "./notebook-file.ts";
import { requirePackages } from "./optional-package.ts";
import { pageAddress } from "./page-address.ts";
import { codePainter } from "./page-code.ts";
import { pageLibraries } from "./page-libraries.ts";
import { type Heading, markdownRenderer } from "./page-markdown.ts";
import { outputHtml, type PageParts } from "./page-outputs.ts";

/** A page, and what could not be put into it. */
export interface Page {
  readonly title: string;
  readonly html: string;
  readonly faults: readonly string[];
}

/**
 * A notebook with its outputs as one HTML file that needs nothing else: no network, no other file.
 * The same notebook gives the same bytes.
 *
 * @param file path of the notebook; relative links and pictures in it start from its folder
 * @param pageFolder folder the page is meant for
 */
export async function notebookPage(
  notebook: Notebook,
  file: string,
  pageFolder: string,
): Promise<Page> {
  requirePackages(["katex", "markdown-it", "shiki"]);
  const faults: string[] = [];
  const fault = (message: string) => faults.push(message);
  const folders = { notebookFolder: dirname(resolve(file)), pageFolder: resolve(pageFolder) };
  let current: Cell | undefined;
  const paint = await codePainter();
  const { render, headings } = await markdownRenderer(paint, {
    address: (written, kind) =>
      current === undefined ? written : pageAddress(written, kind, current, folders, fault),
    fault,
  });
  const parts: PageParts = {
    data: new Map(),
    renderMarkdown: render,
    uses: { vega: false, plotly: false },
  };
  const body = notebook.cells.map((cell) => {
    current = cell;
    return cellHtml(cell, render, paint, parts);
  });
  const title = titleOf(headings, file);
  const html = await wholePage(title, body.join("\n"), headings, parts);
  return { title, html, faults };
}

function titleOf(headings: readonly Heading[], file: string): string {
  const first = headings.find(({ level }) => level === 1);
  const name =
    file
      .split(/[\\/]/)
      .at(-1)
      ?.replace(/\.ipynb$/, "") ?? "";
  return first === undefined
    ? name
    : first.html.replace(/<annotation.*?<\/annotation>|<[^>]*>/gs, "");
}

function cellHtml(
  cell: Cell,
  render: (text: string) => string,
  paint: (code: string, language: string) => string,
  parts: PageParts,
): string {
  const tags = tagsOf(cell);
  if (cell.cell_type === "markdown")
    return folded(tags, `<section class="prose">${render(cell.source)}</section>`);
  if (cell.cell_type === "raw" || cell.source.trim() === "") return "";
  const number = cell.execution_count ?? "";
  const label = `<span class="number" title="cell ${number}">${number}</span>`;
  const code = `<div class="source">${label}${paint(cell.source, "typescript")}</div>`;
  const outputs = (cell.outputs ?? []).map((output) => outputHtml(output, parts));
  const result = outputs.length === 0 ? "" : `<div class="result">${outputs.join("\n")}</div>`;
  const kinds = tags.map((tag) => ` tag-${tag.replace(/[^\w-]/g, "")}`).join("");
  return folded(tags, `<section class="cell${kinds}">${code}\n${result}</section>`);
}

function folded(tags: readonly string[], html: string): string {
  if (!tags.includes("solution")) return html;
  return `<details class="solution"><summary>Solution</summary>\n${html}\n</details>`;
}

async function wholePage(
  title: string,
  body: string,
  headings: readonly Heading[],
  parts: PageParts,
): Promise<string> {
  const style = await readFile(packageFile("page.css"), "utf8");
  const scripts = await pageLibraries(parts.uses);
  const hashes = scripts.map(
    (text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`,
  );
  const policy = `default-src 'none'; style-src 'unsafe-inline'; img-src data: blob:; script-src 'unsafe-eval' ${hashes.join(" ")}`;
  const data = [...parts.data]
    .filter(([, value]) => value !== null)
    .map(
      ([id, value]) =>
        `<script type="application/json" data-for="${id}">${jsonInHtml(value)}</script>`,
    );
  return `${[
    "<!doctype html>",
    '<html lang="en">',
    "<head>",
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${escapeHtml(policy).replaceAll("&#39;", "'")}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="generator" content="wetside">',
    `<title>${title}</title>`,
    `<style>${style}</style>`,
    "</head>",
    "<body>",
    '<a class="skip" href="#content">Skip to the text</a>',
    contents(headings),
    `<main id="content">\n${body}\n</main>`,
    ...data,
    ...scripts.map((text) => `<script>${text}</script>`),
    "</body>",
    "</html>",
  ].join("\n")}\n`;
}

function contents(headings: readonly Heading[]): string {
  const listed = headings.filter(({ level }) => level === 2 || level === 3);
  if (listed.length < 2) return "";
  const items = listed.map(
    ({ level, id, html }) => `<li class="level-${level}"><a href="#${id}">${html}</a></li>`,
  );
  return `<nav class="contents" aria-label="Contents"><details open><summary>Contents</summary>\n<ul>\n${items.join("\n")}\n</ul></details></nav>`;
}

/** JSON that cannot end the script element it stands in. */
function jsonInHtml(value: unknown): string {
  return JSON.stringify(value)
    .replaceAll("<", "\\u003c")
    .replaceAll("\u2028", "\\u2028")
    .replaceAll("\u2029", "\\u2029");
}
