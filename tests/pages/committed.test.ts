import { readdirSync, readFileSync } from "node:fs";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { parseNotebook } from "../../lib/notebook/notebook-file.ts";
import { notebookPage } from "../../lib/notebook/page.ts";
import { drawAll, openPage, overflow, skipPages, startBrowser } from "./browser.ts";

const FOLDER = fileURLToPath(new URL("../../notebooks/", import.meta.url));
const NAMES = readdirSync(FOLDER).filter((name) => /^[^.].*\.ipynb$/.test(name));
/** A notebook with many charts takes Chromium a while on a busy machine. */
const SLOW = 600_000;

describe.skipIf(skipPages)("the pages of the committed notebooks", () => {
  let browser: Browser;
  let folder = "";
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "wetside-pages-"));
    browser = await startBrowser();
  }, SLOW);
  afterAll(async () => {
    await browser?.close();
    await rm(folder, { recursive: true, force: true });
  });

  it.each(NAMES)(
    "are drawn without a complaint on a desk and on a telephone: %s",
    { timeout: SLOW },
    async (name) => {
      const path = join(FOLDER, name);
      const { html, faults } = await notebookPage(
        parseNotebook(path, readFileSync(path, "utf8")),
        path,
        folder,
      );
      expect(faults).toEqual([]);
      const file = join(folder, name.replace(/ipynb$/, "html"));
      await writeFile(file, html);
      for (const width of [1280, 360]) {
        const { page, complaints, close } = await openPage(browser, file, width);
        const figures = await drawAll(page);
        expect(await page.locator("figure.is-live").count()).toBe(figures);
        expect(await overflow(page), `wider than a window of ${width} px`).toBeLessThanOrEqual(0);
        const cut = await page.locator("figure.chart > .live").evaluateAll((all) =>
          all
            .map(
              (one) => [one, one.querySelector("svg")?.getBoundingClientRect().width ?? 0] as const,
            )
            .filter(([one, drawn]) => drawn > one.getBoundingClientRect().width + 1)
            .map(([one]) => one.closest("figure")?.textContent?.slice(0, 80)),
        );
        expect(cut, `charts that scroll in a window of ${width} px`).toEqual([]);
        expect(complaints).toEqual([]);
        await close();
      }
    },
  );
});
