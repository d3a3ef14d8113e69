import type { HighlighterCore } from "shiki/core";
import { escapeHtml } from "./escape-html.ts";
import { optionalPackage } from "./optional-package.ts";

/** Colours code: text and language in, HTML of `<pre>` out. */
export type CodePainter = (code: string, language: string) => string;

const LANGUAGES = ["typescript", "javascript", "json", "shellscript", "csv"] as const;
const ALSO_CALLED: Readonly<Record<string, string>> = {
  ts: "typescript",
  js: "javascript",
  sh: "shellscript",
  bash: "shellscript",
};
const PREFIX = "--code-";

let shared: Promise<CodePainter> | undefined;

/**
 * A painter of code, the same for all pages of a process. Tokens get classes and not colours, so
 * that the style sheet of the page decides on screen and on paper.
 */
export function codePainter(): Promise<CodePainter> {
  shared ??= newPainter();
  return shared;
}

async function newPainter(): Promise<CodePainter> {
  const core = await optionalPackage("shiki", () => import("shiki/core"));
  const { createJavaScriptRegexEngine } = await import("shiki/engine/javascript");
  const { bundledLanguages } = await import("shiki/langs");
  const theme = core.createCssVariablesTheme({ name: "page", variablePrefix: PREFIX });
  const painter = await core.createHighlighterCore({
    langs: LANGUAGES.map((name) => bundledLanguages[name]()),
    themes: [theme],
    engine: createJavaScriptRegexEngine(),
  });
  return (code, language) => paint(painter, code, ALSO_CALLED[language] ?? language);
}

function paint(painter: HighlighterCore, code: string, language: string): string {
  const known = LANGUAGES.some((each) => each === language);
  const text = code.replace(/\n$/, "");
  const inner = known ? painted(painter, text, language) : escapeHtml(text);
  return `<pre class="code" tabindex="0"><code>${inner}</code></pre>`;
}

function painted(painter: HighlighterCore, code: string, language: string): string {
  const { tokens } = painter.codeToTokens(code, {
    lang: language,
    theme: "page",
    // Without this a line that takes long on a busy machine would stay uncoloured.
    tokenizeTimeLimit: 0,
  });
  const lines = tokens.map((line) =>
    line
      .map(({ content, color }) => {
        const kind = color?.match(/token-([a-z-]+)/)?.[1];
        const text = escapeHtml(content);
        return kind === undefined || content.trim() === ""
          ? text
          : `<span class="t-${kind}">${text}</span>`;
      })
      .join(""),
  );
  return lines.join("\n");
}
