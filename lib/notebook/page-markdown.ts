import type MarkdownIt from "markdown-it";
import { escapeHtml } from "./escape-html.ts";
import { optionalPackage } from "./optional-package.ts";
import type { CodePainter } from "./page-code.ts";
import { mathRules, type Typesetter, wrongFormula } from "./page-math.ts";

/** A heading of the page, for its table of contents. */
export interface Heading {
  readonly level: number;
  readonly id: string;
  readonly html: string;
}

/** What a renderer needs to know of the page it writes for. */
export interface MarkdownPlace {
  /** The address a link or picture in the text has in the page. */
  readonly address: (written: string, kind: "link" | "picture") => string;
  /** Called with each fault, such as a formula that cannot be read. */
  readonly fault: (message: string) => void;
}

/** Renders Markdown, and keeps the headings it met. */
export interface MarkdownRenderer {
  readonly render: (text: string) => string;
  readonly headings: readonly Heading[];
}

/** Tags that may stand in the text as HTML; without attributes, but for those named. */
const TAGS =
  /^<\/?(?:br|sub|sup|kbd|details|summary|em|strong|b|i|small|u|hr|p|div|span)(?: open)? ?\/?>$/;

/** A renderer of Markdown with formulas, coloured code, and headings that can be linked to. */
export async function markdownRenderer(
  paint: CodePainter,
  place: MarkdownPlace,
): Promise<MarkdownRenderer> {
  const { default: Markdown } = await optionalPackage("markdown-it", () => import("markdown-it"));
  const { default: katex } = await optionalPackage("katex", () => import("katex"));
  const markdown = new Markdown({ html: true, linkify: false, typographer: false });
  const typeset: Typesetter = (tex, block) => {
    try {
      return katex.renderToString(tex, { output: "mathml", displayMode: block, strict: "ignore" });
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      place.fault(`the formula ${tex} cannot be typeset: ${reason}`);
      return wrongFormula(tex, reason);
    }
  };
  mathRules(markdown, typeset);
  const headings: Heading[] = [];
  headingRules(markdown, headings);
  safeRules(markdown);
  addressRules(markdown, place);
  markdown.renderer.rules.fence = (tokens, i) => {
    const { content = "", info = "" } = tokens[i] ?? {};
    return paint(content, info.trim().split(/\s+/)[0] ?? "");
  };
  markdown.renderer.rules.table_open = () => '<div class="scroll" tabindex="0"><table>\n';
  markdown.renderer.rules.table_close = () => "</table></div>\n";
  return { render: (text) => markdown.render(text), headings };
}

function headingRules(markdown: MarkdownIt, headings: Heading[]): void {
  const used = new Set<string>();
  markdown.renderer.rules.heading_open = (tokens, i, options, env) => {
    const inline = tokens[i + 1];
    const html = inline ? markdown.renderer.renderInline(inline.children ?? [], options, env) : "";
    const level = Number(tokens[i]?.tag.slice(1));
    const id = uniqueId(inline?.content ?? "", used);
    headings.push({ level, id, html });
    return `<h${level} id="${id}">`;
  };
}

function uniqueId(text: string, used: Set<string>): string {
  const words = text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? ["section"];
  const id = words.join("-").slice(0, 60);
  for (let n = 1; ; n++) {
    const tried = n === 1 ? id : `${id}-${n}`;
    if (used.has(tried)) continue;
    used.add(tried);
    return tried;
  }
}

/** HTML in the text stands only if it is a plain tag; anything else shows as it is written. */
function safeRules(markdown: MarkdownIt): void {
  const safe = (html: string) =>
    html
      .split(/(<[^>]*>)/)
      .map((part) =>
        !part.startsWith("<")
          ? part
          : TAGS.test(part) || /^<!--.*-->$/s.test(part)
            ? part
            : escapeHtml(part),
      )
      .join("");
  markdown.renderer.rules.html_block = (tokens, i) => safe(tokens[i]?.content ?? "");
  markdown.renderer.rules.html_inline = (tokens, i) => safe(tokens[i]?.content ?? "");
}

function addressRules(markdown: MarkdownIt, place: MarkdownPlace): void {
  const image = markdown.renderer.rules.image;
  markdown.renderer.rules.image = (tokens, i, options, env, self) => {
    const token = tokens[i];
    token?.attrSet("src", place.address(decodeURI(token.attrGet("src") ?? ""), "picture"));
    return image === undefined ? "" : image(tokens, i, options, env, self);
  };
  markdown.renderer.rules.link_open = (tokens, i, options, _env, self) => {
    const token = tokens[i];
    token?.attrSet("href", place.address(token.attrGet("href") ?? "", "link"));
    return self.renderToken(tokens, i, options);
  };
}
