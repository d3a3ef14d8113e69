import { readFile } from "node:fs/promises";
import { escapeHtml } from "./escape-html.ts";
import { packageFile } from "./installation.ts";
import type { Notebook } from "./notebook-file.ts";

/** One page for the list of pages. */
export interface PageEntry {
  /** Name of the page's file. */
  readonly href: string;
  /** Title as HTML. */
  readonly title: string;
  readonly reader: Reader;
}

/** Whom a notebook is written for. */
export type Reader = "lab chemist" | "teacher" | "hobbyist" | "everybody";

const READERS: Readonly<Record<Reader, string>> = {
  "lab chemist": "For the lab chemist",
  teacher: "For the teacher of process control",
  hobbyist: "For the hobbyist",
  everybody: "For everybody",
};

/** The first of the readers that a notebook's opening cells name. */
export function readerOf(notebook: Notebook): Reader {
  const opening = notebook.cells.filter(({ cell_type }) => cell_type === "markdown").slice(0, 3);
  const text = opening.map(({ source }) => source.toLowerCase()).join("\n");
  const places = (["lab chemist", "teacher", "hobbyist"] as const)
    .map((reader) => ({ reader, at: text.indexOf(reader) }))
    .filter(({ at }) => at >= 0)
    .sort((a, b) => a.at - b.at);
  return places[0]?.reader ?? "everybody";
}

/** The list of pages, by reader. */
export async function indexPage(entries: readonly PageEntry[]): Promise<string> {
  const style = await readFile(packageFile("page.css"), "utf8");
  const groups = (Object.keys(READERS) as Reader[]).flatMap((reader) => {
    const items = entries
      .filter((each) => each.reader === reader)
      .map(({ href, title }) => `<li><a href="${escapeHtml(encodeURI(href))}">${title}</a></li>`);
    return items.length === 0
      ? []
      : [`<h2>${READERS[reader]}</h2>\n<ul>\n${items.join("\n")}\n</ul>`];
  });
  return `${[
    "<!doctype html>",
    '<html lang="en">',
    "<head>",
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    "<title>Notebooks for the darkroom and the lab</title>",
    `<style>${style}</style>`,
    "</head>",
    "<body>",
    "<main>",
    "<h1>Notebooks for the darkroom and the lab</h1>",
    ...groups,
    "</main>",
    "</body>",
    "</html>",
  ].join("\n")}\n`;
}
