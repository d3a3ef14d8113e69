import type MarkdownIt from "markdown-it";
import { escapeHtml } from "./escape-html.ts";

/** Typesets one formula: TeX in, HTML out. */
export type Typesetter = (tex: string, block: boolean) => string;

/**
 * Teaches Markdown the formulas that Jupyter knows: `$…$` in a line and `$$…$$` on its own. A
 * dollar before a blank, or after one, or before a digit is money.
 */
export function mathRules(markdown: MarkdownIt, typeset: Typesetter): void {
  markdown.inline.ruler.before("escape", "math", (state, silent) => {
    const found = /^(\$\$?)(?!\s)((?:\\.|[^$\\])+?)(?<!\s)\1(?!\d)/s.exec(
      state.src.slice(state.pos),
    );
    if (found === null || state.src[state.pos] !== "$") return false;
    if (!silent) {
      const token = state.push("math", "math", 0);
      token.content = found[2] ?? "";
      token.block = found[1] === "$$";
    }
    state.pos += found[0].length;
    return true;
  });
  markdown.block.ruler.before(
    "fence",
    "math_block",
    (state, start, end, silent) => {
      const line = (n: number) =>
        state.src.slice((state.bMarks[n] ?? 0) + (state.tShift[n] ?? 0), state.eMarks[n]);
      if (!line(start).startsWith("$$")) return false;
      const lines: string[] = [];
      for (let n = start; n < end; n++) {
        const text = n === start ? line(n).slice(2) : line(n);
        const close = text.indexOf("$$");
        lines.push(close < 0 ? text : text.slice(0, close));
        if (close < 0) continue;
        if (text.slice(close + 2).trim() !== "") return false;
        if (silent) return true;
        const token = state.push("math_block", "math", 0);
        token.content = lines.join("\n").trim();
        token.block = true;
        token.map = [start, n + 1];
        state.line = n + 1;
        return true;
      }
      return false;
    },
    { alt: ["paragraph", "reference", "blockquote", "list"] },
  );
  const render = (content: string, block: boolean) =>
    block
      ? `<div class="formula" tabindex="0">${typeset(content, true)}</div>\n`
      : typeset(content, false);
  markdown.renderer.rules.math = (tokens, i) =>
    typeset(tokens[i]?.content ?? "", tokens[i]?.block ?? false);
  markdown.renderer.rules.math_block = (tokens, i) => render(tokens[i]?.content ?? "", true);
}

/** A formula that cannot be typeset, shown as written and marked as wrong. */
export function wrongFormula(tex: string, reason: string): string {
  return `<code class="wrong" title="${escapeHtml(reason)}">${escapeHtml(tex)}</code>`;
}
