import { existsSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { type Browser, chromium, type Page } from "playwright-core";

const PLACES = [process.env.CHROMIUM, "/usr/bin/chromium", "/usr/bin/chromium-browser"];

/** Where Chromium is, if it is installed. */
export const chromiumPath = PLACES.find((path) => path !== undefined && existsSync(path));

/** On the project's own machines the page tests must run; elsewhere they need Chromium. */
export const skipPages = chromiumPath === undefined && process.env.CI !== "true";
if (skipPages) {
  console.warn("page tests skipped: Chromium is not installed (or set CHROMIUM to its path)");
}

/** Starts Chromium. */
export function startBrowser(): Promise<Browser> {
  if (chromiumPath === undefined) throw new Error("CI is set, but Chromium is not installed");
  return chromium.launch({ executablePath: chromiumPath, args: ["--no-sandbox"] });
}

/** A page open in a window, and everything it should not have said or asked for. */
export interface OpenPage {
  readonly page: Page;
  /** Errors, warnings of our own, and requests to anywhere but the file. */
  readonly complaints: readonly string[];
  readonly close: () => Promise<void>;
}

/** Messages of Chromium about its own drawing of three-dimensional figures. */
const DRIVER_TALK = /GL Driver Message|willReadFrequently|WebGL/;

/** Opens a page from disk, without network, in another time zone than ours. */
export async function openPage(
  browser: Browser,
  file: string,
  width: number,
  options: { readonly javaScriptEnabled?: boolean } = {},
): Promise<OpenPage> {
  const context = await browser.newContext({
    viewport: { width, height: 900 },
    timezoneId: "America/New_York",
    offline: true,
    ...options,
  });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("console", (message) => {
    const serious = ["error", "warning"].includes(message.type());
    if (serious && !DRIVER_TALK.test(message.text())) complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("request", (request) => {
    if (!/^(file|data|blob):/.test(request.url())) complaints.push(`asked for ${request.url()}`);
  });
  await page.goto(pathToFileURL(file).href);
  return { page, complaints, close: () => context.close() };
}

/** Scrolls to each figure and waits until the script has drawn it. */
export async function drawAll(page: Page): Promise<number> {
  const figures = await page.$$("figure");
  for (const figure of figures) {
    await figure.scrollIntoViewIfNeeded();
    await figure.evaluate(
      (element) =>
        new Promise<void>((done) => {
          const look = () =>
            element.classList.contains("is-live") ? done() : setTimeout(look, 20);
          look();
        }),
    );
  }
  // A chart is drawn a few times until it fits; its last drawing settles within a frame or two.
  await page.waitForTimeout(300);
  return figures.length;
}

/** How much wider the page is than the window, in pixels. */
export function overflow(page: Page): Promise<number> {
  return page.evaluate<number>("document.documentElement.scrollWidth - innerWidth");
}
