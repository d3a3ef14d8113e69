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

/** What Chromium may take for one thing on a busy machine, in ms. */
const PATIENCE = 120_000;

/** Starts Chromium. */
export function startBrowser(): Promise<Browser> {
  if (chromiumPath === undefined) throw new Error("CI is set, but Chromium is not installed");
  return chromium.launch({
    executablePath: chromiumPath,
    args: ["--no-sandbox", "--disable-dev-shm-usage"],
    timeout: PATIENCE,
  });
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
  context.setDefaultTimeout(PATIENCE);
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
  await page.evaluate(SETTLED);
  return figures.length;
}

/**
 * A chart is drawn a few times until it fits. The drawing is over when five looks on end, frames
 * apart, find everything as wide as before, however slowly frames come.
 */
const SETTLED = `new Promise((done) => {
  let last = "";
  let same = 0;
  const look = () => {
    const drawn = [...document.querySelectorAll("figure .live svg")];
    const now = [document.documentElement, ...drawn].map((e) => e.getBoundingClientRect().width + "/" + e.scrollWidth).join();
    same = now === last ? same + 1 : 0;
    last = now;
    if (same === 5) done();
    else setTimeout(() => requestAnimationFrame(look), 60);
  };
  look();
})`;

/** How much wider the page is than the window, in pixels. */
export function overflow(page: Page): Promise<number> {
  return page.evaluate<number>("document.documentElement.scrollWidth - innerWidth");
}
