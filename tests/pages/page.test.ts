import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { notebookText } from "../../lib/notebook/notebook-file.ts";
import { notebookPage } from "../../lib/notebook/page.ts";
import { runNotebook } from "../../lib/notebook/run-notebook.ts";
import { draftNotebook } from "../notebook/fixture.ts";
import { drawAll, openPage, overflow, skipPages, startBrowser } from "./browser.ts";

/** Chromium starts slowly on a busy machine. */
const SLOW = 300_000;
/** What a page may take to answer, in ms; it does so at once where nothing else runs. */
const PATIENCE = 60_000;
const PHONE = 360;
const DESK = 1280;

const READINGS = Array.from({ length: 60 }, (_, i) => ({
  time: `2024-05-${String(1 + (i % 28)).padStart(2, "0")}T00:30`,
  density: 0.62 + (i % 7) / 100,
  channel: ["red", "green", "blue"][i % 3],
}));
const ENCODING = {
  x: { field: "time", type: "temporal", title: "Day (date)" },
  y: { field: "density", type: "quantitative", title: "Density (no unit)", scale: { zero: false } },
  color: { field: "channel", type: "nominal", title: "Channel" },
};
const PANEL = { width: 560, height: 110, mark: { type: "line", point: true }, encoding: ENCODING };
const chart = (specification: object) =>
  `({ kind: "vega-lite", title: "A title </script> that is quite long for a narrow window of a telephone", description: "Densities of three channels wander about 0.65.", specification: ${JSON.stringify({ title: "A title that is quite long for a narrow window of a telephone", data: { values: READINGS }, ...specification })} })`;
const DRAFTS = [
  "# Does the page work?\n\nA formula $c_n/c_0$ and a long one:\n\n$$V \\frac{dc}{dt} = a r c_r + a w_i c_i - (a r + a w_i - e) c - k V c \\pm a q + \\text{a tail that does not fit}$$",
  "## Charts\n\n| a | b |\n| --- | --- |\n| a long cell with many words in it that would otherwise make the table wide | 1 |",
  chart({ vconcat: [PANEL, PANEL] }),
  chart({
    hconcat: [
      { ...PANEL, width: 260 },
      { ...PANEL, width: 260 },
    ],
  }),
  chart({
    width: 620,
    height: 120,
    layer: [
      { mark: "rule", encoding: { y: { datum: 0.65 } } },
      {
        data: { values: [{}] },
        mark: { type: "text", text: "beside", align: "left" },
        encoding: { x: { value: 626 }, y: { value: 20 } },
      },
      {
        data: { values: [{}] },
        mark: { type: "rule" },
        encoding: { x: { value: 0 }, x2: { value: 620 }, y: { value: 30 } },
      },
    ],
  }),
  chart({
    vconcat: [
      {
        width: 620,
        height: 19,
        view: { stroke: null },
        layer: [
          "first of the key",
          "second, with many words that fill a line alone",
          "third",
        ].flatMap((text, i) => [
          {
            data: { values: [{}] },
            mark: "rule",
            encoding: { x: { value: 200 * i }, x2: { value: 200 * i + 26 }, y: { value: 9.5 } },
          },
          {
            data: { values: [{}] },
            mark: { type: "text", text, align: "left", baseline: "middle" },
            encoding: { x: { value: 200 * i + 31 }, y: { value: 9.5 } },
          },
        ]),
      },
      {
        width: 500,
        height: { step: 20 },
        data: {
          values: [
            { name: "a name of many words down the side of a chart", v: 1 },
            { name: "short", v: 2 },
          ],
        },
        mark: "bar",
        encoding: {
          y: { field: "name", type: "nominal", title: "Name (no unit)", axis: { labelLimit: 0 } },
          x: { field: "v", type: "quantitative", title: "Value (no unit)" },
        },
      },
    ],
  }),
  chart({
    width: 100,
    height: 60,
    mark: {
      type: "text",
      text: "words that nothing makes narrower, whatever one does, not even with good will",
      align: "left",
    },
    encoding: { x: { value: 0 }, y: { value: 20 } },
  }),
  "## Explore",
  '({ kind: "plotly", title: "A plot", description: "Three points rise.", data: [{ type: "scatter", x: [1, 2, 3], y: [1, 2, 3] }], layout: { xaxis: { title: { text: "Time (min)" } }, yaxis: { title: { text: "Density (no unit)" } }, height: 300 } })',
  `import { show } from "wetside/notebook";\nawait show({ [Symbol.for("Jupyter.display")]: () => ({ "text/html": "<table><caption>Wide</caption><tr>${"<td>column of a wide table</td>".repeat(12)}</tr></table>", "text/plain": "wide" }) });\n"${"x".repeat(300)}"`,
];

