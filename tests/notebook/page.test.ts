import { describe, expect, it } from "vitest";
import type { Output } from "../../lib/notebook/notebook-file.ts";
import { notebookPage } from "../../lib/notebook/page.ts";
import { indexPage, readerOf } from "../../lib/notebook/page-index.ts";
import { type Draft, draftNotebook } from "./fixture.ts";

async function page(drafts: readonly Draft[], outputs: readonly Output[] = []) {
  const notebook = draftNotebook(drafts);
  const cells = notebook.cells.map((cell) =>
    cell.cell_type === "code" ? { ...cell, execution_count: 1, outputs } : cell,
  );
  return notebookPage({ ...notebook, cells }, "/lab/notebooks/trial.ipynb", "/lab/out/pages");
}
const result = (data: Record<string, unknown>): Output => ({
  output_type: "execute_result",
  data,
  metadata: {},
  execution_count: 1,
});
const main = (html: string) => html.slice(html.indexOf("<main"), html.indexOf("</main>"));

describe("a page made from a notebook", () => {
  it("has the notebook's title, its headings as contents, and formulas as MathML", async () => {
    const { html, title, faults } = await page([
      "# How fast is $k$?\n\nIt costs $5 or $6, and $x^2$.\n\n$$\n\\frac{a}{b}\n$$",
      "## First <b>part</b>",
      "## First <b>part</b>\n\n$$y$$",
    ]);
    expect(faults).toEqual([]);
    expect(title).toContain("How fast is");
    expect(html.match(/<math/g)).toHaveLength(4);
    expect(html).toContain("It costs $5 or $6, and ");
    expect(html).toContain('<a href="#first-b-part-b">');
    expect(html).toContain('<h2 id="first-b-part-b-2">');
    expect(html).not.toMatch(/katex.*\.woff|<link|https?:\/\/(?!www\.w3\.org)[^"]*\.(js|css|woff)/);
  });
  it("says which formula cannot be typeset and shows it as written", async () => {
    const { html, faults } = await page(["md:$\\nonsense{$"]);
    expect(faults[0]).toMatch(/the formula \\nonsense\{ cannot be typeset/);
    expect(html).toContain('<code class="wrong"');
  });
  it("colours code whole, numbers it, and escapes it", async () => {
    const { html } = await page(['const a: string = "<b>&"; // end\na']);
    expect(main(html)).toContain('<span class="t-keyword">const</span>');
    expect(main(html)).toContain("&lt;b&gt;&amp;");
    expect(main(html)).toContain('<span class="t-comment">// end</span>');
    expect(main(html)).toContain('title="cell 1"');
  });
  it("lets plain tags in text stand and shows any other as it is written", async () => {
    const { html } = await page([
      "md:a<br>b<sub>2</sub> <script>alert(1)</script> <img src=x onerror=y>\n\n<iframe>",
    ]);
    expect(main(html)).toContain("a<br>b<sub>2</sub>");
    expect(main(html)).not.toMatch(/<script|<img|<iframe/);
    expect(main(html)).toContain("&lt;script&gt;");
  });
  it("lets only its own scripts run and nothing come from elsewhere", async () => {
    const { html } = await page(["1"]);
    const policy = /content="(default-src[^"]*)"/.exec(html)?.[1] ?? "";
    expect(policy).toContain("default-src 'none'");
    expect(policy).toMatch(/script-src 'unsafe-eval' 'sha256-/);
    expect(policy).not.toContain("script-src 'unsafe-inline'");
  });
  it("prefers a figure to its picture, a table to its text, and keeps printed text apart", async () => {
    const specification = { title: "</script><!--", mark: "bar" };
    const { html } = await page(
      ["1"],
      [
        { output_type: "stream", name: "stdout", text: "a <b>\n" },
        { output_type: "stream", name: "stderr", text: "careful\n" },
        result({
          "application/vnd.vegalite.v5+json": specification,
          "image/svg+xml": '<svg id="a"><g clip-path="url(#a)"/></svg>',
          "text/plain": "Title\nWhat it says.",
        }),
        result({
          "text/html": "<table><caption>Baths &amp; more</caption></table>",
          "text/plain": "no",
        }),
        result({ "text/markdown": "**bold** $z$", "text/plain": "no" }),
        { output_type: "error", ename: "E", evalue: "x", traceback: ["E: <x>"] },
      ],
    );
    const body = main(html);
    expect(body).toContain('<pre class="text" tabindex="0">a &lt;b&gt;</pre>');
    expect(body).toContain('<pre class="text warning" tabindex="0">careful</pre>');
    expect(body).toContain('<svg id="figure-1-a"><g clip-path="url(#figure-1-a)"/></svg>');
    expect(body).toContain('role="img" aria-labelledby="figure-1-text"');
    expect(body).toContain(
      '<p id="figure-1-text"><span class="unseen">Title. </span>What it says.</p>',
    );
    expect(body).toContain('role="region" aria-label="Baths &amp; more"');
    expect(body).toContain("<strong>bold</strong>");
    expect(body).toContain("E: &lt;x&gt;");
    expect(body).not.toContain(">no<");
    const data =
      /<script type="application\/json" data-for="figure-1">(.*?)<\/script>/.exec(html)?.[1] ?? "";
    expect(JSON.parse(data)).toEqual(specification);
    expect(data).not.toContain("<");
  });
  it("brings a drawing library only if a figure needs it", async () => {
    const none = (await page(["1"])).html.length;
    const chart = await page(
      ["1"],
      [result({ "application/vnd.vegalite.v5+json": {}, "text/plain": "T" })],
    );
    const plot = await page(
      ["1"],
      [result({ "application/vnd.plotly.v1+json": {}, "text/plain": "T\nWords." })],
    );
    expect(none).toBeLessThan(60_000);
    expect(chart.html.length).toBeGreaterThan(none + 500_000);
    expect(plot.html.length).toBeGreaterThan(none + 4_000_000);
    expect(plot.html).toContain("<strong>T.</strong> Words.");
    for (const { html } of [chart, plot])
      expect(html.match(/<\/script>/g)).toHaveLength((html.match(/<script[ >]/g) ?? []).length);
  });
  it("folds solutions, and long descriptions of figures", async () => {
    const { html } = await page([{ source: "2 * 2", tags: ["solution"] }]);
    expect(main(html)).toMatch(/<details class="solution"><summary>Solution<\/summary>/);
    const long = await page(
      ["1"],
      [
        result({
          "application/vnd.vegalite.v5+json": {},
          "text/plain": `T\n${"word ".repeat(100)}`,
        }),
      ],
    );
    expect(main(long.html)).toContain("<summary>The figure in words</summary>");
  });
  it("leads links to other notebooks to their pages, and others to the same files", async () => {
    const { html } = await page([
      "md:[a](next.ipynb#x) [b](../docs/safety.md) [c](https://example.org/) [d](#here)",
    ]);
    expect(html).toContain('href="next.html#x"');
    expect(html).toContain('href="../../docs/safety.md"');
    expect(html).toContain('href="https://example.org/"');
    expect(html).toContain('href="#here"');
  });
  it("says which picture it cannot find", async () => {
    const { faults } = await page(["md:![strip](nowhere.png)"]);
    expect(faults[0]).toMatch(/the picture nowhere.png cannot be put into the page/);
  });
  it("is the same each time", async () => {
    const drafts = ["# T\n\n## A\n\n## B", "const a = 1;"];
    expect((await page(drafts)).html).toBe((await page(drafts)).html);
  });
});

describe("the list of pages", () => {
  it("groups by the reader the opening names first", async () => {
    expect(readerOf(draftNotebook(["# T\n\nFor the **hobbyist**; a teacher may like it."]))).toBe(
      "hobbyist",
    );
    expect(readerOf(draftNotebook(["# T"]))).toBe("everybody");
    const html = await indexPage([{ href: "a b.html", title: "A &amp; B", reader: "teacher" }]);
    expect(html).toContain('<a href="a%20b.html">A &amp; B</a>');
    expect(html).toContain("For the teacher of process control");
    expect(html).not.toContain("For the hobbyist");
  });
});