describe.skipIf(skipPages)("a page in a browser", { timeout: SLOW }, () => {
  let browser: Browser;
  let folder = "";
  let file = "";

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "wetside-page-"));
    const source = join(folder, "trial.ipynb");
    await writeFile(source, notebookText(draftNotebook(DRAFTS)));
    const { notebook } = await runNotebook({ file: source });
    const { html, faults } = await notebookPage(notebook, source, folder);
    expect(faults).toEqual([]);
    file = join(folder, "trial.html");
    await writeFile(file, html);
    browser = await startBrowser();
  }, SLOW);
  afterAll(async () => {
    await browser?.close();
    await rm(folder, { recursive: true, force: true });
  });

  it("draws its figures without a complaint and asks the network for nothing", async () => {
    const { page, complaints, close } = await openPage(browser, file, DESK);
    expect(await drawAll(page)).toBe(6);
    expect(await page.locator("figure.chart > .live svg").count()).toBe(5);
    expect(await page.locator("figure.plot .live svg.main-svg").count()).toBeGreaterThan(0);
    expect(await page.locator("figure.chart > .drawn").first().isVisible()).toBe(false);
    expect(await page.locator("math").count()).toBeGreaterThan(1);
    expect(await overflow(page)).toBeLessThanOrEqual(0);
    expect(complaints).toEqual([]);
    await close();
  });

  it("fits a telephone's window: charts narrowed or stacked, the rest scrolled in its box", async () => {
    const { page, complaints, close } = await openPage(browser, file, PHONE);
    await drawAll(page);
    expect(await overflow(page)).toBeLessThanOrEqual(0);
    const widths = await page
      .locator("figure.chart > .live svg")
      .evaluateAll((all) => all.map((svg) => svg.getBoundingClientRect().width));
    expect(widths).toHaveLength(5);
    for (const width of widths.slice(0, 4)) expect(width).toBeLessThanOrEqual(PHONE - 32);
    // Nothing makes its words narrower, so it is drawn at three quarters and scrolled.
    expect(widths[4]).toBeGreaterThan(PHONE);
    expect(widths[4]).toBeLessThan(560);
    const smallest = await page
      .locator("figure.chart > .live svg text")
      .evaluateAll((all) =>
        Math.min(
          ...all
            .filter((text) => text.textContent !== "")
            .map((text) => text.getBoundingClientRect().height),
        ),
      );
    expect(smallest, "labels can be read").toBeGreaterThanOrEqual(7);
    expect(complaints).toEqual([]);
    await close();
  });

  it("keeps beside a narrowed plot what stood beside it, and a key in rows that do not touch", async () => {
    const { page, close } = await openPage(browser, file, PHONE);
    await drawAll(page);
    const boxOf = (figure: number, text: string) =>
      page
        .locator("figure.chart > .live svg")
        .nth(figure)
        .locator("text", { hasText: text })
        .first()
        .evaluate((found) => {
          const { left, right, top, bottom } = found.getBoundingClientRect();
          return { left, right, top, bottom };
        });
    const plot = await page
      .locator("figure.chart > .live svg")
      .nth(2)
      .locator(".mark-group.role-frame .background")
      .first()
      .evaluate((found) => found.getBoundingClientRect().right);
    const beside = await boxOf(2, "beside");
    expect(beside.left - plot).toBeGreaterThan(0);
    expect(beside.left - plot).toBeLessThan(10);
    expect(beside.right).toBeLessThanOrEqual(PHONE - 16);
    const key = [
      await boxOf(3, "first of the key"),
      await boxOf(3, "second,"),
      await boxOf(3, "third"),
    ];
    key.forEach((box, i) => {
      expect(box.right).toBeLessThanOrEqual(PHONE - 16);
      for (const other of key.slice(i + 1)) {
        const apart = box.bottom <= other.top || box.right <= other.left;
        expect(apart, `entry ${i} of the key touches a later one`).toBe(true);
      }
    });
    expect(await page.locator("figure.chart > .live").nth(3).textContent()).toContain("side of a");
    await close();
  });

  it("draws charts anew when the window changes", async () => {
    const { page, close } = await openPage(browser, file, DESK);
    await drawAll(page);
    const width = () =>
      page
        .locator("figure.chart > .live svg")
        .first()
        .evaluate((svg) => svg.getBoundingClientRect().width);
    const wide = await width();
    await page.setViewportSize({ width: PHONE, height: 800 });
    await expect.poll(width, { timeout: PATIENCE }).toBeLessThan(wide / 1.5);
    await close();
  });

  it("shows dates as they were written, in any time zone", async () => {
    const { page, close } = await openPage(browser, file, DESK);
    await drawAll(page);
    const labels = (kind: string) =>
      page
        .locator(`figure.chart > ${kind} svg`)
        .first()
        .locator(".role-axis-label text")
        .evaluateAll((all) => all.map((text) => text.textContent));
    expect(await labels(".live")).toEqual(await labels(".drawn"));
    await close();
  });

  it("gives a hint for the point under the pointer", async () => {
    const { page, close } = await openPage(browser, file, DESK);
    await drawAll(page);
    const figure = page.locator("figure.chart").first();
    await figure.scrollIntoViewIfNeeded();
    await figure.locator(".live .mark-symbol.role-mark path").nth(5).hover({ force: true });
    await expect
      .poll(() => page.locator(".hint").textContent(), { timeout: PATIENCE })
      .toMatch(/Density \(no unit\): 0\.6/);
    await close();
  });

  it("shows charts, and plots in words, where no script runs", async () => {
    const { page, close } = await openPage(browser, file, DESK, { javaScriptEnabled: false });
    expect(await page.locator("figure.chart > .drawn svg").first().isVisible()).toBe(true);
    expect(await page.locator("figure.plot figcaption").textContent()).toBe(
      "A plot. Three points rise.",
    );
    await close();
  });

  it("says of every figure what it shows, and can be read without a mouse", async () => {
    const { page, close } = await openPage(browser, file, DESK);
    await drawAll(page);
    for (const image of await page.locator('figure > [role="img"]').all()) {
      const id = await image.getAttribute("aria-labelledby");
      expect(await page.locator(`#${id}`).textContent()).toMatch(/\w+\. \w+/);
    }
    await page.keyboard.press("Tab");
    expect(await page.evaluate("document.activeElement.className")).toBe("skip");
    const ids = await page.locator("[id]").evaluateAll((all) => all.map((one) => one.id));
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    await close();
  });

  it("hides its code on demand", async () => {
    const { page, close } = await openPage(browser, file, DESK);
    await page.getByRole("button", { name: "Hide the code" }).click();
    expect(await page.locator(".source").first().isVisible()).toBe(false);
    await page.getByRole("button", { name: "Show the code" }).click();
    expect(await page.locator(".source").first().isVisible()).toBe(true);
    await close();
  });

  it("draws a plot that nobody scrolls to, so that it prints", async () => {
    const { page, close } = await openPage(browser, file, DESK);
    const plot = page.locator("figure.plot");
    expect((await plot.boundingBox())?.y).toBeGreaterThan(2000);
    await plot.locator(".printed").waitFor({ state: "attached" });
    expect(await page.evaluate("scrollY")).toBe(0);
    await page.emulateMedia({ media: "print" });
    expect(await plot.locator(".printed").isVisible()).toBe(true);
    await close();
  });

  it("prints on either paper, with the charts as drawn and no controls", async () => {
    const { page, close } = await openPage(browser, file, DESK);
    await drawAll(page);
    await page.locator("figure.plot > .printed").waitFor({ state: "attached" });
    for (const format of ["A4", "Letter"]) {
      const pdf = await page.pdf({ format, printBackground: true });
      expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
      const pages = pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
      expect(pages).toBeGreaterThan(1);
      expect(pages).toBeLessThan(13);
    }
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("figure.chart > .drawn svg").first().isVisible()).toBe(true);
    expect(await page.locator("figure.chart > .live").first().isVisible()).toBe(false);
    expect(await page.locator("figure.plot > .printed").isVisible()).toBe(true);
    expect(await page.locator(".tools").isVisible()).toBe(false);
    await close();
  });
});
